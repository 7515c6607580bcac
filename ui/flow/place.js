/** Where things are: which page of Rust has which address, and which address which screen. */

const walk = (name, ...pages) => pages.map(([address, page]) => [address, `walks/${name}/${page}`]);

/** Every address, and what draws it: a name in screens/, or a path to a later walk. */
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
  ...walk("review",
    ["back", "back"], ["out", "out"], ["out/:form", "form"], ["person/:id", "back"], ["person/:id/out", "out"],
    ["person/:id/out/:form", "form"]),
  ...walk("settings", ["settings", "settings"], ["settings/:what", "choice"], ["keys/:what", "keys"], ["what-left", "what-left"]),
  ...walk("care",
    ["people", "people"], ["care/:id", "person"], ["care-new", "code"], ["care-code/:id", "code"],
    ["care-plan/:person", "plan"], ["care-plan/:person/:move/:step", "plan"], ["move", "move"], ["move/:question", "move"],
    ["move-stop", "stop"], ["report", "report"], ["moved/:id", "moved"], ["moved/:id/:near", "moved"], ["shift", "shift"],
    ["trained", "trained"]),
  ...walk("handoff",
    ["hand", "hub"], ["hand/card", "card"], ["hand/pair", "pair"], ["hand/compare", "compare"], ["hand/people", "people"],
    ["hand/show", "show"], ["hand/code", "code"], ["hand/question", "question"], ["hand/people/:id", "person"],
    ["hand/give", "give"], ["hand/give/:step", "give"], ["hand/scan/:what", "scan"]),
  ...walk("plan",
    ["plan", "plan"], ["paper/:id", "paper"], ["paper/:id/:to", "paper"], ["plan/:step", "practice"], ["plans", "plans"],
    ["plans/new", "new"], ["patients/:id/plan", "new"], ["plans/new/:pattern", "new"], ["plans/:id", "edit"], ["plans/:id/:field", "field"]),
  ...walk("patients",
    ["patients", "list"], ["patients/new", "new"], ["patients/:id", "patient"], ["patients/:id/name", "new"],
    ["patients/:id/note", "note"]),
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
