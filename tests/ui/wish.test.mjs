// What is to be handed over: which question comes next, and what is asked of Rust in the end.
import assert from "node:assert/strict";
import { test } from "node:test";
import { findRoute } from "../../ui/flow/place.js";

// The pages go where the choice leads; here there is no page, only an address.
globalThis.location = { hash: "" };
globalThis.document = { addEventListener() {}, getElementById: () => null };
globalThis.window = { addEventListener() {} };
globalThis.HTMLElement = class {};
globalThis.customElements = { define() {} };
const { asked, choose, forgetWish, giveTo, wished } = await import("../../ui/walks/handoff/wish.js");

test("a plan asks only for whom", () => {
  giveTo({ what: "plan", plan: 3 });
  assert.equal(location.hash, "#/hand/give/whom");
  choose({ to: "a1" });
  assert.equal(location.hash, "#/hand/give/leaves");
  assert.deepEqual(asked(), { what: "plan", plan: 3, to: "a1" });
});

test("a care plan asks only for whom", () => {
  giveTo({ what: "care_plan", person: 2 });
  assert.equal(location.hash, "#/hand/give/whom");
  choose({ to: null });
  assert.deepEqual(asked(), { what: "care_plan", person: 2, to: null });
});

test("a history asks from when, with notes or without, and for whom", () => {
  giveTo({ what: "history" });
  assert.equal(location.hash, "#/hand/give/when");
  choose({ since_days: null });
  assert.equal(location.hash, "#/hand/give/notes");
  choose({ notes: false });
  assert.equal(location.hash, "#/hand/give/whom");
  choose({ to: null });
  assert.equal(location.hash, "#/hand/give/leaves");
  assert.deepEqual(asked(), { what: "history", since_days: null, notes: false, to: null });
});

test("whom it is for is not asked when that is known", () => {
  giveTo({ to: "b2" });
  assert.equal(location.hash, "#/hand/give");
  giveTo({ what: "plan", plan: 1, to: wished().to });
  assert.equal(location.hash, "#/hand/give/leaves");
});

test("a choice that was carried out is forgotten", () => {
  forgetWish();
  assert.deepEqual([wished().what, wished().to], [null, undefined]);
});

test("every page that asks has an address", () => {
  for (const hash of ["#/hand/give", "#/hand/give/when", "#/hand/give/notes", "#/hand/give/whom", "#/hand/give/leaves", "#/hand/show"]) {
    assert.ok(findRoute(hash), hash);
  }
});
