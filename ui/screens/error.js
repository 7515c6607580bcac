/** A page that could not be opened, and the way out. */
import { actions, button, heading, link, para } from "../make.js";
import { redraw } from "../router.js";
import { say } from "../words.js";

/** The screen for a failure, given its sentence. */
export function errorScreen(message) {
  return {
    title: say("screen-error-page-title"),
    body: [
      heading(say("screen-error-page-title")),
      para(message),
      actions(
        link(say("screen-home"), "#/home", { class: "button" }),
        button(say("screen-try-again"), "main", redraw, { id: "again" }),
      ),
    ],
  };
}
