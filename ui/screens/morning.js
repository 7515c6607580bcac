/** The next morning: pain today, then whether things are as usual. Two taps, both may be skipped. */
import { ask } from "../backend.js";
import { button, group, make, para } from "../make.js";
import { act, go, swap } from "../router.js";
import { session } from "../session.js";
import { say } from "../words.js";
import "../parts/choice-list/choice-list.js";
import "../parts/pain-scale/pain-scale.js";

/** The number tapped on the first page, until the second is answered: `{id, pain}`. */
let rated = null;

export async function show({ id, step }) {
  if (step === "usual" && rated?.id === id) {
    return askUsual(id);
  }
  const home = await ask("home");
  const about = home.morning.find((one) => String(one.id ?? "practice") === id);
  return askPain(id, about?.text ?? null);
}

function askPain(id, text) {
  const rate = (pain) => {
    rated = { id, pain };
    go(`#/morning/${id}/usual`);
  };
  return {
    title: say("screen-morning-title"),
    back: "#/home",
    body: [
      group(say("screen-morning-title"),
        para(text, "lead"),
        para(say("screen-morning-hint"), "hint"),
        make("div", { class: "question__low" },
          make("pain-scale", { props: { chosen: rated?.id === id ? rated.pain : null }, on: { "pain-scale-pick": (event) => rate(event.detail) } }),
          button(say("screen-skip"), "second", () => rate(null), { id: "skip" }))),
    ],
  };
}

function askUsual(id) {
  const options = [
    { id: "yes", label: say("screen-usual-yes") },
    { id: "no", label: say("screen-usual-no") },
    { id: "not_sure", label: say("screen-not-sure") },
  ];
  const keep = (usual) => act(async () => {
    await ask("morning", { id: Number(id) || null, pain: rated.pain, back_to_usual: usual });
    rated = null;
    session.notice = { text: say("screen-kept"), undo: null };
    swap("#/home");
  });
  return {
    title: say("screen-usual-title"),
    back: `#/morning/${id}`,
    body: [
      group(say("screen-usual-title"),
        make("div", { class: "question__low" },
          make("choice-list", { props: { choice: { options } }, on: { "choice-list-pick": (event) => keep(event.detail) } }),
          button(say("screen-skip"), "second", () => keep(null), { id: "skip" }))),
    ],
  };
}
