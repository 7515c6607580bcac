/** What somebody is trained on. Other equipment is never offered. */
import { ask } from "../../backend.js";
import { actions, button, heading, make, para } from "../../make.js";
import { act, goBack } from "../../router.js";
import { say } from "../../words.js";
import { ready } from "./parts.js";
import "../../parts/tick-list/tick-list.js";

export async function show() {
  await ready();
  const { question } = await ask("trained");
  const list = make("tick-list", { props: { choices: { options: question.options, ticked: question.value?.choices ?? [] } } });
  const keep = () => act(async () => {
    await ask("trained_set", { equipment: list.ticked });
    goBack("#/people");
  });
  return {
    title: question.title,
    back: "#/people",
    home: true,
    body: [make("div", { class: "question" },
      make("fieldset", {}, make("legend", {}, heading(question.title)), para(question.hint, "hint"), list),
      actions(button(say("screen-continue"), "main", keep, { id: "continue" })))],
  };
}
