/** What every page of the hand-over has in common: its style, its rows, its notes. */
import { make } from "../../make.js";
import { useStyle } from "../style.js";
import { icon } from "../../pictures/icons.js";

/** Waits for the style sheet of these pages. */
export function useLook() {
  return useStyle("handoff.css", import.meta.url);
}

/** A row that opens another page. */
export function rowTo(hash, name, note, given = {}) {
  return make("li", {}, make("a", { href: hash, class: "row row--link", ...given },
    make("span", { class: "row__name", text: name }),
    note ? make("span", { class: "row__note", text: note }) : null,
    icon("on")));
}

/** Rows under each other. */
export function rows(...all) {
  return make("ul", { class: "rows" }, ...all);
}

/** A list of plain lines. */
export function lines(texts, className = "hand-lines") {
  return texts.length === 0 ? null : make("ul", { class: className }, texts.map((text) => make("li", { text })));
}

/** Words to be read aloud, numbered and large. They are English ones in every language. */
export function bigWords(words) {
  return make("ol", { class: "big-words", lang: "en" }, words.map((word) => make("li", {}, make("b", { text: word }))));
}

/** A loud note with a sign of its own. */
export function loud(...children) {
  return make("div", { class: "note note--stop" }, icon("stop"), make("div", {}, ...children));
}
