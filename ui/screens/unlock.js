/** Opens the vault with the passphrase. Warning signs stay one tap away. */
import { ask } from "../backend.js";
import { languageSwitch } from "../language.js";
import { heading, link, make, para } from "../make.js";
import { passForm } from "../pass-form.js";
import { swap } from "../router.js";
import { announce } from "../frame.js";
import { session } from "../session.js";
import { say } from "../words.js";
import { drawPicture } from "../pictures/pictures.js";

export async function show() {
  if (session.first_start || !session.locked) {
    swap(session.first_start ? "#/start" : "#/home");
    return null;
  }
  const page = {
    above: [heading(say("screen-unlock-title")), para(say("screen-unlock-text"))],
    beside: link(say("screen-signs-link"), "#/signs", { class: "button", id: "signs" }),
    label: say("screen-unlock-open"),
    id: "open",
  };
  return {
    title: say("screen-unlock-title"),
    body: [
      languageSwitch(),
      make("div", { class: "unlock-picture" }, drawPicture("locked")),
      passForm([{ id: "passphrase", label: say("screen-pass-label") }], page, open),
    ],
  };
}

async function open(typed) {
  announce(say("screen-unlock-wait"));
  await ask("unlock", typed);
  session.locked = false;
  announce("");
  swap(session.returnTo ?? "#/home");
  session.returnTo = null;
}
