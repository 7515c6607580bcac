/**
 * A person from the side, facing right. Lengths are in hundredths of stature and
 * y points up, so that a pose is written in the numbers it is thought in.
 * Segment lengths: Drillis and Contini 1966, as shares of stature (shank 0.246,
 * thigh 0.245, upper arm 0.186, forearm with half the hand 0.20, ankle 0.039 up).
 * This only draws: no load and no rule is worked out here.
 */
import { circle, limb, path, shape } from "./draw.js";

const SHANK = 24.6;
const THIGH = 24.5;
const UPPER_ARM = 18.6;
const FOREARM = 20;
const TRUNK = 28.8;
const NECK = 7;
const HEAD = 6.6;

/**
 * Draws a pose.
 * @param {object} pose
 * @param {[number, number]} pose.hip
 * @param {number} pose.lean trunk from upright, in degrees forward
 * @param {number} [pose.round] how far the spine bulges, in hundredths of stature
 * @param {number} [pose.nod] head from upright, in degrees forward
 * @param {Foot} pose.near the nearer foot: `{at: [x, y], tilt, knee}`
 * @param {Foot} pose.far the farther foot
 * @param {[number, number]} pose.hand the nearer hand
 * @param {[number, number]} pose.farHand the other hand
 * @param {() => Node[]} [pose.load] draws what is lifted, between far and near side
 * @param {boolean} [pose.armBehind] whether the near arm goes behind the near leg
 * @returns {SVGElement} a group in picture space (y down), with the ground at 0
 */
export function drawFigure(pose) {
  const { hip } = pose;
  const up = along(90 - pose.lean);
  const shoulder = [hip[0] + up[0] * TRUNK, hip[1] + up[1] * TRUNK];
  const nearLeg = leg("near", hip, pose.near);
  const nearArm = arm("near", shoulder, pose.hand);
  const trunk = drawTrunk(hip, shoulder, up, pose.round ?? 0);
  const front = pose.armBehind ? [trunk, nearArm, nearLeg] : [nearLeg, trunk, nearArm];
  return shape("g", { transform: "scale(1 -1)" },
    leg("far", hip, pose.far),
    arm("far", shoulder, pose.farHand),
    drawHead(shoulder, pose.nod ?? pose.lean * 0.6),
    pose.load?.() ?? [],
    front,
  );
}

function drawTrunk(hip, shoulder, up, bulge) {
  if (bulge === 0) {
    return [limb("halo", hip, 7.4, shoulder, 7.2), limb("shirt", hip, 6, shoulder, 5.6)];
  }
  const out = [-up[1] * bulge, up[0] * bulge];
  const [cx, cy] = [(hip[0] + shoulder[0]) / 2 + out[0], (hip[1] + shoulder[1]) / 2 + out[1]];
  const d = `M${hip[0]} ${hip[1]}Q${cx} ${cy} ${shoulder[0]} ${shoulder[1]}`;
  return [path("spine halo-line", d), path("spine shirt-line", d)];
}

function drawHead(shoulder, nod) {
  const way = along(90 - nod);
  const neck = [shoulder[0] + way[0] * NECK, shoulder[1] + way[1] * NECK];
  const head = [neck[0] + way[0] * HEAD, neck[1] + way[1] * HEAD];
  return [limb("near", shoulder, 3.2, neck, 2.6), circle("near", head[0], head[1], HEAD)];
}

function leg(side, hip, { at, tilt = 0, knee = 1 }) {
  const joint = bend(hip, at, THIGH, SHANK, knee);
  const parts = [[hip, 5.2, joint, 3.9], [joint, 3.9, at, 2.6], foot(at, along(tilt))];
  return [...halo(side, parts), ...parts.map(([a, ra, b, rb]) => limb(side, a, ra, b, rb))];
}

/** A foot as a limb, from the ankle and the direction of the toes. */
export function foot(at, toe) {
  const heel = [at[0] - toe[0] * 3.2 + toe[1] * 2.1, at[1] - toe[1] * 3.2 - toe[0] * 2.1];
  const tip = [at[0] + toe[0] * 10 + toe[1] * 2.4, at[1] + toe[1] * 10 - toe[0] * 2.4];
  return [heel, 1.9, tip, 1.5];
}

function arm(side, shoulder, hand) {
  const elbow = bend(shoulder, hand, UPPER_ARM, FOREARM, -1);
  const parts = [[shoulder, 3.4, elbow, 2.6], [elbow, 2.6, hand, 2.2]];
  return [...halo(side, parts), ...parts.map(([a, ra, b, rb]) => limb(side, a, ra, b, rb))];
}

/** A rim in the colour of the ground around near limbs, which sets them off from what is behind. */
function halo(side, parts) {
  return side === "near" ? parts.map(([a, ra, b, rb]) => limb("halo", a, ra + 1.3, b, rb + 1.3)) : [];
}

/** The joint between two segments whose ends are given; `side` 1 bends it forward, -1 backward. */
function bend(from, to, first, second, side) {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const reach = Math.min(Math.hypot(dx, dy), first + second - 0.01);
  const lean = Math.atan2(dy, dx);
  const open = Math.acos(clamp((first ** 2 + reach ** 2 - second ** 2) / (2 * first * reach)));
  const angle = lean + side * open;
  return [from[0] + first * Math.cos(angle), from[1] + first * Math.sin(angle)];
}

function along(degrees) {
  const angle = (degrees * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle)];
}

const clamp = (value) => Math.max(-1, Math.min(1, value));
