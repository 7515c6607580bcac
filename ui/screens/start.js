/**
 * First start: what this is, what you do most, kilograms or pounds, and a
 * passphrase typed twice with what losing it means. One thing a page.
 */
import { ask } from "../backend.js";
import { languageSwitch } from "../language.js";
import { actions, group, heading, link, make, para } from "../make.js";
import { passForm } from "../pass-form.js";
import { go, swap } from "../router.js";
import { session } from "../session.js";
import { say } from "../words.js";
import { drawPicture } from "../pictures/pictures.js";
import "../parts/choice-list/choice-list.js";

/** Draws the step named in the address. */
export async function show({ step = "hello" }) {
  if (!session.first_start) {
    swap("#/home");
    return null;
  }
  const { use, units } = session.beginning;
  if ((step === "units" && !use) || (step === "passphrase" && !(use && units))) {
    swap("#/start");
    return null;
  }
  return (STEPS[step] ?? hello)();
}

const STEPS = { hello, use: askUse, units: askUnits, passphrase: askPassphrase };

function hello() {
  return {
    title: say("screen-start-title"),
    body: [
      languageSwitch(),
      make("div", { class: "start-picture" }, drawPicture("hinge"), drawPicture("squat"), drawPicture("lunge")),
      heading(say("screen-start-title")),
      para(say("screen-start-what")),
      para(say("screen-start-limits")),
      para(say("screen-start-private")),
      actions(
        link(say("screen-signs-link"), "#/signs", { class: "button" }),
        link(say("screen-start-go"), "#/start/use", { class: "button button--main", id: "begin" }),
      ),
    ],
  };
}

function askUse() {
  const options = [
    { id: "lift", label: say("screen-use-lift"), note: say("screen-use-lift-note") },
    { id: "help", label: say("screen-use-help"), note: say("screen-use-help-note") },
    { id: "treat", label: say("screen-use-treat"), note: say("screen-use-treat-note") },
  ];
  return chooseOne("screen-use-title", "screen-use-hint", options, session.beginning.use, "#/start", (id) => {
    session.beginning.use = id;
    go("#/start/units");
  });
}

function askUnits() {
  const options = [
    { id: "kg", label: say("screen-units-kg") },
    { id: "lb", label: say("screen-units-lb") },
  ];
  return chooseOne("screen-units-title", null, options, session.beginning.units, "#/start/use", (id) => {
    session.beginning.units = id;
    go("#/start/passphrase");
  });
}

function chooseOne(titleId, hintId, options, chosen, back, pick) {
  return {
    title: say(titleId),
    back,
    body: [
      group(say(titleId),
        hintId ? para(say(hintId), "hint") : null,
        make("choice-list", { props: { choice: { options, chosen } }, on: { "choice-list-pick": (event) => pick(event.detail) } })),
    ],
  };
}

function askPassphrase() {
  const fields = [
    { id: "passphrase", label: say("screen-pass-new"), hint: say("screen-pass-new-hint"), fresh: true },
    { id: "again", label: say("screen-pass-again"), fresh: true },
  ];
  const page = {
    above: [heading(say("screen-pass-title")), para(say("screen-pass-what"))],
    below: make("p", { class: "note" }, make("b", { text: `${say("screen-pass-lost-title")} ` }), say("screen-pass-lost")),
    label: say("screen-pass-keep"),
    id: "keep",
  };
  return {
    title: say("screen-pass-title"),
    back: "#/start/units",
    body: [passForm(fields, page, async (typed) => {
      await ask("first_start", { ...session.beginning, ...typed });
      session.first_start = false;
      session.locked = false;
      swap("#/home");
    })],
  };
}
