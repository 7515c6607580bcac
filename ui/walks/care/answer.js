/** The answer on a move: how, with whom and what, what to look at, the steps, when to stop; then all that explains it. */
import { ask } from "../../backend.js";
import { button, fold, heading, link, make, para, section } from "../../make.js";
import { act, go, swap } from "../../router.js";
import { session } from "../../session.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";
import { list } from "./parts.js";
import { wayPicture } from "./pictures.js";
import { readAloud } from "./aloud.js";
import { startOwn } from "../../walk.js";
import "../../parts/caution-list/caution-list.js";
import "../../parts/outcome-mark/outcome-mark.js";
import "../../parts/who-list/who-list.js";

/** The nodes of the answer. */
export function adviceBody({ card, planned }) {
  const first = card.ways.at(0) ?? null;
  return [
    make("outcome-mark", { props: { mark: { outcome: card.outcome, text: say(MARKS[card.outcome] ?? MARKS.refuse) } } }),
    heading(card.headline),
    first ? look(first) : null,
    para(card.why),
    card.plan_old ? make("div", { class: "note note--stop" }, icon("care"), make("p", { text: card.plan_old })) : null,
    make("caution-list", { props: { cautions: card.cautions } }),
    first ? null : section(say("screen-care-else"), list(card.alternatives)),
    section(say("screen-care-before-checks"), list(card.checks, "tick")),
    first ? section(say("screen-care-steps"), make("ol", { class: "care-steps" }, first.steps.map((text) => make("li", { text }))), readAloud(card.speech)) : null,
    section(say("screen-care-stop"), list(card.stop_signs, "stop", "care-stop")),
    first ? section(say("screen-care-after"), para(say("screen-care-after-what"))) : null,
    buttons(card, first, planned),
    explained(card, first),
  ].flat();
}

function look(way) {
  const equipment = way.equipment.map(({ text }) => text).join(", ");
  return make("div", { class: "care-look note" }, wayPicture(way.way),
    make("ol", { class: "care-words" }, way.words.map((text) => make("li", { text }))),
    make("p", { class: "care-with", text: equipment ? `${way.people}. ${say("screen-care-with")}: ${equipment}` : `${way.people}. ${say("screen-care-without")}` }));
}

function buttons(card, first, planned) {
  const keep = (result) => () => act(async () => {
    const { id } = await ask("move_keep", { result, way: result === "done" ? (first?.way ?? null) : null });
    session.notice = { text: say("screen-care-kept"), undo: id, by: "move_undo" };
    swap(result === "done" ? `#/moved/${id}` : "#/people");
  });
  const refuse = (why) => () => act(async () => {
    await ask("move_refuse", { why });
    go("#/report");
  });
  const tell = link(say("screen-care-tell"), "#/report", { class: `button ${first ? "" : "button--main"}`, id: "tell" });
  if (!first) {
    return make("div", { class: "care-buttons" }, tell, button(say("screen-care-not-done"), "second", keep("not_done"), { id: "not-done" }));
  }
  return [
    make("div", { class: "care-buttons care-buttons--two" },
      button(say("screen-care-done"), "main", keep("done"), { id: "done" }),
      button(say("screen-care-not-done"), "second", keep("not_done"), { id: "not-done" })),
    make("div", { class: "care-buttons" },
      link(say("screen-care-wrong"), "#/move-stop", { class: "button", id: "wrong" }),
      planned ? button(say("screen-care-differs"), "second", refuse("differs"), { id: "differs" }) : null,
      first.equipment.length > 0 || first.workers > 1 ? button(say("screen-care-no-equipment"), "second", refuse("missing"), { id: "missing" }) : null,
      card.limit_text ? link(say("screen-care-harder"), "#/move/harder", { class: "button", id: "harder" }) : null,
      tell),
  ];
}

function explained(card, first) {
  return [
    section(say("screen-advice-more-cautions"), card.more_cautions.length ? make("caution-list", { props: { cautions: card.more_cautions } }) : null),
    card.disagree ? section(say("screen-care-differ-title"), para(card.disagree)) : null,
    section(say("screen-advice-other-ways"), card.ways.slice(1).map((way) => fold(way.name, { "data-way": way.way }, look(way), para(way.gloss), make("ol", { class: "care-steps" }, way.steps.map((text) => make("li", { text })))))),
    first ? section(say("screen-care-else"), list(card.alternatives)) : null,
    section(say("screen-advice-who"), card.who.length ? make("who-list", { props: { who: card.who } }) : null),
    card.own.length ? section(say("screen-care-own-load"), card.own.map((text) => para(text))) : null,
    section(say("screen-advice-why"), card.reasons.map(reason), ruledOut(card), para(card.limit_text), para(card.sure)),
    button(say("screen-care-own-again"), "second", () => act(() => startOwn(false)), { id: "own-again" }),
    para(say("screen-care-order"), "care-foot"),
    para(card.foot, "care-foot"),
    para(say("screen-rule-version", { version: card.rule_version }), "care-foot"),
  ];
}

const reason = ({ id, text, authority_text: authority, sure_text: sure, source_text: source }) => fold(text, { "data-reason": id }, para(authority), para(sure), para(source));

function ruledOut({ ruled_out: out }) {
  return out.length === 0 ? null : fold(say("screen-advice-ruled-out"), {},
    make("ul", { class: "care-list" }, out.map(({ way, name, why }) => make("li", { "data-id": way }, icon("dot"), make("span", {}, make("b", { text: name }), ` ${why}`)))));
}

const MARKS = { lift: "screen-care-mark-go", do_not_lift: "screen-care-mark-leave", refuse: "screen-outcome-refuse" };
