/** Who this phone is paired with. */
import { ask } from "../../backend.js";
import { heading, link, para } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { say } from "../../words.js";
import { rowTo, rows, useLook } from "./look.js";

export async function show() {
  const [{ pairings }] = await Promise.all([ask("pairings"), useLook()]);
  return {
    title: say("screen-hand-paired"),
    back: "#/hand",
    body: [
      heading(say("screen-hand-paired")),
      takeNotice(),
      pairings.length === 0 ? para(say("screen-people-none")) : rows(pairings.map(one)),
      link(say("screen-hand-pair"), "#/hand/pair", { class: "button", id: "pair" }),
    ],
  };
}

function one({ id, alias, role, text, note }) {
  return rowTo(`#/hand/people/${id}`, alias, [say(ROLES[role] ?? ROLES.lifts), text, note].filter(Boolean).join(" · "), { "data-pairing": id });
}

const ROLES = { lifts: "screen-role-lifts", helps: "screen-role-helps", treats: "screen-role-treats" };
