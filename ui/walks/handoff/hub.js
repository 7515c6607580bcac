/** Where handing over starts: give, take in, plans, people. */
import { ask } from "../../backend.js";
import { heading, para, section } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { say } from "../../words.js";
import { rowTo, rows, useLook } from "./look.js";

export async function show() {
  const [card, { pairings }] = await Promise.all([ask("card"), ask("pairings"), useLook()]);
  const people = pairings.map(({ alias }) => alias).join(", ");
  return {
    title: say("screen-hand-title"),
    back: "#/home",
    body: [
      heading(say("screen-hand-title")),
      takeNotice(),
      para(say("screen-hand-lead")),
      rows(
        rowTo("#/hand/give", say("screen-hand-give"), say("screen-hand-give-note"), { id: "give" }),
        rowTo("#/hand/scan/parcel", say("screen-hand-take"), say("screen-hand-take-note"), { id: "take" })),
      section(say("screen-hand-plans"), rows(
        rowTo("#/plan", say("screen-hand-mine"), null, { id: "my-plan" }),
        rowTo("#/plans", say("screen-hand-made"), say("screen-hand-made-note"), { id: "plans" }))),
      section(say("screen-hand-people"), rows(
        rowTo("#/patients", say("screen-patients"), null, { id: "patients" }),
        rowTo("#/hand/pair", say("screen-hand-pair"), say("screen-hand-pair-note"), { id: "pair" }),
        rowTo("#/hand/people", say("screen-hand-paired"), people || say("screen-people-none-short"), { id: "people" }),
        rowTo("#/hand/card", say("screen-card-title"), card.alias ?? say("screen-hand-no-alias"), { id: "card" }))),
      section(say("screen-hand-kept"), rows(rowTo("#/what-left", say("screen-gone-title"), say("screen-gone-note"), { id: "what-left" }))),
    ],
  };
}
