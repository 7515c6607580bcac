/** One question. Its kind decides which part takes the answer; Rust decides what comes next. */
import { actions, button, fold, group, heading, make, para, submit } from "../make.js";
import { act, cameFrom } from "../router.js";
import { answerQuestion, pageHere } from "../walk.js";
import { showProblems } from "../frame.js";
import { backOf } from "../flow/place.js";
import { NOT_SURE, choose, ratePain, readKept, readNumber, settleTicks, typeNumber, writeNumber } from "../flow/answer.js";
import { session } from "../session.js";
import { say } from "../words.js";
import { drawPicture, hasPicture } from "../pictures/pictures.js";
import "../parts/choice-list/choice-list.js";
import "../parts/number-field/number-field.js";
import "../parts/pain-scale/pain-scale.js";
import "../parts/tick-list/tick-list.js";

export async function show() {
  const page = await pageHere("question");
  if (!page) {
    return null;
  }
  const { question } = page;
  return {
    title: page.title_bar ? `${question.title} – ${page.title_bar}` : question.title,
    back: CAME_TO_CHANGE.find(cameFrom) ?? backOf(page),
    home: true,
    bar: page.place ? say("screen-place", page.place) : null,
    body: [KINDS[question.kind](question, readKept(question.value))],
  };
}

/** Pages that open one question to change it: Back leads to them again. */
const CAME_TO_CHANGE = ["#/check", "#/settings"];

const KINDS = {
  choice(question, kept) {
    const choice = { options: question.options, chosen: kept.choice };
    return asked(question,
      make("choice-list", { props: { choice }, on: { "choice-list-pick": (event) => give(question, choose(event.detail)) } }),
      notSure(question, kept));
  },

  choices(question, kept) {
    const list = make("tick-list", { props: { choices: { options: question.options, ticked: kept.choices ?? [] } } });
    const settle = (tapped) => {
      const { answer, problem } = settleTicks(list.ticked, tapped);
      if (problem) {
        showProblems([{ text: say(TICK_PROBLEMS[problem]), field: "tick-0" }]);
      } else {
        give(question, answer);
      }
    };
    const boxes = make("fieldset", {}, make("legend", {}, heading(question.title)), hint(question), list, why(question));
    return make("div", { class: "question" }, boxes, actions(
      notSure(question, kept),
      button(say("screen-none-of-these"), "second", () => settle("none"), { id: "none", "data-chosen": kept.choices?.length === 0 }),
      button(say("screen-continue"), "main", () => settle("some"), { id: "continue" }),
    ));
  },

  pain(question, kept) {
    return asked(question,
      hasPicture(question.id) ? make("div", { class: "question__picture" }, drawPicture(question.id)) : null,
      make("div", { class: "question__low" },
        make("pain-scale", { props: { chosen: kept.pain }, on: { "pain-scale-pick": (event) => give(question, ratePain(event.detail)) } }),
        notSure(question, kept)));
  },

  number(question, kept) {
    const { unit, label } = question.number;
    const text = kept.number === null ? "" : writeNumber(kept.number, session.language);
    const field = make("number-field", { props: { number: { label, text, described: question.hint ? "hint" : null } } });
    const settle = (event) => {
      event.preventDefault();
      const number = readNumber(field.text);
      if (number === null) {
        showProblems([{ text: say("screen-number-problem"), field: "number" }]);
      } else {
        give(question, typeNumber(number, unit), "number");
      }
    };
    return make("form", { class: "question", novalidate: true, on: { submit: settle } },
      heading(question.title), hint(question), field, why(question),
      actions(notSure(question, kept), submit(say("screen-continue"), "continue")));
  },
};

function give(question, answer, field = null) {
  act(() => answerQuestion(question.id, answer), { field });
}

function asked(question, ...children) {
  return group(question.title, hint(question), why(question), ...children);
}

function hint({ hint: text }) {
  return text ? make("p", { class: "hint", id: "hint", text }) : null;
}

function why({ why: text }) {
  return text ? fold(say("screen-why-asked"), { class: "question__why" }, para(text)) : null;
}

function notSure(question, kept) {
  return question.not_sure
    ? button(question.not_sure_text ?? say("screen-not-sure"), "second", () => give(question, NOT_SURE), { id: "not-sure", "data-chosen": kept.notSure })
    : null;
}

const TICK_PROBLEMS = { nothing_ticked: "screen-tick-nothing", ticked_and_none: "screen-tick-and-none" };
