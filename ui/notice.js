/** What was just kept, said once on the page that follows. */
import { ask } from "./backend.js";
import { announce } from "./frame.js";
import { button, make } from "./make.js";
import { act, redraw } from "./router.js";
import { session } from "./session.js";
import { say } from "./words.js";
import { icon } from "./pictures/icons.js";

/** The notice as a node, or null if there is none. It is gone afterwards. */
export function takeNotice() {
  const { notice } = session;
  session.notice = null;
  if (!notice) {
    return null;
  }
  announce(notice.text);
  const undo = () => act(async () => {
    await ask(notice.by ?? "lift_undo", { id: notice.undo });
    session.notice = { text: say("screen-undone"), undo: null };
    await redraw();
  });
  return make("div", { class: "note note--kept", role: "status" }, icon("tick"), make("span", { text: notice.text }),
    notice.undo ? button(say("screen-undo"), "quiet", undo, { id: "undo" }) : null);
}
