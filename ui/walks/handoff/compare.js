/** Pairing, second half: both screens show the same six words, or it is not the other phone. */
import { ask } from "../../backend.js";
import { actions, button, heading, make, para } from "../../make.js";
import { act, messageOf, swap } from "../../router.js";
import { showProblems } from "../../frame.js";
import { session } from "../../session.js";
import { say } from "../../words.js";
import { bigWords, loud, useLook } from "./look.js";
import "../../parts/tick-list/tick-list.js";

/** The warning that was read and passed, so that the words come next. */
let passed = null;

export async function show() {
  let pair;
  try {
    [pair] = await Promise.all([ask("pair_compare"), useLook()]);
  } catch (error) {
    if (!STARTS_AGAIN.includes(error.code)) {
      throw error;
    }
    session.notice = { text: messageOf(error), undo: null };
    swap("#/hand/pair");
    return null;
  }
  return pair.warning && passed !== pair.warning ? warn(pair) : compare(pair);
}

/** A known name with a new card: said before anything else. */
function warn({ warning, other }) {
  const goOn = () => act(async () => {
    passed = warning;
    swap("#/hand/compare");
  });
  return {
    title: say("screen-warn-title"),
    back: "#/hand/pair",
    body: [
      heading(say("screen-warn-title")),
      loud(para(warning), para(say("screen-warn-what"))),
      para(say("screen-warn-ask", { name: other.alias })),
      actions(
        button(say("screen-warn-go-on"), "second", goOn, { id: "go-on" }),
        button(say("screen-warn-stop"), "main", () => act(() => agree(false)), { id: "stop" })),
    ],
  };
}

function compare({ words, other }) {
  const ticks = make("tick-list", { props: { choices: { options: [
    { id: "same", label: say("screen-compare-same") },
    { id: "other", label: say("screen-compare-other") },
  ] } } });
  const settle = () => {
    if (ticks.ticked.length < 2) {
      showProblems([{ text: say("screen-compare-both"), field: "tick-0" }]);
    } else {
      act(() => agree(true));
    }
  };
  return {
    title: say("screen-compare-words-title"),
    back: "#/hand/pair",
    body: [
      heading(say("screen-compare-words-title")),
      para(say("screen-compare-words-what", { name: other.alias })),
      bigWords(words),
      para(other.role_text, "hint"),
      ticks,
      actions(
        button(say("screen-compare-differ"), "second", () => act(() => agree(false)), { id: "differ" }),
        button(say("screen-compare-pair"), "main", settle, { id: "agree" })),
    ],
  };
}

/** Failures after which both phones begin anew. */
const STARTS_AGAIN = ["pair_expired", "pair_nothing_scanned"];

async function agree(same) {
  passed = null;
  await ask("pair_agree", { same, other_says_so: same });
  session.notice = { text: say(same ? "screen-paired" : "screen-not-paired"), undo: null };
  swap("#/hand");
}
