/**
 * Addresses: every screen has one behind the "#", so the phone's Back works.
 * Decides what a failed command leads to, and carries out taps one at a time.
 */
import { blank, clearProblems, draw, isBusy, setBusy, showProblems } from "./frame.js";
import { fileOf, findRoute, needsUnlock } from "./flow/place.js";
import { Trail } from "./flow/trail.js";
import { session, touched } from "./session.js";
import { laterStyles } from "./style/later.js";
import { say } from "./words.js";

/** Screens that are there before anything else can be. */
const FIRST = new Set(["start", "unlock"]);

const trail = new Trail();
let swapping = false;
let turn = 0;

/** Starts listening, and opens the address at hand or else `first`. */
export function startRouter(first) {
  window.addEventListener("hashchange", open);
  document.addEventListener("page-bar-back", (event) => goBack(event.detail));
  if (findRoute(location.hash) && !session.first_start) {
    open();
  } else {
    swap(first);
  }
}

/** Goes on to an address. */
export function go(hash) {
  if (location.hash === hash) {
    open();
  } else {
    location.hash = hash;
  }
}

/** Goes to an address in the place of this one: Back will not come here again. */
export function swap(hash) {
  if (location.hash === hash) {
    open();
  } else {
    swapping = true;
    location.replace(hash);
  }
}

/** Goes back to an address: by the phone's own history if it is one step behind. */
export function goBack(hash) {
  if (trail.leadsBackTo(hash)) {
    history.back();
  } else {
    swap(hash);
  }
}

/** Whether the page at hand was opened from this address. */
export function cameFrom(hash) {
  return trail.leadsBackTo(hash);
}

/** Draws the page again, for example in another language. */
export function redraw() {
  return open();
}

/** The vault has locked itself: nothing may be read any more. */
export function lockedOut() {
  session.locked = true;
  if (!needsUnlock(findRoute(location.hash)?.screen)) {
    return;
  }
  blank();
  session.returnTo = location.hash;
  swap("#/unlock");
}

/**
 * Carries out what a tap asks for; a second tap meanwhile does nothing. A failure
 * is shown at the top of the page, and at `field` if one is named.
 * @param {() => Promise<void>} task
 * @param {{field?: string|((error: object) => string|null)}} [where] id of the field at fault
 */
export async function act(task, { field = null } = {}) {
  if (isBusy()) {
    return;
  }
  setBusy(true);
  clearProblems();
  try {
    await task();
    touched();
  } catch (error) {
    if (!leadElsewhere(error)) {
      const id = typeof field === "function" ? field(error) : field;
      showProblems([{ text: messageOf(error), field: id }]);
    }
  } finally {
    setBusy(false);
  }
}

/** The sentence for a failure. */
export function messageOf(error) {
  if (error?.message && error.code && error.code !== "unreachable") {
    return error.message;
  }
  return say("screen-unreachable");
}

async function open() {
  const mine = ++turn;
  const { hash } = location;
  swapping ? trail.replace(hash) : trail.arrive(hash);
  swapping = false;
  const found = findRoute(hash);
  if (!found) {
    swap(session.first_start ? "#/start" : "#/home");
    return;
  }
  setBusy(true);
  const screen = await load(found);
  if (mine !== turn) {
    return;
  }
  setBusy(false);
  if (screen) {
    draw(screen);
    touched();
    laterStyles();
  }
}

/** The screen to draw, or null if another address was opened in its place. */
async function load({ screen, params }) {
  if (session.locked && needsUnlock(screen)) {
    leadElsewhere({ code: session.first_start ? "not_set_up" : "locked" });
    return null;
  }
  try {
    const [module] = await Promise.all([import(fileOf(screen)), FIRST.has(screen) || laterStyles()]);
    return await module.show(params);
  } catch (error) {
    if (leadElsewhere(error)) {
      return null;
    }
    const { errorScreen } = await import("./screens/error.js");
    return errorScreen(messageOf(error));
  }
}

/** Some failures are not shown but lead to another page. Returns whether this is one. */
function leadElsewhere(error) {
  switch (error?.code) {
    case "locked":
      session.locked = true;
      session.returnTo ??= location.hash;
      blank();
      swap("#/unlock");
      return true;
    case "not_set_up":
      swap("#/start");
      return true;
    case "no_draft":
      swap("#/home");
      return true;
    default:
      return false;
  }
}
