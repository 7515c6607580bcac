/** Gives a task a name, so that next time only what changes is asked. */
import { ask } from "../backend.js";
import { actions, heading, make, para, submit } from "../make.js";
import { act, goBack } from "../router.js";
import { showProblems } from "../frame.js";
import { session } from "../session.js";
import { say } from "../words.js";
import "../parts/name-field/name-field.js";

export async function show({ from }) {
  const back = from === "draft" ? "#/advice" : `#/history/${from}`;
  const field = make("name-field", { props: { name: { id: "name", label: say("screen-save-name"), hint: say("screen-save-hint") } } });
  const keep = (event) => {
    event.preventDefault();
    const name = field.text.trim();
    if (name === "") {
      showProblems([{ text: say("screen-save-empty"), field: "name" }]);
      return;
    }
    act(async () => {
      await ask("saved_keep", { name, from: from === "draft" ? from : Number(from) });
      session.notice = { text: say("screen-saved-kept"), undo: null };
      goBack(from === "draft" ? back : "#/home");
    }, { field: "name" });
  };
  return {
    title: say("screen-save-title"),
    back,
    body: [
      make("form", { class: "form", novalidate: true, on: { submit: keep } },
        heading(say("screen-save-title")),
        para(say("screen-save-text")),
        field,
        actions(submit(say("screen-save-keep"), "keep"))),
    ],
  };
}
