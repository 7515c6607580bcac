/** The people that somebody helps, and the home page of who does that most. */
import { ask } from "../../backend.js";
import { heading, link, make, para } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";
import { ready, whoIsIt } from "./parts.js";
import { personPicture } from "./pictures.js";

export async function show() {
  await ready();
  return { title: say("screen-care-title"), back: "#/home", body: [heading(say("screen-care-title")), takeNotice(), await inside()] };
}

/** The home page of a helper. `first` and `last` are what every home page has. */
export async function helperHome(first, last) {
  await ready();
  return { title: say("screen-home"), body: [heading(say("screen-care-before")), takeNotice(), first, await inside(), last] };
}

async function inside() {
  const { people, draft } = await ask("people");
  return make("div", {},
    draft ? make("div", { class: "prompt" }, para(say("screen-draft-text")), whoIsIt(draft.person, draft.move_text), link(say("screen-draft-go-on"), "#/move", { class: "button", id: "go-on-move" })) : null,
    para(say(people.length ? "screen-care-lead" : "screen-care-none")),
    make("ul", { class: "care-tiles" }, people.map(({ id, code, picture }) => make("li", {},
      make("a", { href: `#/care/${id}`, class: "care-tile care-tile--code", "data-person": code }, personPicture(picture), make("span", { text: code }))))),
    link(say("screen-care-new"), "#/care-new", { class: "button button--main", id: "person-new" }),
    make("ul", { class: "rows" }, row("shift", "#/shift", "history"), row("trained", "#/trained", "tick")));
}

const row = (id, hash, sign) => make("li", {}, make("a", { href: hash, class: "pages__link", id }, icon(sign), say(ROWS[id])));

const ROWS = { shift: "screen-care-shift", trained: "screen-care-trained" };
