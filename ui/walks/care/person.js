/** One person: the moves first, then what is known. */
import { ask } from "../../backend.js";
import { button, fold, heading, link, make, para, section } from "../../make.js";
import { act, redraw, swap } from "../../router.js";
import { say } from "../../words.js";
import { facts, ready, whoIsIt } from "./parts.js";
import { movePicture } from "./pictures.js";
import { startMove } from "./walk.js";
import { giveTo } from "../handoff/wish.js";

export async function show({ id }) {
  await ready();
  const { person, moves, facts: known, gives } = await ask("person", { id: Number(id) });
  const noted = moves.filter(({ note }) => note !== null);
  const others = moves.filter(({ note }) => note === null);
  const start = (what) => act(() => startMove(person.id, what));
  const forget = () => act(async () => {
    await ask("person_forget", { id: person.id });
    await redraw();
  });
  const drop = () => act(async () => {
    await ask("person_drop", { id: person.id });
    swap("#/people");
  });
  return {
    title: `${say("screen-care-move-title")} – ${person.code}`,
    back: "#/people",
    home: true,
    body: [
      whoIsIt(person),
      heading(say("screen-care-move-title")),
      section(say("screen-care-moves-known"), noted.length === 0 ? null : make("ul", { class: "rows" }, noted.map(({ what, text, note, old }) => make("li", {},
        make("button", { type: "button", class: "row care-row", "data-move": what, on: { click: () => start(what) } },
          movePicture(what), make("span", { class: "care-row__words" }, make("span", { class: "row__name", text }), old ? make("span", { class: "care-old", text: old }) : null, make("span", { class: "row__note", text: note }))))))),
      section(noted.length ? say("screen-care-moves-all") : "", make("ul", { class: "care-tiles" }, others.map(({ what, text }) => make("li", {},
        make("button", { type: "button", class: "care-tile", "data-move": what, on: { click: () => start(what) } }, movePicture(what), make("span", { text })))))),
      section(say("screen-care-known-title"), facts(known),
        link(say("screen-care-plan"), `#/care-plan/${person.id}`, { class: "button", id: "plan" }),
        gives ? button(say("screen-care-plan-give"), "second", () => giveTo({ what: "care_plan", person: person.id }), { id: "give" }) : null,
        known.length ? button(say("screen-care-forget"), "second", forget, { id: "forget" }) : null,
        link(say("screen-care-edit"), `#/care-code/${person.id}`, { class: "button", id: "edit" }),
        fold(say("screen-care-drop"), {}, para(say("screen-care-drop-sure")), button(say("screen-care-drop"), "second", drop, { id: "drop" }))),
    ],
  };
}
