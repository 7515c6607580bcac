// The drawn figure: every limb has a shape at every moment, and only what is asked is marked.
import assert from "node:assert/strict";
import { before, test } from "node:test";
import { FakeNode } from "./page.mjs";

let drawPosed;
let askBar;

before(async () => {
  globalThis.document = { createElementNS: (_, name) => new FakeNode(name) };
  ({ drawPosed } = await import("../../ui/pictures/posed.js"));
  ({ askBar } = await import("../../ui/pictures/asks.js"));
});

/** Somebody of 1.7 m who stands, in the order of the reply; `dip` lets the whole body down. */
const NAMES = "pelvis upper_trunk head thigh_left shank_left foot_left thigh_right shank_right foot_right upper_arm_left forearm_left hand_left upper_arm_right forearm_right hand_right".split(" ");
const ENDS = { pelvis: [0.9, 1.0], upper_trunk: [1.0, 1.39], head: [1.39, 1.58], thigh: [0.9, 0.48], shank: [0.48, 0.066], upper_arm: [1.39, 1.07], forearm: [1.07, 0.82], hand: [0.82, 0.64] };
const segment = (name, dip) => {
  const part = name.replace(/_(left|right)$/, "");
  return part === "foot" ? [0, 0.066, 0.194, 0] : [0, ENDS[part][0] - dip, 0, ENDS[part][1] - dip];
};
const frame = (at, loaded, dip) => ({ at, loaded, segments_m: NAMES.map((name) => segment(name, dip)), hands_m: [0.1, 0.73 - dip] });
const figure = (startZ, fit = "in_front") => ({
  fit,
  load: { at_m: [0.3, startZ] },
  segments: NAMES.map((name) => ({ name, length_m: name.startsWith("thigh") ? 0.4165 : 0.3 })),
  frames: [frame(-1, false, 0), frame(0, false, 0.05), frame(0, true, 0.05), frame(1, true, 0)],
});
const regions = (...asks) => ["back", "knee_left", "knee_right", "hip_left", "hip_right"].map((region, at) => ({ region, asks: asks[at] ?? "little" }));
const draw = (asks, startZ = 0, fit = "in_front") => drawPosed({ figure: figure(startZ, fit), regions: regions(...asks), load_depth_m: 0.3 });
const ofClass = (picture, name) => picture.all().filter((node) => (node.attributes.class ?? "").split(" ").includes(name));

test("no number goes missing at any moment", () => {
  const { picture, move } = draw(["much", "some"], 0.45);
  for (const ms of [null, 0, 700, 1500, 2500, 3400, 3900, 9000]) {
    move(ms);
    for (const node of picture.all()) {
      for (const value of Object.values(node.attributes)) {
        assert.doesNotMatch(String(value), /NaN|undefined|Infinity/, `${ms}: ${value}`);
      }
    }
  }
});

test("both legs, both arms, neck, head, back and load are drawn", () => {
  const { picture } = draw([]);
  assert.equal(ofClass(picture, "far").length, 5);
  assert.equal(ofClass(picture, "near").length, 5 + 2);
  assert.equal(ofClass(picture, "spine").length, 2);
  assert.equal(ofClass(picture, "load").length, 1);
});

test("a region is marked by a pattern when some or much is asked of it, never when little", () => {
  assert.equal(ofClass(draw([]).picture, "ask").length, 0);
  const { picture } = draw(["much", "some"]);
  const ids = new Set(picture.all().filter(({ name }) => name === "pattern").map(({ attributes }) => attributes.id));
  const fills = ofClass(picture, "ask").map(({ attributes }) => attributes.fill);
  assert.equal(fills.length, 2);
  assert.notEqual(fills[0], fills[1], "two words, two patterns");
  assert.ok(fills.every((fill) => ids.has(/^url\(#(.*)\)$/.exec(fill)[1])));
});

test("two pictures on one page never share the name of a pattern", () => {
  const names = [draw(["much"]).picture, draw(["much"]).picture].flatMap((one) => one.all()).filter(({ name }) => name === "pattern").map(({ attributes }) => attributes.id);
  assert.equal(new Set(names).size, names.length);
});

test("the height of the start is marked when it is off the ground", () => {
  assert.equal(ofClass(draw([], 0).picture, "dash").length, 0);
  assert.equal(ofClass(draw([], 0.45).picture, "dash").length, 1);
});

test("the load waits at its start, and comes up with the hands", () => {
  const { picture, move } = draw([], 0.45);
  const carton = picture.all().find(({ attributes }) => attributes.transform?.startsWith("translate"));
  move(0);
  assert.equal(carton.attributes.transform, "translate(17.65 26.47)");
  move(3300);
  assert.equal(carton.attributes.transform, "translate(5.88 42.94)");
});

test("between the feet the near arm goes behind the near leg", () => {
  const last = (fit) => ofClass(draw([], 0, fit).picture, "near").at(-1).attributes.d;
  assert.notEqual(last("between_feet"), last("in_front"));
});

test("more is asked: a longer bar, another pattern", () => {
  const bars = ["little", "some", "much"].map((asks) => askBar(asks).all().at(-1).attributes);
  assert.deepEqual(bars.map(({ width }) => Number(width)), [30, 60, 90]);
  assert.equal(new Set(bars.map(({ fill }) => fill.replace(/\d/g, ""))).size, 3);
});
