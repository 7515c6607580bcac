/** The people a clinician treats, found as one types. */
import { ask } from "../../backend.js";
import { announce } from "../../frame.js";
import { heading, link, make, para } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { say } from "../../words.js";
import { rowTo, rows, useLook } from "../handoff/look.js";

/** What was last looked for, so that Back leads to the same list. */
let wanted = "";

export async function show() {
  const [listed] = await Promise.all([ask("patients", { find: wanted }), useLook()]);
  const found = make("div", {});
  const count = make("p", { class: "hint", id: "count" });
  const input = make("input", {
    id: "find", type: "text", inputmode: "search", autocomplete: "off", spellcheck: "false", maxlength: "60", "aria-describedby": "find-hint", props: { value: wanted },
    on: { input: () => look(input.value) },
  });
  const fill = ({ patients, count_text: text }) => {
    count.textContent = text;
    found.replaceChildren(patients.length === 0 && wanted === "" ? para(say("screen-patients-none")) : rows(patients.map(one)));
  };
  const look = async (text) => {
    wanted = text;
    const reply = await ask("patients", { find: text }).catch(() => null);
    // An answer may come after the one to a later letter.
    if (reply && text === wanted) {
      fill(reply);
      announce(reply.count_text);
    }
  };
  fill(listed);
  return {
    title: say("screen-patients"),
    back: "#/hand",
    body: [
      heading(say("screen-patients")),
      takeNotice(),
      make("div", { class: "field name-field" },
        make("label", { for: "find", text: say("screen-patients-find") }),
        make("p", { class: "hint", id: "find-hint", text: say("screen-patients-find-hint") }),
        input),
      count,
      found,
      link(say("screen-patients-add"), "#/patients/new", { class: "button", id: "add" }),
    ],
  };
}

const one = ({ id, alias, text }) => rowTo(`#/patients/${id}`, alias, text, { "data-patient": id });
