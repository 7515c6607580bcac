/** My card: the name that others see. One that tells nothing about you is suggested. */
import { ask } from "../../backend.js";
import { actions, button, heading, make, para, submit } from "../../make.js";
import { act, goBack, swap } from "../../router.js";
import { say } from "../../words.js";
import { useLook } from "./look.js";
import "../../parts/name-field/name-field.js";

/** Where to go on once there is a name; null is back to where handing over starts. */
let next = null;

/** Asks for a name first, in the place of a page that needs one. */
export function askName(page) {
  next = page;
  swap("#/hand/card");
}

export async function show() {
  const [card] = await Promise.all([ask("card"), useLook()]);
  const field = make("name-field", { props: { name: { id: "alias", label: say("screen-card-label"), hint: say("screen-card-hint") } } });
  const input = field.querySelector("input");
  input.value = card.alias ?? "";
  const keep = (event) => {
    event.preventDefault();
    act(async () => {
      await ask("card_set", { alias: field.text.trim() });
      const page = next;
      next = null;
      page ? swap(page) : goBack("#/hand");
    }, { field: "alias" });
  };
  const suggest = () => {
    input.value = card.suggest;
    input.focus();
  };
  return {
    title: say("screen-card-title"),
    back: "#/hand",
    body: [
      make("form", { class: "form", novalidate: true, on: { submit: keep } },
        heading(say("screen-card-title")),
        para(say("screen-card-what")),
        field,
        button(say("screen-card-suggest", { name: card.suggest }), "second", suggest, { id: "suggest" }),
        actions(submit(say("screen-card-keep"), "keep"))),
    ],
  };
}
