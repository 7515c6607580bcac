/** What to hand over, from when, with notes or without, to whom, and what leaves then. One question a page. */
import { ask } from "../../backend.js";
import { button, group, heading, make, para, scrollAbove } from "../../make.js";
import { act, go, swap } from "../../router.js";
import { say } from "../../words.js";
import { lines, useLook } from "./look.js";
import { asked, choose, forgetWish, giveTo, nextPage, wished } from "./wish.js";
import { startShowing } from "./shown.js";
import "../../parts/choice-list/choice-list.js";

export async function show({ step = "what" }) {
  const page = PAGES[step];
  const { what } = wished();
  if (!page || (step !== "what" && what === null)) {
    swap("#/hand/give");
    return null;
  }
  if (step === "leaves" && nextPage() !== "#/hand/give/leaves") {
    swap(nextPage());
    return null;
  }
  await useLook();
  return page();
}

const PAGES = {
  async what() {
    const { plans } = await ask("plan_list");
    const options = plans.map(({ id, title, text }) => ({ id: String(id), label: title, note: text }));
    options.push({ id: "history", label: say("screen-give-history"), note: say("screen-give-history-note") });
    options.push({ id: "new", label: say("screen-give-new-plan"), note: say("screen-give-new-plan-note") });
    options.push({ id: "care", label: say("screen-give-care"), note: say("screen-give-care-note") });
    const pick = (id) => {
      if (id === "new" || id === "care") {
        go(id === "new" ? "#/plans/new" : "#/people");
      } else {
        const { to } = wished();
        giveTo(id === "history" ? { what: "history", to } : { what: "plan", plan: Number(id), to });
      }
    };
    return question(say("screen-give-what"), "#/hand", options, pick);
  },

  when() {
    const options = SINCE.map(([id, words]) => ({ id, label: say(words) }));
    return question(say("screen-give-when"), "#/hand/give", options, (id) => choose({ since_days: id === "all" ? null : Number(id) }));
  },

  notes() {
    const options = [
      { id: "no", label: say("screen-give-notes-no"), note: say("screen-give-notes-no-note") },
      { id: "yes", label: say("screen-give-notes-yes"), note: say("screen-give-notes-yes-note") },
    ];
    return question(say("screen-give-notes"), "#/hand/give/when", options, (id) => choose({ notes: id === "yes" }));
  },

  async whom() {
    const { pairings } = await ask("pairings");
    const options = pairings.map(({ id, alias, text }) => ({ id, label: alias, note: text }));
    options.push({ id: "nobody", label: say("screen-give-unpaired"), note: say("screen-give-unpaired-note") });
    return question(say("screen-give-whom"), "#/hand/give", options, (id) => choose({ to: id === "nobody" ? null : id }));
  },

  async leaves() {
    const { leaves, to_text: whom, confirm } = await ask("show_summary", asked());
    const begin = () => act(async () => {
      await startShowing(asked());
      forgetWish();
      swap("#/hand/show");
    });
    return {
      title: say("screen-leaves-title"),
      back: "#/hand/give/whom",
      body: scrollAbove(
        button(confirm, "main", begin, { id: "show" }),
        heading(say("screen-leaves-title")),
        para(whom, "hand-alias"),
        lines(leaves),
        para(say("screen-leaves-sealed"), "hint")),
    };
  },
};

function question(title, back, options, pick) {
  return {
    title,
    back,
    body: [group(title, make("choice-list", { props: { choice: { options } }, on: { "choice-list-pick": (event) => pick(event.detail) } }))],
  };
}

/** From when on: the choices that are offered, in days (house rule). */
const SINCE = [["30", "screen-give-when-30"], ["90", "screen-give-when-90"], ["all", "screen-give-when-all"]];
