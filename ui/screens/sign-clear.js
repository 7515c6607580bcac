/** Warning signs that were told: each has gone, or a clinician has looked at it. */
import { ask } from "../backend.js";
import { button, heading, make, para } from "../make.js";
import { act, redraw, swap } from "../router.js";
import { say } from "../words.js";

export async function show() {
  const { open_sign: open } = await ask("home");
  if (open === null) {
    swap("#/home");
    return null;
  }
  return {
    title: say("screen-sign-clear-title"),
    back: "#/home",
    body: [heading(say("screen-sign-clear-title")), para(say("screen-sign-clear-text")), open.signs.map(one)],
  };
}

/** One sign; `by` says who may clear it. */
function one({ id, text, by }) {
  const clear = (who) => act(async () => {
    await ask("sign_clear", { sign: id, by: who });
    await redraw();
  });
  return make("section", { class: "prompt" },
    make("h2", { class: "prompt__what", text }),
    by.includes("clinician") ? button(say("screen-sign-clear-clinician"), "second", () => clear("clinician"), { "data-clear": `${id} clinician` }) : null,
    by.includes("me")
      ? button(say("screen-sign-clear-me"), "second", () => clear("me"), { "data-clear": `${id} me` })
      : para(say("screen-sign-clear-emergency")));
}
