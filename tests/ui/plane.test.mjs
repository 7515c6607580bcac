// The solved figure: metres become picture units, frames become a movement, marks follow the words.
import assert from "node:assert/strict";
import { test } from "node:test";
import { ROUND_MS, extentOf, frameAt, momentOf, scaleOf } from "../../ui/pictures/plane.js";

/** A stick that folds: one segment, three places of the way, the load in hand from the lowest on. */
const frames = [
  { at: -1, loaded: false, segments_m: [[0, 0, 0, 1]], hands_m: [0.2, 0.8] },
  { at: 0, loaded: false, segments_m: [[0, 0, 1, 0]], hands_m: [0.4, 0.1] },
  { at: 0, loaded: true, segments_m: [[0, 0, 1, 0]], hands_m: [0.4, 0.1] },
  { at: 1, loaded: true, segments_m: [[0, 0, 0, 1]], hands_m: [0.3, 0.9] },
];

const near = (found, wanted) => found.forEach((value, at) => assert.ok(Math.abs(value - wanted[at]) < 1e-9, `${found} for ${wanted}`));

test("a thigh of 0.245 of stature is drawn 24.5 long, whatever the stature", () => {
  for (const stature of [1.0, 1.525, 1.7, 2.3]) {
    const thigh = 0.245 * stature;
    const scale = scaleOf({ segments: [{ name: "pelvis", length_m: 0.1 }, { name: "thigh_right", length_m: thigh }] });
    near([thigh * scale, stature * scale], [24.5, 100]);
  }
});

test("at a frame stands the frame itself", () => {
  near(frameAt(frames, -1).segments[0], [0, 0, 0, 1]);
  near(frameAt(frames, 1).segments[0], [0, 0, 0, 1]);
  near(frameAt(frames, 1).hands, [0.3, 0.9]);
});

test("between two frames everything stands in between", () => {
  near(frameAt(frames, -0.5).segments[0], [0, 0, 0.5, 0.5]);
  near(frameAt(frames, 0.5).hands, [0.35, 0.5]);
});

test("at the lowest the load is in the hands; on the way down it is not", () => {
  assert.equal(frameAt(frames, 0).loaded, true);
  assert.equal(frameAt(frames, -0.01).loaded, false);
  near(frameAt(frames, 0).segments[0], [0, 0, 1, 0]);
});

test("a place beyond the ends gives the end", () => {
  near(frameAt(frames, -3).hands, [0.2, 0.8]);
  near(frameAt(frames, 3).hands, [0.3, 0.9]);
});

test("a round starts and ends standing with empty hands, and never jumps", () => {
  near(momentOf(frames, 0).hands, [0.2, 0.8]);
  near(momentOf(frames, ROUND_MS).hands, [0.2, 0.8]);
  assert.equal(momentOf(frames, ROUND_MS - 1).loaded, false);
  for (let ms = 0; ms < 2 * ROUND_MS; ms += 10) {
    const [one, other] = [momentOf(frames, ms), momentOf(frames, ms + 10)];
    one.segments[0].forEach((value, at) => assert.ok(Math.abs(value - other.segments[0][at]) < 0.03, `${ms} ms`));
  }
});

test("a round lasts about four seconds and holds the lowest posture for a moment", () => {
  assert.ok(ROUND_MS >= 3500 && ROUND_MS <= 4500);
  near(momentOf(frames, 1550).hands, [0.4, 0.1]);
  near(momentOf(frames, 1700).hands, [0.4, 0.1]);
});

test("the picture has room for the whole way, the load with it", () => {
  const { left, right, top } = extentOf(frames, 100, 0.4, 0.3);
  assert.ok(left <= 0 && right >= 100 && top >= 120);
});
