/** Left it: what was done instead, one tap. */
import { button, group, make } from "../make.js";
import { act, swap } from "../router.js";
import { adviceAtHand, keepLift } from "../walk.js";
import { session } from "../session.js";
import { say } from "../words.js";
import "../parts/choice-list/choice-list.js";

export async function show() {
  const page = await adviceAtHand();
  if (!page) {
    swap("#/home");
    return null;
  }
  const options = page.card.alternatives.map(({ id, text }) => ({ id, label: text }));
  return {
    title: say("screen-left-title"),
    back: "#/advice",
    home: true,
    body: [
      group(say("screen-left-title"),
        make("choice-list", { props: { choice: { options } }, on: { "choice-list-pick": (event) => keep(event.detail) } }),
        button(say("screen-left-only"), "second", () => keep(null), { id: "left-only" })),
    ],
  };
}

function keep(instead) {
  act(async () => {
    const id = await keepLift({ done: false, instead });
    session.notice = { text: say("screen-kept"), undo: id };
    swap("#/home");
  });
}
