// Pictures: every name is drawn, hidden from screen readers, and stands inside its frame.
import assert from "node:assert/strict";
import { before, test } from "node:test";
import { FakeNode } from "./page.mjs";

let drawPicture;
let hasPicture;

before(async () => {
  globalThis.document = { createElementNS: (_, name) => new FakeNode(name) };
  ({ drawPicture, hasPicture } = await import("../../ui/pictures/pictures.js"));
});

const NAMES = [
  ..."small box bag basket bucket long big living".split(" "),
  ..."cup flour bottle two_bottles six_pack water_bucket bicycle suitcase heavier".split(" "),
  ..."floor shin knee waist chest overhead close medium far".split(" "),
  ..."hinge squat lunge free_bend golfer upright".split(" "),
  ..."find_mass bring_closer raise_start raise_end lower_end split_load lighten better_grip second_person three_people".split(" "),
  ..."back knee_left knee_right hip_left hip_right shoulders locked".split(" "),
];

test("every name that Rust sends has its own picture", () => {
  assert.deepEqual(NAMES.filter((name) => !hasPicture(name)), []);
});

test("an unknown name still gives a picture, never an error", () => {
  assert.equal(hasPicture("__proto__"), false);
  assert.equal(drawPicture("__proto__").name, "svg");
  assert.ok(drawPicture("something new").children.length > 0);
});

test("pictures are hidden from screen readers, since words stand beside them", () => {
  for (const name of NAMES) {
    assert.equal(drawPicture(name).attributes["aria-hidden"], "true", name);
  }
});

test("no picture has a number that is not one, and each can be drawn twice", () => {
  for (const name of NAMES) {
    drawPicture(name);
    for (const node of drawPicture(name).all()) {
      for (const value of Object.values(node.attributes)) {
        assert.doesNotMatch(value, /NaN|undefined|Infinity/, `${name}: ${value}`);
      }
    }
  }
});

test("left is on the left and right on the right", () => {
  const spot = (name) => Number(drawPicture(name).all().find((node) => node.attributes.class === "spot").attributes.cx);
  assert.ok(spot("knee_left") < 0 && spot("knee_right") > 0);
  assert.ok(spot("hip_left") < 0 && spot("hip_right") > 0);
});
