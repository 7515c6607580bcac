/** The walk before a move, page by page. Rust decides which page comes next; this carries answers to and fro. */
import { ask } from "../../backend.js";
import { go, swap } from "../../router.js";

/** A page that has come with a reply and is not yet drawn. */
let coming = null;

/** Starts a walk for a person. */
export async function startMove(person, what) {
  follow(await ask("move_start", { person, move: what }));
}

/** Answers a question and goes on to the page that comes next. */
export async function answerMove(question, answer) {
  follow(await ask("move_answer", { question, answer }));
}

/** The page for the address at hand: the one that is coming, or else the one Rust has. */
export async function movePageHere(question = null) {
  const { hash } = location;
  const page = coming?.hash === hash ? coming.page : await fetchPage(question);
  coming = null;
  if (hashOfMove(page) === hash) {
    return page;
  }
  coming = { hash: hashOfMove(page), page };
  swap(coming.hash);
  return null;
}

/** One step back from a page of the walk: an earlier question, or the person. */
export const backOfMove = ({ back, person }) => (back === null ? `#/care/${person.id}` : `#/move/${back}`);

function follow(page) {
  coming = { hash: hashOfMove(page), page };
  go(coming.hash);
}

function hashOfMove(page) {
  return page.page === "question" ? `#/move/${page.question.id}` : "#/move";
}

async function fetchPage(question) {
  try {
    return await ask("move_page", { question });
  } catch (error) {
    if (error.code !== "question_not_open") {
      throw error;
    }
    return ask("move_page", { question: null });
  }
}
