/** A note about somebody. It stays on this phone. */
import { ask } from "../../backend.js";
import { actions, heading, make, para, submit } from "../../make.js";
import { act, swap } from "../../router.js";
import { say } from "../../words.js";
import { useLook } from "../handoff/look.js";

export async function show({ id }) {
  await useLook();
  const text = make("textarea", { id: "text", class: "plain-text", rows: "6", maxlength: "1000", autocomplete: "off", "aria-label": say("screen-patients-note") });
  const keep = (event) => {
    event.preventDefault();
    if (text.value.trim() !== "") {
      act(async () => {
        await ask("patient_note", { id: Number(id), text: text.value });
        swap(`#/patients/${id}`);
      });
    }
  };
  return {
    title: say("screen-patients-note"),
    back: `#/patients/${id}`,
    body: [make("form", { class: "form", novalidate: true, on: { submit: keep } },
      heading(say("screen-patients-note")), para(say("screen-patients-notes-what"), "hint"), text, actions(submit(say("screen-patients-note-keep"), "keep-note")))],
  };
}
