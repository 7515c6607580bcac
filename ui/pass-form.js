/** A form of passphrase fields, with what stands above and below them. */
import { actions, make, submit } from "./make.js";
import { act } from "./router.js";
import { showProblems } from "./frame.js";
import { say } from "./words.js";
import "./parts/pass-field/pass-field.js";

/**
 * @param {Array<object>} fields what pass-field draws; each `id` is a name of the command
 * @param {{above: Array, below?: Array, beside?: Node, label: string, id: string}} page
 * @param {(typed: Record<string, string>) => Promise<void>} send called when every field is filled
 */
export function passForm(fields, { above, below = [], beside = null, label, id }, send) {
  const drawn = fields.map((pass) => make("pass-field", { props: { pass } }));
  const settle = (event) => {
    event.preventDefault();
    const empty = drawn.findIndex(({ text }) => text === "");
    if (empty >= 0) {
      showProblems([{ text: say("screen-pass-empty"), field: fields[empty].id }]);
      return;
    }
    act(async () => {
      await send(Object.fromEntries(drawn.map(({ text }, at) => [fields[at].id, text])));
      drawn.forEach((field) => field.clear());
    }, { field: (error) => error.field ?? fields[0].id });
  };
  return make("form", { class: "form", novalidate: true, on: { submit: settle } },
    above, drawn, below, actions(beside, submit(label, id)));
}
