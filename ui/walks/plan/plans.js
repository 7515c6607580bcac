/** The plans made on this phone. */
import { ask } from "../../backend.js";
import { heading, link, para } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { say } from "../../words.js";
import { rowTo, rows, useLook } from "../handoff/look.js";

export async function show() {
  const [{ plans }] = await Promise.all([ask("plan_list"), useLook()]);
  return {
    title: say("screen-hand-made"),
    back: "#/hand",
    body: [
      heading(say("screen-hand-made")),
      takeNotice(),
      plans.length === 0 ? para(say("screen-plans-none")) : rows(plans.map(({ id, title, text }) => rowTo(`#/plans/${id}`, title, text, { "data-plan": id }))),
      link(say("screen-plans-new"), "#/plans/new", { class: "button", id: "new" }),
    ],
  };
}
