// Answers: what was tapped or typed, in the shape Rust takes.
import assert from "node:assert/strict";
import { test } from "node:test";
import { NOT_SURE, choose, ratePain, readKept, readNumber, settleTicks, tick, typeNumber, writeNumber } from "../../ui/flow/answer.js";

test("each kind of answer has one shape", () => {
  assert.deepEqual(choose("floor"), { choice: "floor" });
  assert.deepEqual(tick(["a", "b"]), { choices: ["a", "b"] });
  assert.deepEqual(ratePain(0), { pain: 0 });
  assert.deepEqual(typeNumber(6.5, "kg"), { number: 6.5, unit: "kg" });
  assert.deepEqual(NOT_SURE, { not_sure: true });
});

test("a number is read with a point or with a comma", () => {
  assert.equal(readNumber("6.5"), 6.5);
  assert.equal(readNumber(" 6,5 "), 6.5);
  assert.equal(readNumber("12"), 12);
  assert.equal(readNumber("12."), 12);
  assert.equal(readNumber("0"), 0);
});

test("what is not one plain number is not read", () => {
  for (const text of ["", " ", "six", "6 kg", "1e3", "-2", "1.2.3", "1,2,3", "0x10", "Infinity", "12345678"]) {
    assert.equal(readNumber(text), null, JSON.stringify(text));
  }
});

test("a kept number is written the way the language writes it", () => {
  assert.equal(writeNumber(6.5, "en"), "6.5");
  assert.equal(writeNumber(6.5, "es"), "6,5");
  assert.equal(readNumber(writeNumber(6.5, "es")), 6.5);
});

test("pain 0 and no boxes at all are kept answers, not missing ones", () => {
  assert.equal(readKept({ pain: 0 }).pain, 0);
  assert.deepEqual(readKept({ choices: [] }).choices, []);
  assert.deepEqual(readKept(null), { choice: null, choices: null, pain: null, number: null, notSure: false });
  assert.equal(readKept({ not_sure: true }).notSure, true);
});

test("continue needs a tick, and none needs no tick", () => {
  assert.deepEqual(settleTicks(["a"], "some"), { answer: { choices: ["a"] } });
  assert.deepEqual(settleTicks([], "none"), { answer: { choices: [] } });
  assert.deepEqual(settleTicks([], "some"), { problem: "nothing_ticked" });
});

test("a ticked warning sign is never dropped by a tap on none", () => {
  assert.deepEqual(settleTicks(["saddle_numb"], "none"), { problem: "ticked_and_none" });
});
