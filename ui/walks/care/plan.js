/** What a care plan says of a move, typed in from paper: one question a page. */
import { ask } from "../../backend.js";
import { actions, button, group, heading, make, para, submit } from "../../make.js";
import { act, go, swap } from "../../router.js";
import { showProblems } from "../../frame.js";
import { say } from "../../words.js";
import { facts, ready, whoIsIt } from "./parts.js";
import { movePicture } from "./pictures.js";
import "../../parts/choice-list/choice-list.js";
import "../../parts/name-field/name-field.js";
import "../../parts/tick-list/tick-list.js";

/** What was told so far, of one person and move. */
let told = {};

export async function show({ person, move = null, step = "ways" }) {
  await ready();
  if (move === null) {
    return pickMove(person);
  }
  const view = await ask("care_plan", { person: Number(person), move });
  const key = `${person}/${move}`;
  if (told.key !== key || (step !== "ways" && !told.ways)) {
    told = { key, ...view.plan };
    if (step !== "ways") {
      swap(`#/care-plan/${key}/ways`);
      return null;
    }
  }
  const at = STEPS.indexOf(step);
  const on = () => go(`#/care-plan/${key}/${STEPS[at + 1]}`);
  const title = say(TITLES[step] ?? TITLES.ways);
  return {
    title: `${title} – ${view.person.code}`,
    back: at > 0 ? `#/care-plan/${key}/${STEPS[at - 1]}` : `#/care-plan/${person}`,
    home: true,
    body: [whoIsIt(view.person, view.move_text), (KINDS[step] ?? KINDS.ways)({ view, title, on, person, move })],
  };
}

async function pickMove(id) {
  const { person, moves } = await ask("person", { id: Number(id) });
  told = {};
  return {
    title: `${say("screen-care-plan-pick")} – ${person.code}`,
    back: `#/care/${id}`,
    home: true,
    body: [
      whoIsIt(person),
      heading(say("screen-care-plan-pick")),
      make("ul", { class: "care-tiles" }, moves.filter(({ what }) => what !== "catch").map(({ what, text }) => make("li", {},
        make("a", { href: `#/care-plan/${id}/${what}/ways`, class: "care-tile", "data-move": what }, movePicture(what), make("span", { text }))))),
    ],
  };
}

function day(label, value) {
  const field = make("name-field", { props: { name: { id: "day", label: say(label), hint: say("screen-care-plan-on-hint") } } });
  field.querySelector("input").value = value;
  return field;
}

const KINDS = {
  ways({ view, title, on, person, move }) {
    const options = view.ways.map(({ id, text, note }) => ({ id, label: text, note, picture: null }));
    const list = make("tick-list", { props: { choices: { options, ticked: told.ways ?? [] } } });
    const next = () => {
      if (list.ticked.length === 0) {
        showProblems([{ text: say("screen-tick-nothing"), field: "tick-0" }]);
        return;
      }
      told.ways = list.ticked;
      on();
    };
    const drop = () => act(async () => {
      await ask("care_plan_drop", { person: Number(person), move });
      told = {};
      swap(`#/care/${person}`);
    });
    return make("div", { class: "question" },
      make("fieldset", {}, make("legend", {}, heading(title)), view.plan ? facts([view.plan.text]) : null, para(say("screen-care-plan-strict"), "hint"), list),
      actions(
        view.plan ? button(say("screen-care-plan-drop"), "second", drop, { id: "drop" }) : null,
        button(say("screen-continue"), "main", next, { id: "continue" })));
  },

  workers({ view, title, on }) {
    const pick = (count) => {
      told.workers = count;
      on();
    };
    const options = Array.from({ length: view.most_workers }, (_, at) => ({ id: String(at + 1), label: String(at + 1), note: null, picture: null }));
    return group(title,
      make("choice-list", { props: { choice: { options, chosen: told.workers ? String(told.workers) : null } }, on: { "choice-list-pick": (event) => pick(Number(event.detail)) } }),
      button(say("screen-care-plan-not-said"), "second", () => pick(null), { id: "not-sure" }));
  },

  by({ view, title, on }) {
    const options = view.issuers.map(({ id, text }) => ({ id, label: text, note: null, picture: null }));
    const pick = (event) => {
      told.issued_by = event.detail;
      on();
    };
    return group(title, make("choice-list", { props: { choice: { options, chosen: told.issued_by ?? null } }, on: { "choice-list-pick": pick } }));
  },

  on({ view, title, on }) {
    const field = day("screen-care-plan-on-label", told.issued_on ?? view.today);
    const keep = (event) => {
      event.preventDefault();
      told.issued_on = field.text.trim();
      on();
    };
    return make("form", { class: "question", novalidate: true, on: { submit: keep } }, heading(title), field, actions(submit(say("screen-continue"), "continue")));
  },

  review({ title, person, move }) {
    const field = day("screen-care-plan-review-label", told.review_on ?? "");
    const keep = (review_on) => {
      if (review_on === "") {
        showProblems([{ text: say("screen-care-plan-review-empty"), field: "day" }]);
        return;
      }
      act(async () => {
        await ask("care_plan_keep", { person: Number(person), move, ways: told.ways, workers: told.workers ?? null, issued_by: told.issued_by ?? "other", issued_on: told.issued_on, review_on });
        told = {};
        swap(`#/care/${person}`);
      }, { field: "day" });
    };
    return make("form", { class: "question", novalidate: true, on: { submit: (event) => { event.preventDefault(); keep(field.text.trim()); } } },
      heading(title), para(say("screen-care-plan-review-what"), "hint"), field,
      actions(
        button(say("screen-care-plan-not-said"), "second", () => keep(null), { id: "not-sure" }),
        submit(say("screen-care-plan-keep"), "keep")));
  },
};

const STEPS = ["ways", "workers", "by", "on", "review"];
const TITLES = { ways: "screen-care-plan-ways", workers: "screen-care-plan-workers", by: "screen-care-plan-by", on: "screen-care-plan-on", review: "screen-care-plan-review" };
