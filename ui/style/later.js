/** Style sheets of parts that no first screen shows: fetched behind it, awaited by every other. */
import { make } from "../make.js";

const PARTS = ["advice-card", "caution-list", "check-rows", "compare-ways", "emergency-card", "lift-entry", "name-field",
  "number-field", "outcome-mark", "pain-scale", "pose-figure", "tick-list", "way-card", "who-list"];

let all = null;

/** @returns {Promise<unknown>} when they hold, or cannot be had */
export const laterStyles = () => all ??= Promise.all(PARTS.map((part) => new Promise((done) => {
  document.head.append(make("link", { rel: "stylesheet", href: `parts/${part}/${part}.css`, on: { load: done, error: done } }));
})));
