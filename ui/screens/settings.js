/** Settings: language, units, what you do most, what the app knows about you. */
import { ask } from "../backend.js";
import { button, heading, make, para, section } from "../make.js";
import { act, go, redraw } from "../router.js";
import { startAbout } from "../walk.js";
import { changeLanguage, session } from "../session.js";
import { say } from "../words.js";
import "../parts/check-rows/check-rows.js";
import "../parts/language-switch/language-switch.js";

export async function show() {
  const [settings, home] = await Promise.all([ask("settings"), ask("home")]);
  const change = (event) => act(async () => {
    await changeLanguage(event.detail);
    await redraw();
  });
  const rows = [
    { question: "use", label: say("screen-use-title"), text: say(USES[settings.use]) },
    { question: "units", label: say("screen-units-title"), text: say(UNITS[settings.units]) },
  ];
  return {
    title: say("screen-settings-title"),
    back: "#/home",
    body: [
      heading(say("screen-settings-title")),
      section(say("screen-language"), make("language-switch", { props: { choice: { languages: session.languages, now: session.language } }, on: { "language-switch-pick": change } })),
      make("check-rows", { props: { rows }, on: { "check-rows-change": (event) => go(`#/settings/${event.detail}`) } }),
      section(say("screen-about-title"),
        settings.about.length ? make("check-rows", { props: { rows: settings.about.map(({ label, text }) => ({ label, text })) } }) : para(say("screen-about-none")),
        button(say("screen-about-again"), "second", () => act(startAbout), { id: "about" })),
      section(say("screen-saved-title"), home.saved.map(savedTask)),
      section(say("screen-private-title"), para(say("screen-private-here")), para(say("screen-private-locked")), para(say("screen-private-lost"))),
      section(say("screen-limits-title"), para(say("screen-start-limits")), para(say("screen-limits-text"))),
      para(say("screen-version", { version: session.version }), "hint"),
    ],
  };
}

function savedTask({ id, name, text }) {
  const drop = () => act(async () => {
    await ask("saved_drop", { id });
    await redraw();
  });
  return make("div", { class: "drop-row" },
    make("div", {}, make("b", { text: name }), make("span", { class: "row__note", text })),
    make("button", { type: "button", class: "check-rows__change", "data-drop": id, on: { click: drop } }, say("screen-saved-drop"), make("span", { class: "unseen", text: ` ${name}` })));
}

const USES = { lift: "screen-use-lift", help: "screen-use-help", treat: "screen-use-treat" };
const UNITS = { kg: "screen-units-kg", lb: "screen-units-lb" };
