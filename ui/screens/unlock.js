/** Opens the vault with the passphrase. Warning signs stay one tap away. */
import { ask } from "../backend.js";
import { actions, heading, link, make, para } from "../make.js";
import { act, redraw, swap } from "../router.js";
import { announce, showProblems } from "../frame.js";
import { changeLanguage, session } from "../session.js";
import { say } from "../words.js";
import { drawPicture } from "../pictures/pictures.js";
import "../parts/language-switch/language-switch.js";
import "../parts/pass-field/pass-field.js";

export async function show() {
  if (session.first_start || !session.locked) {
    swap(session.first_start ? "#/start" : "#/home");
    return null;
  }
  const field = make("pass-field", { props: { pass: { id: "passphrase", label: say("screen-pass-label") } } });
  const change = (event) => act(async () => {
    await changeLanguage(event.detail);
    await redraw();
  });
  return {
    title: say("screen-unlock-title"),
    body: [
      make("language-switch", { props: { choice: { languages: session.languages, now: session.language } }, on: { "language-switch-pick": change } }),
      make("div", { class: "unlock-picture" }, drawPicture("locked")),
      make("form", { class: "form", novalidate: true, on: { submit: (event) => open(event, field) } },
        heading(say("screen-unlock-title")),
        para(say("screen-unlock-text")),
        field,
        actions(
          link(say("screen-signs-link"), "#/signs", { class: "button button--second", id: "signs" }),
          make("button", { type: "submit", class: "button button--main", id: "open", text: say("screen-unlock-open") }),
        )),
    ],
  };
}

function open(event, field) {
  event.preventDefault();
  if (field.text === "") {
    showProblems([{ text: say("screen-pass-empty"), field: "passphrase" }]);
    return;
  }
  announce(say("screen-unlock-wait"));
  act(async () => {
    await ask("unlock", { passphrase: field.text });
    field.clear();
    session.locked = false;
    announce("");
    swap(session.returnTo ?? "#/home");
    session.returnTo = null;
  }, { field: "passphrase" });
}
