/**
 * What the screens know about the running app: language, locked or not, what to
 * come back to after unlocking. All of it can be asked for again; nothing is stored.
 */
import { ask } from "./backend.js";
import { useWords } from "./words.js";

/** The facts of `hello`, and three of our own. */
export const session = {
  first_start: false,
  locked: true,
  language: "en",
  languages: [],
  version: "",
  wait_s: 0,
  idle_lock_s: 0,
  demo: false,
  /** Address to open after unlocking. */
  returnTo: null,
  /** What was just kept, said once on the next home page: `{text, undo: id|null}`. */
  notice: null,
  /** First-start choices on their way to the vault. */
  beginning: { use: null, units: null },
};

let timer = null;
let onLocked = () => {};

/** Asks how things stand and fetches the words. */
export async function meet() {
  await refresh();
  await fetchWords(session.language);
}

/** Asks how things stand. */
export async function refresh() {
  Object.assign(session, await ask("hello"));
}

/** Changes the language of everything. */
export async function changeLanguage(language) {
  await ask("language_set", { language });
  session.language = language;
  await fetchWords(language);
}

/**
 * Calls `locked` once the vault has locked itself, so that no page with health
 * data stays on the screen. The lock itself is Rust's.
 */
export function watchLock(locked) {
  onLocked = locked;
  document.addEventListener("visibilitychange", () => {
    if (!document.hidden) {
      look();
    }
  });
}

/** Notes that a command was answered: the idle time starts again. */
export function touched() {
  clearTimeout(timer);
  if (!session.locked && session.idle_lock_s > 0) {
    timer = setTimeout(look, (session.idle_lock_s + LOOK_AFTER_S) * 1000);
  }
}

async function look() {
  if (session.locked) {
    return;
  }
  try {
    await refresh();
  } catch {
    return;
  }
  if (session.locked) {
    onLocked();
  } else {
    touched();
  }
}

async function fetchWords(language) {
  const { words } = await ask("words", { language });
  useWords(language, words);
}

/** Seconds to wait beyond Rust's own idle time, so that it has locked for certain. */
const LOOK_AFTER_S = 2;
