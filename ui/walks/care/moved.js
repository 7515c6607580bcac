/** After a move: what helped, or that it nearly went wrong. */
import { ask } from "../../backend.js";
import { actions, button, heading, link, make } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { act, swap } from "../../router.js";
import { say } from "../../words.js";
import { facts, ready } from "./parts.js";
import "../../parts/tick-list/tick-list.js";

export async function show({ id, near = null }) {
  await ready();
  const entry = await ask("move_entry", { id: Number(id) });
  const title = say(near ? "screen-care-near-title" : "screen-care-helped-title");
  const options = (near ? entry.signs : entry.helped).map(({ id: name, text }) => ({ id: name, label: text, note: null, picture: null }));
  const list = make("tick-list", { props: { choices: { options, ticked: entry.ticked } } });
  const keep = () => act(async () => {
    await ask("move_more", near ? { id: entry.id, near_miss: true, signs: list.ticked } : { id: entry.id, helped: list.ticked });
    swap("#/people");
  });
  return {
    title,
    back: "#/people",
    home: true,
    body: [
      takeNotice(),
      make("div", { class: "question" },
        make("fieldset", {}, make("legend", {}, heading(title)), facts([entry.text]), list),
        actions(
          near ? null : link(say("screen-care-nearly"), `#/moved/${entry.id}/near`, { class: "button", id: "near" }),
          near ? null : button(say("screen-skip"), "second", () => swap("#/people"), { id: "skip" }),
          button(say("screen-continue"), "main", keep, { id: "continue" }))),
    ],
  };
}
