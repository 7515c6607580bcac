/** What is to be handed over, as far as it has been chosen. Kept while the pages ask; nothing is sealed yet. */
import { go } from "../../router.js";

/** `to` is a pairing's id, or null for somebody who is not paired; undefined until it is chosen. */
const NOTHING = { what: null, plan: null, person: null, since_days: undefined, notes: undefined, to: undefined };

let wish = { ...NOTHING };

/** What has been chosen so far. */
export function wished() {
  return wish;
}

/** Forgets what was chosen. */
export function forgetWish() {
  wish = { ...NOTHING };
}

/** Starts a new choice with what is known already, and goes to the first page that asks. */
export function giveTo(known = {}) {
  wish = { ...NOTHING, ...known };
  go(nextPage());
}

/** Adds an answer and goes on. */
export function choose(answer) {
  wish = { ...wish, ...answer };
  go(nextPage());
}

/** The page that asks for what is still missing. */
export function nextPage({ what, since_days: since, notes, to } = wish) {
  if (what === null) {
    return "#/hand/give";
  }
  if (what === "history" && since === undefined) {
    return "#/hand/give/when";
  }
  if (what === "history" && notes === undefined) {
    return "#/hand/give/notes";
  }
  return to === undefined ? "#/hand/give/whom" : "#/hand/give/leaves";
}

/** The fields of `show` and `show_summary`. */
export function asked({ what, plan, person, since_days: since, notes, to } = wish) {
  switch (what) {
    case "history":
      return { what, since_days: since, notes, to };
    case "care_plan":
      return { what, person, to };
    default:
      return { what, plan, to };
  }
}
