/** A page of the walk before a move: a question, the worker first, or the answer. */
import { ask } from "../../backend.js";
import { actions, button, fold, group, heading, make, para } from "../../make.js";
import { act, go } from "../../router.js";
import { showProblems } from "../../frame.js";
import { say } from "../../words.js";
import { settleTicks } from "../../flow/answer.js";
import { adviceBody } from "./answer.js";
import { facts, ready, whoIsIt } from "./parts.js";
import { answerMove, backOfMove, movePageHere } from "./walk.js";
import { startOwn } from "../../walk.js";
import "../../parts/choice-list/choice-list.js";
import "../../parts/emergency-card/emergency-card.js";
import "../../parts/tick-list/tick-list.js";

export async function show({ question = null }) {
  await ready();
  const page = await movePageHere(question);
  return page ? KINDS[page.page](page) : null;
}

const KINDS = {
  question(page) {
    return screen(page, page.question.title, page.question.kind === "choice" ? choice(page) : choices(page));
  },

  own(page) {
    const quick = () => act(async () => {
      await ask("own_quick");
      go("#/move");
    });
    const start = () => act(() => startOwn(page.sign));
    return screen(page, page.title, make("div", { class: "question" },
      heading(page.title), page.text.map((text) => para(text)),
      actions(
        page.quick ? button(page.quick, "main", quick, { id: "quick" }) : null,
        button(say("screen-care-own-ask"), page.quick ? "second" : "main", start, { id: "own" }))));
  },

  advice(page) {
    const { card } = page;
    if (card.outcome === "seek_care") {
      const read = () => go("#/report");
      return { ...screen(page, card.headline, make("emergency-card", { props: { card }, on: { "emergency-card-read": read } })), tone: card.urgency === "emergency" ? "alarm" : "calm" };
    }
    return screen(page, card.headline, adviceBody(page));
  },
};

function screen(page, title, body) {
  return { title: `${title} – ${page.person.code}`, back: backOfMove(page), home: true, body: [whoIsIt(page.person, page.move_text), body].flat() };
}

function choice({ question, facts: lines }) {
  const give = (answer) => act(() => answerMove(question.id, answer));
  return group(question.title, hint(question), facts(lines),
    make("choice-list", { props: { choice: { options: question.options, chosen: question.value?.choice ?? null } }, on: { "choice-list-pick": (event) => give({ choice: event.detail }) } }),
    question.not_sure ? button(say("screen-not-sure"), "second", () => give({ not_sure: true }), { id: "not-sure", "data-chosen": question.value?.not_sure ?? false }) : null);
}

function choices({ question }) {
  const boxes = make("tick-list", { props: { choices: { options: question.options, ticked: question.value?.choices ?? [] } } });
  const settle = (tapped) => {
    const { answer, problem } = settleTicks(boxes.ticked, tapped);
    if (problem) {
      showProblems([{ text: say(PROBLEMS[problem]), field: "tick-0" }]);
    } else {
      act(() => answerMove(question.id, answer));
    }
  };
  return make("div", { class: "question" },
    make("fieldset", {}, make("legend", {}, heading(question.title)), hint(question), boxes, why(question)),
    actions(
      button(say("screen-none-of-these"), "second", () => settle("none"), { id: "none", "data-chosen": question.value?.choices?.length === 0 }),
      button(say("screen-continue"), "main", () => settle("some"), { id: "continue" })));
}

const hint = ({ hint: text }) => (text ? para(text, "hint") : null);
const why = ({ why: text }) => (text ? fold(say("screen-why-asked"), { class: "question__why" }, para(text)) : null);

const PROBLEMS = { nothing_ticked: "screen-tick-nothing", ticked_and_none: "screen-tick-and-none" };
