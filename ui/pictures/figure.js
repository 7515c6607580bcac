/**
 * A person from the side, facing right, in hundredths of stature with y up. Lengths of
 * segments: Drillis and Contini 1966. It only draws: no load and no rule is worked out.
 */
import { limbLine, path, round, shape } from "./draw.js";

const SHANK = 24.6;
const THIGH = 24.5;
const UPPER_ARM = 18.6;
const FOREARM = 20;
const TRUNK = 28.8;
const NECK = 7;
const HEAD = 6.6;

/**
 * Draws a pose: `hip`; `lean` of the trunk and `nod` of the head from upright, in degrees;
 * how far the spine bulges (`round`); feet `near` and `far` as `{at, tilt, knee}`; `hand` and
 * `farHand`; `load`, which draws what is lifted; `armBehind` the near leg or before it.
 * @returns {SVGElement} a group in picture space (y down), with the ground at 0
 */
export function drawFigure(pose) {
  const { hip } = pose;
  const up = along(90 - pose.lean);
  const shoulder = [hip[0] + up[0] * TRUNK, hip[1] + up[1] * TRUNK];
  const out = pose.round ?? 0;
  const bulge = [(hip[0] + shoulder[0]) / 2 - up[1] * out, (hip[1] + shoulder[1]) / 2 + up[0] * out];
  const way = along(90 - (pose.nod ?? pose.lean * 0.6));
  const head = [NECK, NECK + HEAD].map((far) => [shoulder[0] + way[0] * far, shoulder[1] + way[1] * far]);
  const leg = ({ at, tilt = 0, knee = 1 }) => legParts(hip, bend(hip, at, THIGH, SHANK, knee), at, along(tilt));
  const arm = (hand) => armParts(shoulder, bend(shoulder, hand, UPPER_ARM, FOREARM, -1), hand);
  const [behind, front] = layers({
    far: [...leg(pose.far), ...arm(pose.farHand)], head: headParts(shoulder, ...head),
    leg: leg(pose.near), arm: arm(pose.hand), spine: [hip, bulge, shoulder], armBehind: pose.armBehind,
  }).map((all) => all.map(([className, d]) => path(className, d)));
  return shape("g", { transform: "scale(1 -1)" }, behind, pose.load?.() ?? [], front);
}

/** The limbs of a leg, each as two circles: `[from, radius, to, radius]`; `toe` is the direction of the sole. */
export const legParts = (hip, knee, ankle, toe) => [[hip, 5.2, knee, 3.9], [knee, 3.9, ankle, 2.6], [
  [ankle[0] - toe[0] * 3.2 + toe[1] * 2.1, ankle[1] - toe[1] * 3.2 - toe[0] * 2.1], 1.9,
  [ankle[0] + toe[0] * 10 + toe[1] * 2.4, ankle[1] + toe[1] * 10 - toe[0] * 2.4], 1.5,
]];

/** The limbs of an arm. */
export const armParts = (shoulder, elbow, hand) => [[shoulder, 3.4, elbow, 2.6], [elbow, 2.6, hand, 2.2]];

/** Neck and head. */
export const headParts = (shoulder, neck, head) => [[shoulder, 3.2, neck, 2.6], [head, HEAD, head, HEAD]];

/** What lies behind the load and what lies before it, from back to front: classes and outlines. */
export function layers({ far, head, leg, arm, spine, armBehind }) {
  const as = (className, parts, more = 0) => parts.map(([from, r1, to, r2]) => [className, limbLine(from, r1 + more, to, r2 + more)]);
  /* A rim in the colour of the ground sets near limbs off from what is behind. */
  const [nearLeg, nearArm] = [leg, arm].map((parts) => [...as("halo", parts, 1.3), ...as("near", parts)]);
  const [from, by, to] = spine.map((at) => at.map(round).join(" "));
  const trunk = ["halo-line", "shirt-line"].map((className) => [`spine ${className}`, `M${from}Q${by} ${to}`]);
  return [[...as("far", far), ...as("near", head)], armBehind ? [...trunk, ...nearArm, ...nearLeg] : [...nearLeg, ...trunk, ...nearArm]];
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
