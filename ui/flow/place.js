/**
 * Where things are: which page of Rust has which address, and which address has
 * which screen. Plain data and text only.
 */

/** Every address, and the screen module that draws it: a name in screens/, or a path to a later walk. */
export const ROUTES = [
  ["start", "start"],
  ["start/:step", "start"],
  ["unlock", "unlock"],
  ["home", "home"],
  ["walk/:question", "question"],
  ["ask/:question", "interruption"],
  ["check", "check"],
  ["advice", "advice"],
  ["compare", "compare"],
  ["refuse", "refuse"],
  ["fresh/:saved", "fresh"],
  ["left", "left"],
  ["after/:id", "after"],
  ["morning/:id", "morning"],
  ["morning/:id/:step", "morning"],
  ["history", "history"],
  ["history/:id", "entry"],
  ["save/:from", "save"],
  ["back", "walks/review/back"],
  ["out", "walks/review/out"],
  ["out/:form", "walks/review/form"],
  ["person/:id", "walks/review/back"],
  ["person/:id/out", "walks/review/out"],
  ["person/:id/out/:form", "walks/review/form"],
  ["settings", "walks/settings/settings"],
  ["settings/:what", "walks/settings/choice"],
  ["keys/:what", "walks/settings/keys"],
  ["people", "walks/care/people"],
  ["care/:id", "walks/care/person"],
  ["care-new", "walks/care/code"],
  ["care-code/:id", "walks/care/code"],
  ["care-plan/:person", "walks/care/plan"],
  ["care-plan/:person/:move/:step", "walks/care/plan"],
  ["move", "walks/care/move"],
  ["move/:question", "walks/care/move"],
  ["move-stop", "walks/care/stop"],
  ["report", "walks/care/report"],
  ["moved/:id", "walks/care/moved"],
  ["moved/:id/:near", "walks/care/moved"],
  ["shift", "walks/care/shift"],
  ["trained", "walks/care/trained"],
  ["hand", "walks/handoff/hub"],
  ...["card", "pair", "compare", "people", "show", "code", "question"].map((page) => [`hand/${page}`, `walks/handoff/${page}`]),
  ["hand/people/:id", "walks/handoff/person"],
  ["hand/give", "walks/handoff/give"],
  ["hand/give/:step", "walks/handoff/give"],
  ["hand/scan/:what", "walks/handoff/scan"],
  ["plan", "walks/plan/plan"],
  ["paper/:id", "walks/plan/paper"],
  ["paper/:id/:to", "walks/plan/paper"],
  ["plan/:step", "walks/plan/practice"],
  ["plans", "walks/plan/plans"],
  ["plans/new", "walks/plan/new"],
  ["plans/new/:pattern", "walks/plan/new"],
  ["plans/:id", "walks/plan/edit"],
  ["plans/:id/:field", "walks/plan/field"],
  ["signs", "signs"],
  ["sign-clear", "sign-clear"],
];

/** Screens that may be seen while the vault is locked. */
const OPEN_TO_ALL = new Set(["start", "unlock", "signs", "walks/care/stop"]);

/**
 * Finds the screen for an address.
 * @param {string} hash such as "#/walk/mass"
 * @returns {{screen: string, params: Record<string, string>}|null} null if there is none
 */
export function findRoute(hash) {
  const given = hash.replace(/^#\//, "").split("/");
  if (given.some((part) => !/^[\w-]+$/.test(part))) {
    return null;
  }
  for (const [pattern, screen] of ROUTES) {
    const params = matchParts(pattern.split("/"), given);
    if (params) {
      return { screen, params };
    }
  }
  return null;
}

/** The file of a screen, seen from the router. */
export function fileOf(screen) {
  return screen.startsWith("walks/") ? `./${screen}.js` : `./screens/${screen}.js`;
}

/** Whether a screen needs an open vault. */
export function needsUnlock(screen) {
  return !OPEN_TO_ALL.has(screen);
}

/**
 * The address of a page that Rust sent.
 * @param {{page: string}} page
 * @returns {string}
 */
export function hashOf(page) {
  switch (page.page) {
    case "question":
      return `#/walk/${page.question.id}`;
    case "interruption":
      return `#/ask/${page.id}`;
    case "check":
      return "#/check";
    case "advice":
      return "#/advice";
    case "refuse":
      return "#/refuse";
    case "move":
      return "#/move";
    default:
      return "#/home";
  }
}

/**
 * What to ask Rust for when a walk page is opened by its address alone.
 * @returns {string|null} the `question` of `walk_page`; null is where the draft stands
 */
export function questionAt(hash) {
  const found = findRoute(hash);
  if (!found) {
    return null;
  }
  return found.screen === "check" ? "check" : (found.params.question ?? null);
}

/** The address one step back from a walk page; home if the walk starts here. */
export function backOf({ back = null }) {
  if (back === null) {
    return "#/home";
  }
  return back === "check" ? "#/check" : `#/walk/${back}`;
}

function matchParts(pattern, given) {
  if (pattern.length !== given.length) {
    return null;
  }
  const params = {};
  for (const [at, part] of pattern.entries()) {
    if (part.startsWith(":")) {
      params[part.slice(1)] = given[at];
    } else if (part !== given[at]) {
      return null;
    }
  }
  return params;
}
