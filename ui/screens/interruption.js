/** "Is that right?": an answer that is unlikely but possible. */
import { actions, button, heading, link, para } from "../make.js";
import { act } from "../router.js";
import { answerQuestion, pageHere } from "../walk.js";
import { backOf } from "../flow/place.js";
import { choose } from "../flow/answer.js";

export async function show() {
  const page = await pageHere("interruption");
  if (!page) {
    return null;
  }
  return {
    title: page.title,
    back: backOf(page),
    home: true,
    body: [
      heading(page.title),
      para(page.text, "lead"),
      actions(
        link(page.change, `#/walk/${page.question}`, { class: "button", id: "change" }),
        button(page.go_on, "main", () => act(() => answerQuestion(page.id, choose("go_on"))), { id: "go-on" }),
      ),
    ],
  };
}
