// Fixed words: every one that a screen says is there in both languages, and no other.
import assert from "node:assert/strict";
import { test } from "node:test";
import { say, useWords } from "../../ui/words.js";
import { screenWords, uiFiles } from "./read.mjs";

const english = screenWords("en");
const spanish = screenWords("es");

/** Ids that the screens name. They are always written out in full, never put together. */
function idsInUse() {
  const ids = uiFiles(".js").flatMap(({ text }) => [...text.matchAll(/"(screen-[a-z0-9-]+)"/g)].map((found) => found[1]));
  return new Set(ids);
}

test("every word that a screen says exists", () => {
  const missing = [...idsInUse()].filter((id) => !english.has(id));
  assert.deepEqual(missing, []);
});

test("every word that exists is said by a screen", () => {
  const used = idsInUse();
  const unused = [...english.keys()].filter((id) => !used.has(id));
  assert.deepEqual(unused, []);
});

test("both languages have the same words with the same slots", () => {
  assert.deepEqual([...spanish.keys()].sort(), [...english.keys()].sort());
  const slots = (text) => [...text.matchAll(/\[[a-z]+\]/g)].map((found) => found[0]).sort();
  for (const [id, text] of english) {
    assert.deepEqual(slots(spanish.get(id)), slots(text), id);
  }
});

test("no word promises what nobody can promise, in either language", () => {
  const promises = /\b(safe|safely|safety|correct|correctly|prevent|prevents|guarantee|guaranteed)\b|\b(segur[oa]s?|seguridad|correct[oa]s?|correctamente|previene|garantiza\w*)\b/i;
  for (const words of [english, spanish]) {
    const bold = [...words].filter(([, text]) => promises.test(text));
    assert.deepEqual(bold, []);
  }
});

test("no sentence has more than twenty words", () => {
  for (const words of [english, spanish]) {
    for (const [id, text] of words) {
      for (const sentence of text.split(/[.!?:]+\s/)) {
        assert.ok(sentence.split(/\s+/).length <= 20, `${id}: ${sentence}`);
      }
    }
  }
});

test("slots are filled, and a missing word shows its id instead of nothing", () => {
  useWords("en", { "screen-place": "[at] of [of]" });
  assert.equal(say("screen-place", { at: 3, of: 8 }), "3 of 8");
  assert.equal(say("screen-gone"), "screen-gone");
});
