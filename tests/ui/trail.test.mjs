// The trail behind the page: our Back and the phone's Back agree.
import assert from "node:assert/strict";
import { test } from "node:test";
import { Trail } from "../../ui/flow/trail.js";

function walk(...hashes) {
  const trail = new Trail();
  hashes.forEach((hash) => trail.arrive(hash));
  return trail;
}

test("the page before is one step back", () => {
  assert.equal(walk("#/home", "#/walk/what", "#/walk/mass").leadsBackTo("#/walk/what"), true);
  assert.equal(walk("#/home", "#/walk/what", "#/walk/mass").leadsBackTo("#/home"), false);
});

test("going back shortens the trail", () => {
  const trail = walk("#/home", "#/walk/what", "#/walk/mass");
  assert.equal(trail.arrive("#/walk/what"), true);
  assert.equal(trail.leadsBackTo("#/home"), true);
});

test("a page drawn again adds no step", () => {
  assert.equal(walk("#/home", "#/history", "#/history").leadsBackTo("#/home"), true);
});

test("a page in the place of another leaves no step behind", () => {
  const trail = walk("#/home", "#/advice");
  trail.replace("#/after/12");
  assert.equal(trail.leadsBackTo("#/home"), true);
  trail.replace("#/home");
  assert.equal(trail.leadsBackTo("#/home"), false);
});

test("the first page has nothing behind it", () => {
  assert.equal(walk("#/home").leadsBackTo("#/home"), false);
  assert.equal(new Trail().leadsBackTo("#/home"), false);
});
