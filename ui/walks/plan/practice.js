/** Single pages of the plan: noting practice, and what was practised so far. */
import { ask } from "../../backend.js";
import { button, group, heading, make, para } from "../../make.js";
import { act, swap } from "../../router.js";
import { session } from "../../session.js";
import { say } from "../../words.js";
import { useLook } from "../handoff/look.js";
import "../../parts/pain-scale/pain-scale.js";

export async function show({ step }) {
  await useLook();
  if (step === "log") {
    return log();
  }
  const { plan } = await ask("plan_now");
  return note(plan?.day.practice.find(({ item }) => `item-${item}` === step));
}

/** How it went: the second of two taps. */
function note(item) {
  const title = say("screen-plan-how");
  const keep = (done, pain) => act(async () => {
    const { id } = await ask("practice_keep", { item: item.item, done, pain });
    session.notice = { text: say("screen-plan-kept"), undo: id, by: "practice_undo" };
    swap("#/plan");
  });
  return {
    title,
    back: "#/plan",
    body: item ? [
      group(title,
        para(`${item.name}. ${item.text}`, "lead"),
        para(say("screen-plan-how-hint"), "hint"),
        make("div", { class: "question__low" },
          make("pain-scale", { props: { chosen: null }, on: { "pain-scale-pick": (event) => keep(true, event.detail) } }),
          button(say("screen-plan-did"), "second", () => keep(true, null), { id: "did" }),
          button(say("screen-plan-left"), "second", () => keep(false, null), { id: "not-today" }))),
    ] : [heading(title), para(say("screen-plan-none"))],
  };
}

async function log() {
  const { entries } = await ask("practice_list");
  const title = say("screen-plan-log");
  return {
    title,
    back: "#/plan",
    body: [
      heading(title),
      entries.length === 0 ? para(say("screen-plan-log-none"), "note") : make("ul", { class: "rows", id: "log" },
        entries.map(({ id, when_text: when, text, pain_text: pain }) => make("li", { class: "row row--link", "data-log": id },
          make("span", { class: "row__name", text }),
          make("span", { class: "row__note", text: [when, pain].filter(Boolean).join(". ") })))),
    ],
  };
}
