/** A warning sign that was told: it has gone, or a clinician has looked at it. */
import { ask } from "../backend.js";
import { button, heading, make, para } from "../make.js";
import { act, redraw, swap } from "../router.js";
import { say } from "../words.js";

export async function show() {
  const [{ open_sign: open }, { groups }] = await Promise.all([ask("home"), ask("signs")]);
  if (open === null) {
    swap("#/home");
    return null;
  }
  const emergency = groups.find(({ id }) => id === "emergency")?.signs.some(({ id }) => id === open.sign);
  const clear = (by) => act(async () => {
    await ask("sign_clear", { sign: open.sign, by });
    await redraw();
  });
  return {
    title: say("screen-sign-clear-title"),
    back: "#/home",
    body: [
      heading(say("screen-sign-clear-title")),
      para(say("screen-sign-clear-text")),
      make("div", { class: "prompt" },
        make("p", { class: "prompt__what", text: open.text }),
        para(open.since_text),
        button(say("screen-sign-clear-clinician"), "second", () => clear("clinician"), { id: "clear-clinician" }),
        emergency ? para(say("screen-sign-clear-emergency")) : button(say("screen-sign-clear-me"), "second", () => clear("me"), { id: "clear-me" })),
    ],
  };
}
