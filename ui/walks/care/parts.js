/** What every page of this walk shares: the style, and who it is about on top. */
import { ask } from "../../backend.js";
import { make } from "../../make.js";
import { act } from "../../router.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";
import { useStyle } from "../style.js";
import { personPicture } from "./pictures.js";

/** Fetches the style of this walk. */
export const ready = () => useStyle("care.css", import.meta.url);

/** Picture and code of the person, and the move: on top of every page, so that nobody is mixed up. */
export function whoIsIt({ code, picture }, move = null) {
  return make("p", { class: "care-who", "data-code": code }, personPicture(picture),
    make("span", {}, make("span", { class: "unseen", text: `${say("screen-care-who")} ` }), make("b", { text: code }),
      move ? make("span", { class: "care-who__move", text: move }) : null));
}

/** Lines with a sign before each. */
export function list(rows, sign = "dot", className = "") {
  return rows.length === 0 ? null : make("ul", { class: `care-list ${className}` },
    rows.map(({ id, text }) => make("li", { "data-id": id }, icon(sign), make("span", { text }))));
}

/** What is known, a line each. */
export const facts = (lines) => (lines.length === 0 ? null : make("ul", { class: "care-facts" }, lines.map((text) => make("li", { text }))));

/** The text that leaves, in full, for reading and for copying by hand. */
export const textBox = (text) => make("textarea", { class: "care-text", readonly: true, id: "text", rows: "10", "aria-label": say("screen-care-report-what"), props: { value: text } });

/**
 * Copies a text when the user taps. Where the phone does not allow it the text is marked.
 * @returns {Promise<boolean>} whether it was copied
 */
export async function copy(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    const box = document.getElementById("text");
    box.focus();
    box.select();
    return document.execCommand?.("copy") ?? false;
  }
}

/** Writes down what left this phone: the log of the shift, or the text for the office. */
export const note = (what, how) => act(() => ask("departure_note", { what, how }));

/** Hands a text to another app when the user taps. @returns {Promise<boolean>} whether it went */
export async function share(text) {
  try {
    await navigator.share({ text });
    return true;
  } catch {
    return false;
  }
}

/** Whether this phone can hand a text to another app. */
export const canShare = () => typeof navigator.share === "function";
