/** From a posture solved in Rust, in metres, to picture units: hundredths of stature, y up. */
import { round } from "./draw.js";

/** Thigh length as a share of stature (Drillis and Contini 1966). */
const THIGH = 0.245;
/** Ends of going down, staying, coming up and standing, in ms. House rule. */
const [LOW, RISE, STAND, RETURN] = [1500, 1750, 3250, 3600];
export const ROUND_MS = 4000;
/** Room for the thickness of a head around the joints, in picture units. */
const MARGIN = 8;

/** Picture units in a metre of this figure. */
export function scaleOf({ segments }) {
  return (100 * THIGH) / segments.find(({ name }) => name === "thigh_right").length_m;
}

/** The posture at a moment of the round, in ms: `{segments, hands, loaded}`, in metres. */
export function momentOf(frames, ms) {
  const t = ms % ROUND_MS;
  if (t >= RETURN) {
    return { ...mix(frames.at(-1), frames[0], (t - RETURN) / (ROUND_MS - RETURN)), loaded: false };
  }
  return frameAt(frames, t < LOW ? t / LOW - 1 : Math.max(0, Math.min(1, (t - RISE) / (STAND - RISE))));
}

/** The posture at a place of the way: −1 standing, 0 lowest, 1 standing with the load. */
export function frameAt(frames, at) {
  const next = frames.findIndex((frame) => frame.at > at);
  if (next <= 0) {
    const end = frames.at(next);
    return mix(end, end, 0);
  }
  const [one, other] = [frames[next - 1], frames[next]];
  return mix(one, other, (at - one.at) / (other.at - one.at));
}

/** What the whole way takes up with its load: `{left, right, top}` in picture units. */
export function extentOf(frames, scale, depth, height) {
  const ends = frames.flatMap(({ segments_m: all, hands_m: [x, z] }) => [...all, [x - depth / 2, z, x + depth / 2, z + height]]);
  const [xs, zs] = [ends.flatMap(([a, , b]) => [a, b]), ends.flatMap(([, a, , b]) => [a, b])];
  return { left: round(Math.min(...xs) * scale - MARGIN), right: round(Math.max(...xs) * scale + MARGIN), top: round(Math.max(...zs) * scale + MARGIN) };
}

function mix(one, other, share) {
  const between = (a, b) => a.map((value, at) => value + (b[at] - value) * share);
  return {
    segments: one.segments_m.map((ends, at) => between(ends, other.segments_m[at])),
    hands: between(one.hands_m, other.hands_m),
    loaded: one.loaded,
  };
}
