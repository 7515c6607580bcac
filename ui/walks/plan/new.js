/** A new plan: the pattern it starts from, then whom it is for, unless that is known: it was begun on somebody's page. */
import { ask } from "../../backend.js";
import { actions, button, group, heading, make, para, submit } from "../../make.js";
import { act, go, swap } from "../../router.js";
import { say } from "../../words.js";
import { useLook } from "../handoff/look.js";
import "../../parts/choice-list/choice-list.js";
import "../../parts/name-field/name-field.js";

export async function show({ pattern = null, id = null }) {
  const [{ patterns }, patient] = await Promise.all([ask("plan_patterns"), id === null ? null : ask("patient", { id: Number(id) }), useLook()]);
  const chosen = patterns.find((one) => one.id === pattern);
  return chosen ? askWhom(chosen) : askPattern(patterns, patient);
}

const begin = (pattern, alias, { patient = null, field = null }) => act(async () => {
  const plan = await ask("plan_new", { pattern, for: alias, patient });
  swap(`#/plans/${plan.id}`);
}, { field });

function askPattern(patterns, patient) {
  const title = say("screen-plans-pattern");
  const pick = ({ detail: pattern }) => patient ? begin(pattern, patient.alias, { patient: patient.id }) : go(`#/plans/new/${pattern}`);
  const options = patterns.map(({ id, title: label, text }) => ({ id, label, note: text }));
  return {
    title,
    back: patient ? `#/patients/${patient.id}` : "#/plans",
    bar: patient?.alias,
    body: [
      group(title,
        para(say("screen-plans-pattern-what"), "hint"),
        make("choice-list", { props: { choice: { options } }, on: { "choice-list-pick": pick } })),
    ],
  };
}

async function askWhom({ id, title: name }) {
  const { pairings } = await ask("pairings");
  const title = say("screen-plans-whom");
  const field = make("name-field", { props: { name: { id: "for", label: say("screen-plans-whom-label"), hint: say("screen-card-hint") } } });
  const send = (event) => {
    event.preventDefault();
    begin(id, field.text.trim(), { field: "for" });
  };
  return {
    title,
    back: "#/plans/new",
    bar: name,
    body: [
      make("form", { class: "form", novalidate: true, on: { submit: send } },
        heading(title),
        pairings.map(({ alias, id: pairing }) => button(alias, "second", () => begin(id, alias, { field: "for" }), { "data-for": pairing })),
        field,
        actions(submit(say("screen-plans-begin"), "begin"))),
    ],
  };
}
