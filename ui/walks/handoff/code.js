/** The eight words of a parcel from somebody who is not paired. */
import { ask } from "../../backend.js";
import { actions, heading, make, para, submit } from "../../make.js";
import { act, swap } from "../../router.js";
import { say } from "../../words.js";
import { useLook } from "./look.js";
import "../../parts/name-field/name-field.js";

export async function show() {
  await useLook();
  const field = make("name-field", { props: { name: { id: "code", label: say("screen-eight-label"), hint: say("screen-eight-hint") } } });
  const input = field.querySelector("input");
  input.setAttribute("maxlength", "120");
  input.setAttribute("autocapitalize", "none");
  const open = (event) => {
    event.preventDefault();
    act(async () => {
      await ask("parcel_code", { code: field.text.trim() });
      swap("#/hand/question");
    }, { field: "code" });
  };
  return {
    title: say("screen-eight-title"),
    back: "#/hand",
    body: [
      make("form", { class: "form", novalidate: true, on: { submit: open } },
        heading(say("screen-eight-title")),
        para(say("screen-eight-what")),
        field,
        actions(submit(say("screen-eight-open"), "open"))),
    ],
  };
}
