/** Home: the big button, what waits to be answered, saved tasks, what was last. */
import { ask } from "../backend.js";
import { button, heading, link, make, para, scrollAbove, section } from "../make.js";
import { takeNotice } from "../notice.js";
import { act, go } from "../router.js";
import { resumeWalk, startWalk } from "../walk.js";
import { session } from "../session.js";
import { say } from "../words.js";
import { drawPicture } from "../pictures/pictures.js";
import { icon } from "../pictures/icons.js";
import "../parts/lift-entry/lift-entry.js";

export async function show() {
  const home = await ask("home");
  if (home.use === "help") {
    const { helperHome } = await import("../walks/care/people.js");
    return helperHome([home.open_sign ? openSign(home.open_sign) : null, draft(home.draft), home.notes.map((text) => para(text, "note"))],
      [button(say("screen-care-things"), "second", () => begin(home, null), { id: "check-lift" }), pages(true)]);
  }
  return {
    title: say("screen-home"),
    body: scrollAbove(
      button(say("screen-home-check"), "main", () => begin(home, null), { id: "check-lift" }),
      heading(say(GREETINGS[home.greeting_part] ?? "screen-greeting-day")),
      takeNotice(),
      home.open_sign ? openSign(home.open_sign) : para(say("screen-home-lead")),
      home.recent.length === 0 ? make("div", { class: "start-picture" }, drawPicture("lunge"), drawPicture("hinge"), drawPicture("upright")) : null,
      draft(home.draft),
      home.morning.map(({ id, text }) => prompt(text, say("screen-morning-go"), `#/morning/${id ?? "practice"}`, { "data-morning": id ?? "practice" })),
      home.plan ? make("div", { class: "prompt" }, home.plan.map((text) => para(text)), link(say("screen-plan-open"), "#/plan", { class: "button", id: "plan" })) : null,
      home.use === "treat" ? link(say("screen-hand-link"), "#/hand", { class: "button", id: "hand" }) : null,
      home.notes.map((text) => para(text, "note")),
      section(say("screen-saved-title"), saved(home)),
      home.body_kept ? section(say("screen-body-kept-title"), para(home.body_kept.text), para(home.body_kept.until_text, "hint")) : null,
      section(say("screen-recent-title"), home.recent.map((entry) => make("lift-entry", { props: { entry } }))),
      pages(),
    ),
  };
}

/** Starts a walk, or asks first if one is open. */
function begin({ draft: open }, saved) {
  if (open) {
    go(`#/fresh/${saved ?? "none"}`);
  } else {
    act(() => startWalk(saved));
  }
}

function openSign(sign) {
  return make("div", { class: "note note--stop" }, icon("care"),
    make("div", {},
      make("p", {}, make("b", { text: sign.text }), ` ${sign.since_text}`),
      link(say("screen-signs-link"), "#/signs"),
      link(say("screen-sign-clear-link"), "#/sign-clear", { id: "sign-clear" })));
}

function draft(open) {
  return open === null ? null : make("div", { class: "prompt" },
    para(say("screen-draft-text")),
    para(open.title, "prompt__what"),
    button(say("screen-draft-go-on"), "second", () => act(() => resumeWalk()), { id: "go-on" }));
}

function prompt(text, act, hash, given) {
  return make("div", { class: "prompt" }, para(text, "prompt__what"), link(act, hash, { class: "button", ...given }));
}

function saved(home) {
  return home.saved.length === 0 ? null : make("ul", { class: "rows" },
    home.saved.map(({ id, name, text }) => make("li", {},
      make("button", { type: "button", class: "row", "data-saved": id, on: { click: () => begin(home, id) } },
        make("span", { class: "row__name", text: name }),
        make("span", { class: "row__note", text }),
        icon("on")))));
}

function pages(helps = false) {
  const lock = () => act(async () => {
    await ask("lock");
    session.locked = true;
    session.returnTo = null;
    go("#/unlock");
  });
  return make("nav", { "aria-label": say("screen-pages") },
    make("ul", { class: "pages" },
      [["screen-signs-link", "#/signs", "care"], ...(helps ? [] : [["screen-care-link", "#/people", "person"]]), ["screen-history-title", "#/history", "history"], ["screen-hand-title", "#/hand", "hand"], ["screen-settings-title", "#/settings", "settings"]]
        .map(([id, hash, mark]) => make("li", {}, make("a", { href: hash, class: "pages__link" }, icon(mark), say(id)))),
      make("li", {}, make("button", { type: "button", class: "pages__link", id: "lock", on: { click: lock } }, icon("lock"), say("screen-lock")))));
}

const GREETINGS = { morning: "screen-greeting-morning", afternoon: "screen-greeting-afternoon", evening: "screen-greeting-evening" };
