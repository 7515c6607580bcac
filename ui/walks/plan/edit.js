/** A plan that is being made: every line with a way to change it, and what it would answer today. */
import { ask } from "../../backend.js";
import { button, heading, link, make, para, scrollAbove, section } from "../../make.js";
import { go } from "../../router.js";
import { say } from "../../words.js";
import { lines, useLook } from "../handoff/look.js";
import { giveTo } from "../handoff/wish.js";
import { useStyle } from "../style.js";
import "../../parts/check-rows/check-rows.js";
import "./preview.js";

export async function show({ id }) {
  const [plan, preview] = await Promise.all([ask("plan_edit", { id: Number(id) }), ask("plan_preview", { id: Number(id) }), useLook(), useStyle("plan.css", import.meta.url)]);
  const change = (event) => go(`#/plans/${id}/${event.detail}`);
  return {
    title: plan.title,
    back: "#/plans",
    body: scrollAbove(
      button(say("screen-plans-give"), "main", () => giveTo({ what: "plan", plan: plan.id }), { id: "give" }),
      heading(plan.title),
      para(say("screen-plans-for", { name: plan.for }), "hand-alias"),
      para(plan.version_text, "hint"),
      plan.sections.map(({ title, fields }) => section(title,
        make("check-rows", { props: { rows: fields.map(({ id: question, label, text }) => ({ question, label, text: text || "–" })) }, on: { "check-rows-change": change } }))),
      section(say("screen-plans-preview"), make("plan-preview", { props: { tried: { plan: plan.id, preview } } })),
      lines(plan.notes, "hand-lines hint"),
      link(say("screen-plans-paper-make"), `#/paper/${id}`, { class: "button", id: "paper" })),
  };
}
