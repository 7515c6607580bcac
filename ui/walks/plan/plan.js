/** The plan that is followed, in plain words. */
import { ask } from "../../backend.js";
import { button, fold, heading, link, make, para } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { act, redraw } from "../../router.js";
import { session } from "../../session.js";
import { say } from "../../words.js";
import { loud, useLook } from "../handoff/look.js";
import "../../parts/check-rows/check-rows.js";

export async function show() {
  const [{ plan }] = await Promise.all([ask("plan_now"), useLook()]);
  const title = say("screen-hand-mine");
  return { title, back: "#/hand", body: [heading(title), takeNotice(), plan ? followed(plan) : none()] };
}

function none() {
  return [para(say("screen-plan-none")), link(say("screen-hand-take"), "#/hand/scan/parcel", { class: "button", id: "take" })];
}

function followed(plan) {
  const stop = () => act(async () => {
    await ask("plan_stop");
    session.notice = { text: say("screen-plan-stopped"), undo: null };
    await redraw();
  });
  return [
    para(plan.title, "hand-alias"),
    para([plan.from, plan.version_text].filter(Boolean).join(" · "), "hint"),
    plan.note ? loud(para(plan.note)) : null,
    para(plan.review_text),
    make("check-rows", { props: { facts: plan.lines } }),
    fold(say("screen-plan-stop"), { id: "stop-fold" }, para(say("screen-plan-stop-what")), button(say("screen-plan-stop-yes"), "second", stop, { id: "stop" })),
  ];
}
