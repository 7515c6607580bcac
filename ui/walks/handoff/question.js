/** What has come in, and whether to use it. Nothing is changed before the answer. */
import { ask } from "../../backend.js";
import { actions, button, heading, make, para } from "../../make.js";
import { act, swap } from "../../router.js";
import { session } from "../../session.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";
import { useLook } from "./look.js";
import "../../parts/check-rows/check-rows.js";

export async function show() {
  let question;
  try {
    [question] = await Promise.all([ask("parcel_question"), useLook()]);
  } catch (error) {
    if (error.code === "no_parcel") {
      swap("#/hand");
      return null;
    }
    throw error;
  }
  const settle = (command) => act(async () => {
    const { said, to } = await ask(command);
    session.notice = { text: said, undo: null };
    swap(to ?? "#/hand");
  });
  return {
    title: question.title,
    back: "#/hand",
    body: [
      heading(question.title),
      para(question.text, "lead"),
      question.warnings.map((text) => make("div", { class: "note note--stop" }, icon("care"), make("p", { text }))),
      question.facts.length ? make("check-rows", { props: { facts: question.facts } }) : null,
      para(say("screen-question-nothing"), "hint"),
      actions(
        button(question.no, "second", () => settle("parcel_decline"), { id: "no" }),
        button(question.yes, "main", () => settle("parcel_accept"), { id: "yes" })),
    ],
  };
}
