/** The plan that is followed: where it stands today, what to practise, what to do in a flare-up, all of it in plain words. */
import { ask } from "../../backend.js";
import { button, fold, heading, link, make, para, section } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { act, redraw } from "../../router.js";
import { session } from "../../session.js";
import { say } from "../../words.js";
import { lines, loud, rowTo, rows, useLook } from "../handoff/look.js";
import "../../parts/check-rows/check-rows.js";

export async function show() {
  const [{ plan }] = await Promise.all([ask("plan_now"), useLook()]);
  const title = say("screen-hand-mine");
  return { title, back: "#/home", body: [heading(title), takeNotice(), plan?.day.flare.today ? flareOn(plan.day.flare) : null, plan ? followed(plan) : none()] };
}

function none() {
  return [para(say("screen-plan-none")), link(say("screen-hand-take"), "#/hand/scan/parcel", { class: "button", id: "take" })];
}

function followed(plan) {
  const { practice, step, flare } = plan.day;
  return [
    para(plan.title, "hand-alias"),
    para([plan.from, plan.version_text].filter(Boolean).join(" · "), "hint"),
    plan.note ? loud(para(plan.note), para(plan.call)) : [para(plan.review_text), para(plan.call)],
    step ? section(say("screen-plan-step"), level(step)) : null,
    section(say("screen-plan-practice"), practice.length === 0 ? null : rows(...practice.map(({ item, name, text, today }) =>
      rowTo(`#/plan/item-${item}`, name, [text, today].filter(Boolean).join(" "), { "data-item": item })))),
    flare.today ? null : [button(say("screen-plan-flare"), "second", tellFlare, { id: "flare" }), fold(say("screen-plan-flare-steps"), { id: "flare-steps" }, lines(flare.steps))],
    section(say("screen-plan-whole"), make("check-rows", { props: { facts: plan.lines } })),
    link(say("screen-plan-log"), "#/plan/log", { class: "button", id: "log" }),
    fold(say("screen-plan-stop"), { id: "stop-fold" }, para(say("screen-plan-stop-what")), button(say("screen-plan-stop-yes"), "second", stop, { id: "stop" })),
  ];
}

/** The one thing that is offered, or why it stays as it is. */
function level({ text, why, need, offer }) {
  const answer = (take) => act(async () => {
    const { id } = await ask("step_answer", { step: offer.step, take });
    session.notice = { text: say(take ? "screen-plan-stepped" : "screen-plan-stayed"), undo: id, by: "practice_undo" };
    await redraw();
  });
  return [
    para(text, "hand-alias"),
    lines(why),
    para(need),
    offer ? [button(offer.take, "second", () => answer(true), { id: "step-take" }), button(offer.leave, "second", () => answer(false), { id: "step-leave" })] : null,
  ];
}

function flareOn({ steps, often, call }) {
  return loud(make("p", {}, make("b", { text: say("screen-plan-flare-on") })), para(say("screen-plan-flare-what")), para(often), lines(steps), para(call), link(say("screen-signs-link"), "#/signs", { id: "signs" }));
}

const tellFlare = () => act(async () => {
  const { id } = await ask("flare_start");
  session.notice = { text: say("screen-plan-flare-told"), undo: id, by: "practice_undo" };
  await redraw();
});

const stop = () => act(async () => {
  await ask("plan_stop");
  session.notice = { text: say("screen-plan-stopped"), undo: null };
  await redraw();
});
