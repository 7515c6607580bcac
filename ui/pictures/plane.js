/**
 * From the plane of a solved posture, in metres, to the space of a picture, in
 * hundredths of stature with y up; and which posture stands at which moment.
 * Everything is solved in Rust: here it is only scaled, and mixed between frames.
 */
import { round } from "./draw.js";

/** Thigh length as a share of stature (Drillis and Contini 1966), the scale of all drawn figures. */
const THIGH = 0.245;

/** Moments of one round in ms: at the lowest, up from there, standing, back to the start, over. House rule. */
const LOW = 1500;
const RISE = 1750;
const STAND = 3250;
const RETURN = 3600;
export const ROUND_MS = 4000;

/**
 * What turns metres into picture units.
 * @param {object} figure the reply of `pose`
 * @returns {number}
 */
export function scaleOf(figure) {
  const thigh = figure.segments.find(({ name }) => name === "thigh_right");
  return (100 * THIGH) / thigh.length_m;
}

/** The posture at a moment of the round, in ms: `{segments, hands, loaded}`, in metres. */
export function momentOf(frames, ms) {
  const t = ms % ROUND_MS;
  if (t >= RETURN) {
    const first = frames[0];
    return { ...mix(frames.at(-1), first, (t - RETURN) / (ROUND_MS - RETURN)), loaded: false };
  }
  if (t < LOW) {
    return frameAt(frames, t / LOW - 1);
  }
  return frameAt(frames, t < RISE ? 0 : Math.min(1, (t - RISE) / (STAND - RISE)));
}

/** The posture at a place of the way: −1 standing, 0 lowest, 1 standing with the load. */
export function frameAt(frames, at) {
  const next = frames.findIndex((frame) => frame.at > at);
  if (next <= 0) {
    const last = next < 0 ? frames.at(-1) : frames[0];
    return mix(last, last, 0);
  }
  const before = frames[next - 1];
  return mix(before, frames[next], (at - before.at) / (frames[next].at - before.at));
}

/** The frame that holds the whole way with its load: `{left, top, right}` in picture units. */
export function extentOf(frames, scale, half, height) {
  const all = frames.flatMap((frame) => frame.segments_m.flatMap(([x0, z0, x1, z1]) => [[x0, z0], [x1, z1]]));
  const loads = frames.map(({ hands_m: [x, z] }) => [[x - half, z], [x + half, z + height]]).flat();
  const points = [...all, ...loads].map(([x, z]) => [x * scale, z * scale]);
  return {
    left: round(Math.min(...points.map(([x]) => x)) - MARGIN),
    right: round(Math.max(...points.map(([x]) => x)) + MARGIN),
    top: round(Math.max(...points.map(([, z]) => z)) + MARGIN),
  };
}

function mix(one, other, share) {
  const between = (a, b) => a.map((value, at) => value + (b[at] - value) * share);
  return {
    segments: one.segments_m.map((ends, at) => between(ends, other.segments_m[at])),
    hands: between(one.hands_m, other.hands_m),
    loaded: one.loaded,
  };
}

/** Room for the thickness of a head around the joints. */
const MARGIN = 8;
