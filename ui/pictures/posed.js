/** A figure from a solved posture, seen from its right, so the right limbs are near. It can be moved. */
import { patterns } from "./asks.js";
import { ground, limbLine, path, rect, round, shape, sheet } from "./draw.js";
import { armParts, headParts, layers, legParts } from "./figure.js";
import { extentOf, frameAt, momentOf, scaleOf } from "./plane.js";

/** Draws the reply of `figure` at its lowest: `{picture, move}`. `move` goes to a moment of the round in ms; null is the lowest. */
export function drawPosed({ figure, regions, load_depth_m: depth }) {
  const { frames, segments, load, fit } = figure;
  const scale = scaleOf(figure);
  const height = Math.max(0.1, Math.min(0.3, depth * 0.75)); // not asked: as a carton of this depth
  const { left, right, top } = extentOf(frames, scale, depth, height);
  const [x, z, d, h] = [...load.at_m, depth, height].map((metres) => round(metres * scale));
  const carton = shape("g", {}, rect("load", -d / 2, 0.5, d, h, 1.5), path("load-line", `M${-d / 2} ${round(h * 0.72)}h${d}`));
  const { defs, fill } = patterns();
  const asked = ["some", "much"].flatMap((word) => regions.filter(({ region, asks }) => asks === word && PLACES[region]));
  let nodes = null;
  const move = (ms) => {
    const now = ms === null ? frameAt(frames, 0) : momentOf(frames, ms);
    const ends = (name) => {
      const [x0, z0, x1, z1] = now.segments[segments.findIndex((one) => one.name === name)].map((metres) => metres * scale);
      return [[x0, z0], [x1, z1]];
    };
    const [behind, front] = body(ends, fit === "between_feet");
    const marks = asked.flatMap(({ region, asks }) => [[`ask-rim ask--${asks}`], ["ask", fill(asks)]].map(([className, paint = ""]) => [className, limbLine(...PLACES[region](ends)), paint]));
    nodes ??= [behind, [...front, ...marks]].map((all) => all.map(([className, , paint]) => shape("path", { class: className, ...(paint && { fill: paint }) })));
    [...behind, ...front, ...marks].forEach(([, line], at) => nodes.flat()[at].setAttribute("d", line));
    carton.setAttribute("transform", `translate(${(now.loaded ? now.hands : load.at_m).map((metres) => round(metres * scale)).join(" ")})`);
  };
  move(null);
  const start = z > 3 ? [path("dash", `M${left + 2} ${-z}H${right - 2}`), path("prop", `M${round(x - d / 2 - 2)} ${-z}H${round(x + d / 2 + 2)}V0`)] : [];
  const picture = sheet(`${left} ${-top} ${round(right - left)} ${round(top + 4)}`, defs, ground(left + 2, right - 2, 0), start,
    shape("g", { transform: "scale(1 -1)" }, nodes[0], carton, nodes[1]));
  return { picture, move };
}

function body(ends, armBehind) {
  const leg = (side) => {
    const [ankle, tip] = ends(`foot_${side}`);
    const sole = Math.atan2(tip[1] - ankle[1], tip[0] - ankle[0]) + SOLE;
    return legParts(...ends(`thigh_${side}`), ankle, [Math.cos(sole), Math.sin(sole)]);
  };
  const arm = (side) => armParts(...ends(`upper_arm_${side}`), along(ends(`hand_${side}`), PALM));
  const [shoulder, head] = ends("head");
  return layers({
    far: [...leg("left"), ...arm("left")], head: headParts(shoulder, head, head),
    leg: leg("right"), arm: arm("right"), spine: [...ends("pelvis"), shoulder], armBehind,
  });
}

const along = ([from, to], share) => from.map((value, axis) => value + (to[axis] - value) * share);
const disc = (at, r) => [at, r, at, r];

/** Where each region is marked. */
const PLACES = {
  back: (ends) => [along(ends("upper_trunk"), 0.16), 3.3, along(ends("upper_trunk"), 0.42), 3.3],
  knee_left: (ends) => disc(ends("thigh_left")[1], 4),
  knee_right: (ends) => disc(ends("thigh_right")[1], 4),
  hip_left: (ends) => disc(ends("thigh_left")[0], 3.4),
  hip_right: (ends) => disc(ends("thigh_right")[0], 3.4),
};

/** From the line of ankle and toes to the sole: shares of stature (Drillis and Contini 1966). */
const SOLE = Math.atan2(0.039, 0.114);
/** How far the palm is drawn along the hand, so that it stays above the grip. */
const PALM = 0.4;
