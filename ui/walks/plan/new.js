/** A new plan: the pattern it starts from, then whom it is for. */
import { ask } from "../../backend.js";
import { actions, button, group, heading, make, para, submit } from "../../make.js";
import { act, go, swap } from "../../router.js";
import { say } from "../../words.js";
import { useLook } from "../handoff/look.js";
import "../../parts/choice-list/choice-list.js";
import "../../parts/name-field/name-field.js";

export async function show({ pattern = null }) {
  const [{ patterns }] = await Promise.all([ask("plan_patterns"), useLook()]);
  const chosen = patterns.find(({ id }) => id === pattern);
  return chosen ? askWhom(chosen) : askPattern(patterns);
}

function askPattern(patterns) {
  const title = say("screen-plans-pattern");
  const options = patterns.map(({ id, title: label, text }) => ({ id, label, note: text }));
  return {
    title,
    back: "#/plans",
    body: [
      group(title,
        para(say("screen-plans-pattern-what"), "hint"),
        make("choice-list", { props: { choice: { options } }, on: { "choice-list-pick": (event) => go(`#/plans/new/${event.detail}`) } })),
    ],
  };
}

async function askWhom({ id, title: name }) {
  const { pairings } = await ask("pairings");
  const title = say("screen-plans-whom");
  const field = make("name-field", { props: { name: { id: "for", label: say("screen-plans-whom-label"), hint: say("screen-card-hint") } } });
  const begin = (alias) => act(async () => {
    const plan = await ask("plan_new", { pattern: id, for: alias });
    swap(`#/plans/${plan.id}`);
  }, { field: "for" });
  const send = (event) => {
    event.preventDefault();
    begin(field.text.trim());
  };
  return {
    title,
    back: "#/plans/new",
    bar: name,
    body: [
      make("form", { class: "form", novalidate: true, on: { submit: send } },
        heading(title),
        pairings.map(({ alias, id: pairing }) => button(alias, "second", () => begin(alias), { "data-for": pairing })),
        field,
        actions(submit(say("screen-plans-begin"), "begin"))),
    ],
  };
}
