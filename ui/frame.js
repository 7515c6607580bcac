/**
 * Puts a screen into the page: bar, title, body, focus on the new heading,
 * problems at the top. Knows no screen and no command.
 */
import { make } from "./make.js";
import { say } from "./words.js";
import "./parts/error-summary/error-summary.js";

let shownAt = 0;
let title = "";

/**
 * Shows a screen.
 * @param {object} screen
 * @param {string} screen.title for the window and for screen readers
 * @param {Array<Node|null>} screen.body nodes, one of them holding the `h1`
 * @param {string|null} [screen.back] address of the Back link
 * @param {boolean} [screen.home] whether the bar has a link to the home page
 * @param {string} [screen.bar] short text in the middle of the bar
 * @param {string} [screen.tone] "alarm" for an emergency
 */
export function draw(screen) {
  const main = document.getElementById("main");
  const body = screen.body.flat(Infinity).filter(Boolean);
  main.replaceChildren(make("error-summary", {}), ...body);
  document.documentElement.dataset.tone = screen.tone ?? "calm";
  document.querySelector("page-bar").page = screen;
  title = screen.title;
  document.title = titleOf(title);
  window.scrollTo(0, 0);
  shownAt = performance.now();
  setBusy(false);
  focusHeading(main);
}

/** Empties the page at once, so that nothing can be read on it any more. */
export function blank() {
  document.getElementById("main").replaceChildren();
  document.title = say("screen-app-name");
}

/** Marks the page as waiting for Rust; taps do nothing meanwhile. */
export function setBusy(busy) {
  document.getElementById("main").setAttribute("aria-busy", String(busy));
}

/** Whether the page waits for Rust. */
export function isBusy() {
  return document.getElementById("main").getAttribute("aria-busy") === "true";
}

/** Says something to screen readers without moving the focus. */
export function announce(text) {
  document.getElementById("status").textContent = text;
}

/**
 * Shows what is wrong at the top of the page and at its field.
 * @param {Array<{text: string, field: string|null}>} problems `field` is an element id
 */
export function showProblems(problems) {
  document.title = titleOf(`${say("screen-error-prefix")} ${title}`);
  for (const { text, field } of problems) {
    const part = field && document.getElementById(field)?.closest(".field");
    if (part) {
      part.problem = text;
    }
  }
  document.querySelector("error-summary").problems = problems;
}

/** Takes all problems away again. */
export function clearProblems() {
  document.title = titleOf(title);
  for (const part of document.querySelectorAll("#main .field")) {
    part.problem = null;
  }
  const summary = document.querySelector("error-summary");
  if (summary) {
    summary.problems = [];
  }
}

/**
 * Drops the second tap of an accidental double tap, which would answer the next
 * question in the same place. Only for fingers: keys and mice never need it.
 */
export function guardDoubleTaps() {
  document.addEventListener(
    "click",
    (event) => {
      if (event.pointerType === "touch" && event.timeStamp - shownAt < DOUBLE_TAP_MS) {
        event.preventDefault();
        event.stopPropagation();
      }
    },
    true,
  );
}

function focusHeading(main) {
  const target = main.querySelector("h1") ?? main;
  target.focus({ preventScroll: true });
}

function titleOf(text) {
  return `${text} – ${say("screen-app-name")}`;
}

/** House rule: a second tap this soon after a new page was not meant for it. */
const DOUBLE_TAP_MS = 250;
