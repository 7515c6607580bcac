/**
 * The walk before a lift, page by page. Rust decides which page comes next and
 * keeps every answer; this only carries them to and fro.
 */
import { ask } from "./backend.js";
import { hashOf, questionAt } from "./flow/place.js";
import { go, swap } from "./router.js";

/** A page that has come with a reply and is not yet drawn: `{hash, page}`. */
let coming = null;
/** The check page and the advice as last seen. Gone as soon as an answer changes. */
let lastCheck = null;
let lastAdvice = null;

/** Starts a walk, or a saved task by its id. An open draft is replaced. */
export async function startWalk(saved = null) {
  forget();
  follow(await ask("walk_start", { saved }));
}

/** Goes on where the draft stands. */
export async function resumeWalk() {
  follow(await ask("walk_page", { question: null }));
}

/** Starts the questions about the person again. */
export async function startAbout() {
  forget();
  follow(await ask("about_start"));
}

/** Starts the questions about the worker, before somebody is moved. */
export async function startOwn(sign) {
  forget();
  follow(await ask("own_start", { sign }));
}

/** Answers a question and goes on to the page that comes next. */
export async function answerQuestion(question, answer) {
  const page = await ask("walk_answer", { question, answer });
  forget();
  follow(page);
}

/** Confirms the answers; the advice comes next. */
export async function confirmAnswers() {
  follow(await ask("walk_confirm"));
}

/** Gives the walk up. */
export async function dropWalk() {
  await ask("walk_drop");
  forget();
}

/** Ends the walk with what was done. Returns the id of the new entry. */
export async function keepLift({ done, way = null, instead = null }) {
  const { id } = await ask("lift_keep", { done, way, instead });
  forget();
  return id;
}

/**
 * The page for the address at hand: the one that is coming, or else the one Rust has.
 * @param {string} kind which page this address shows, such as "question"
 * @returns {Promise<object|null>} null if the draft stands elsewhere; then that page opens
 */
export async function pageHere(kind) {
  const { hash } = location;
  const page = coming?.hash === hash ? coming.page : await fetchPage(hash);
  coming = null;
  if (page.page === kind && hashOf(page) === hash) {
    remember(page);
    return page;
  }
  follow(page, { inPlace: true });
  return null;
}

/** The advice as last seen, asked for again if it is not at hand. */
export async function adviceAtHand() {
  if (lastAdvice) {
    return lastAdvice;
  }
  const page = await ask("walk_page", { question: null });
  return page.page === "advice" ? page : null;
}

/** The figure of a way for the draft at hand; null if there is none. */
export async function figureOf(way) {
  try {
    return await ask("figure", { way });
  } catch (error) {
    if (error.code === "locked") {
      throw error;
    }
    return null;
  }
}

function follow(page, { inPlace = false } = {}) {
  coming = { hash: hashOf(page), page };
  inPlace ? swap(coming.hash) : go(coming.hash);
}

async function fetchPage(hash) {
  if (hash === "#/check" && lastCheck) {
    return lastCheck;
  }
  try {
    return await ask("walk_page", { question: questionAt(hash) });
  } catch (error) {
    if (!STAND_ELSEWHERE.has(error.code)) {
      throw error;
    }
    return ask("walk_page", { question: null });
  }
}

function remember(page) {
  if (page.page === "check") {
    lastCheck = page;
  } else if (page.page === "advice") {
    lastAdvice = page;
  }
}

function forget() {
  lastCheck = null;
  lastAdvice = null;
}

/** Errors that mean: this question is not open now, so show the one that is. */
const STAND_ELSEWHERE = new Set(["question_not_open", "not_found", "not_a_choice"]);
