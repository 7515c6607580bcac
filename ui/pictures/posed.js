/**
 * A figure from a solved posture, in the style of the drawn ones: seen from the
 * person's right, so the right limbs are near. It can be moved to any moment.
 */
import { ground, limbLine, path, rect, round, shape, sheet } from "./draw.js";
import { patterns } from "./asks.js";
import { foot } from "./figure.js";
import { ROUND_MS, extentOf, frameAt, momentOf, scaleOf } from "./plane.js";

/**
 * Draws it at its lowest.
 * @param {object} reply of the command `figure`
 * @returns {{picture: SVGElement, move: (ms: number|null) => void}} `move` goes to a moment of the round; null is the lowest
 */
export function drawPosed({ figure, regions, load_depth_m: depth }) {
  const scale = scaleOf(figure);
  const height = loadHeight(depth);
  const { left, right, top } = extentOf(figure.frames, scale, depth / 2, height);
  const names = figure.segments.map(({ name }) => name);
  const { defs, fill } = patterns();
  const parts = [...limbs(figure.fit === "between_feet"), ...marks(regions, fill)];
  const load = shape("g", {}, carton(depth * scale, height * scale));
  const [startX, startZ] = figure.load.at_m.map((metres) => round(metres * scale));
  const nodes = parts.map(({ className, paint }) => (className ? shape("path", { class: className, ...(paint && { fill: paint }) }) : load));
  const move = (ms) => {
    const { segments, hands, loaded } = ms === null ? frameAt(figure.frames, 0) : momentOf(figure.frames, ms);
    const ends = (name) => {
      const [x0, z0, x1, z1] = segments[names.indexOf(name)].map((metres) => metres * scale);
      return [[x0, z0], [x1, z1]];
    };
    parts.forEach(({ line }, at) => line && nodes[at].setAttribute("d", line(ends)));
    const [x, z] = loaded ? hands.map((metres) => round(metres * scale)) : [startX, startZ];
    load.setAttribute("transform", `translate(${x} ${z})`);
  };
  move(null);
  const edge = startX + (depth * scale) / 2 + 2;
  const picture = sheet(`${left} ${-top} ${round(right - left)} ${round(top + BELOW)}`, defs, ground(left + 2, right - 2, 0),
    startZ > 3 ? [path("dash", `M${left + 2} ${-startZ}H${right - 2}`), path("prop", `M${round(startX - (depth * scale) / 2 - 2)} ${-startZ}H${round(edge)}V0`)] : null,
    shape("g", { transform: "scale(1 -1)" }, nodes));
  return { picture, move };
}

export { ROUND_MS };

/** Limbs from back to front; the entry without a name is the load. */
function limbs(armsBetween) {
  const nearLeg = rimmed([...leg("right")]);
  const nearArm = rimmed([...arm("right")]);
  const trunk = ["spine halo-line", "spine shirt-line"].map((className) => ({ className, line: spine }));
  return [
    ...as("far", leg("left")), ...as("far", arm("left")), ...as("near", HEAD), {},
    ...(armsBetween ? [...trunk, ...nearArm, ...nearLeg] : [...nearLeg, ...trunk, ...nearArm]),
  ];
}

const leg = (side) => [
  (ends) => wide(ends(`thigh_${side}`), 5.2, 3.9),
  (ends) => wide(ends(`shank_${side}`), 3.9, 2.6),
  (ends) => {
    const [ankle, tip] = ends(`foot_${side}`);
    return foot(ankle, toeWay(ankle, tip));
  },
];

const arm = (side) => [
  (ends) => wide(ends(`upper_arm_${side}`), 3.4, 2.6),
  (ends) => {
    const [wrist, tip] = ends(`hand_${side}`);
    return [ends(`forearm_${side}`)[0], 2.6, between(wrist, tip, PALM), 1.9];
  },
];

const HEAD = [
  (ends) => wide(ends("head"), 3.2, 2.6),
  (ends) => round1(ends("head")[1], 6.6),
];

/** A back that bends where pelvis and trunk meet. */
function spine(ends) {
  const [[hip, joint], [, shoulder]] = [ends("pelvis"), ends("upper_trunk")];
  return `M${hip.map(round).join(" ")}Q${joint.map(round).join(" ")} ${shoulder.map(round).join(" ")}`;
}

/** Marks on the regions of which some or much is asked, the strongest on top. */
function marks(regions, fill) {
  return ["some", "much"].flatMap((asks) => regions.filter((one) => one.asks === asks && one.region in PLACES).flatMap(({ region }) => {
    const line = (ends) => limbLine(...PLACES[region](ends));
    return [{ className: `ask-rim ask--${asks}`, line }, { className: "ask", paint: fill(asks), line }];
  }));
}

const lowBack = (ends) => {
  const [joint, shoulder] = ends("upper_trunk");
  const behind = [(joint[1] - shoulder[1]) * 0.08, (shoulder[0] - joint[0]) * 0.08];
  const at = (share) => between(joint, shoulder, share).map((value, axis) => value + behind[axis]);
  return [at(0.06), 3.3, at(0.34), 3.3];
};
const knee = (side) => (ends) => round1(ends(`thigh_${side}`)[1], 4);
const hip = (side) => (ends) => round1(ends(`thigh_${side}`)[0], 3.6);
const PLACES = { back: lowBack, knee_left: knee("left"), knee_right: knee("right"), hip_left: hip("left"), hip_right: hip("right") };

/** A carton that stands on the hands, its middle over them, in a space with y up. */
const carton = (depth, height) => [
  rect("load", round(-depth / 2), 0.5, round(depth), round(height), 1.5),
  path("load-line", `M${round(-depth / 2)} ${round(height * 0.72)}h${round(depth)}`),
];

/** How high a load is drawn, m: its height is not asked. */
const loadHeight = (depth) => Math.max(0.1, Math.min(0.3, depth * 0.75));

const as = (className, lines) => lines.map((line) => ({ className, line: (ends) => limbLine(...line(ends)) }));

/** Near limbs with a rim around them, which sets them off from what is behind. */
function rimmed(lines) {
  const rim = lines.map((line) => (ends) => {
    const [from, r1, to, r2] = line(ends);
    return [from, r1 + 1.3, to, r2 + 1.3];
  });
  return [...as("halo", rim), ...as("near", lines)];
}

const wide = ([from, to], r1, r2) => [from, r1, to, r2];
const round1 = (at, r) => [at, r, at, r];
const between = (from, to, share) => from.map((value, axis) => value + (to[axis] - value) * share);

/** The direction of a sole: the line from ankle to toes, turned up by the ankle's height over the sole. */
function toeWay([x0, z0], [x1, z1]) {
  const angle = Math.atan2(z1 - z0, x1 - x0) + SOLE;
  return [Math.cos(angle), Math.sin(angle)];
}

/** Ankle 0.039 of stature over the sole, toes 0.114 before it (Drillis and Contini 1966). */
const SOLE = Math.atan2(0.039, 0.114);
/** The drawn palm ends this far along the hand, so that its thickness stays above the grip. */
const PALM = 0.4;
const BELOW = 4;
