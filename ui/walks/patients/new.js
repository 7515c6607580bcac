/** Puts somebody on the list, or gives them another name on it. */
import { ask } from "../../backend.js";
import { actions, heading, make, submit } from "../../make.js";
import { act, swap } from "../../router.js";
import { say } from "../../words.js";
import { useLook } from "../handoff/look.js";
import "../../parts/name-field/name-field.js";

export async function show({ id = null }) {
  const [patient] = await Promise.all([id === null ? null : ask("patient", { id: Number(id) }), useLook()]);
  const title = say(patient ? "screen-patients-rename" : "screen-patients-new");
  const field = make("name-field", { props: { name: { id: "alias", label: say("screen-patients-alias"), hint: say("screen-card-hint") } } });
  field.querySelector("input").value = patient?.alias ?? "";
  const keep = (event) => {
    event.preventDefault();
    const alias = field.text.trim();
    act(async () => {
      const kept = patient ? { id, ...await ask("patient_rename", { id: patient.id, alias }) } : await ask("patient_new", { alias });
      swap(`#/patients/${kept.id}`);
    }, { field: "alias" });
  };
  return {
    title,
    back: patient ? `#/patients/${id}` : "#/patients",
    body: [make("form", { class: "form", novalidate: true, on: { submit: keep } }, heading(title), field, actions(submit(say("screen-plans-begin"), "keep")))],
  };
}
