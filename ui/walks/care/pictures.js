/** Pictures of our own: to tell people by, for moves, and for ways to move somebody. */
import { circle, ground, limb, oval, path, rect, sheet } from "../../pictures/draw.js";

/** Things that mean nothing, each with a shape of its own. */
const PEOPLE = {
  kettle: () => [path("f", "M-13 14L-10 -6H8L12 14Z"), path("l", "M-6 -6C-6 -18 6 -18 6 -6M10 2L18 -4V4L12 8"), circle("dot", 0, -9, 2)],
  leaf: () => [path("f", "M-16 14C-18 -8 0 -18 18 -16C18 2 8 18 -16 14Z"), path("l", "M-16 14L10 -9M-5 4V-6M2 -2H12")],
  boat: () => [path("f", "M-18 6H18L11 16H-11Z"), path("f2", "M-1 3V-17L14 3Z"), path("l", "M-1 6V-17")],
  star: () => [path("f", "M0 -17L5 -5L18 -5L8 3L12 16L0 8L-12 16L-8 3L-18 -5L-5 -5Z")],
  house: () => [path("f", "M-13 -2V15H13V-2Z"), path("f2", "M-18 0L0 -17L18 0Z"), rect("f2", -4, 4, 8, 11, 0)],
  sun: () => [circle("f", 0, 0, 9), path("l", "M0 -18V-13M0 13V18M-18 0H-13M13 0H18M-13 -13L-9 -9M9 9L13 13M13 -13L9 -9M-9 9L-13 13")],
  key: () => [path("l-thick", "M-2 0H17M11 0V8M17 0V6"), circle("f", -9, 0, 8), circle("f2", -9, 0, 3)],
  cup: () => [path("l", "M10 -6C20 -8 20 8 9 6"), path("f", "M-14 -11H11L8 12H-11Z"), path("l", "M-16 16H14")],
  tree: () => [rect("f2", -3, 4, 6, 13, 0), path("f", "M0 -18L13 -2H7L16 8H-16L-7 -2H-13Z")],
  bird: () => [path("f", "M-17 6C-10 -10 4 -12 10 -6L18 -3L11 1C10 14 -8 14 -17 6Z"), path("l", "M-10 4Q0 10 6 0"), circle("dot", 8, -4, 1.6)],
  fish: () => [path("f", "M-8 0L-18 -9V9Z"), oval("f", 3, 0, 13, 9), circle("dot", 10, -2, 1.8), path("l", "M0 -5Q4 0 0 5")],
  moon: () => [path("f", "M5 -17A17 17 0 1 0 16 9A14 14 0 0 1 5 -17Z")],
  bell: () => [path("f", "M-14 10C-8 4 -12 -14 0 -14C12 -14 8 4 14 10Z"), circle("f2", 0, 14, 3), circle("dot", 0, -16, 2)],
  pear: () => [path("f", "M0 -9C8 -9 4 0 10 5C14 10 8 17 0 17C-8 17 -14 10 -10 5C-4 0 -8 -9 0 -9Z"), path("l", "M0 -9Q1 -15 6 -17")],
  kite: () => [path("f", "M0 -18L12 -4L0 12L-12 -4Z"), path("l", "M0 -18V12M-12 -4H12M0 12Q6 14 2 18")],
  lamp: () => [path("f", "M-8 -16H8L15 0H-15Z"), path("l", "M0 0V14M-9 16H9")],
};

const arrow = (x1, y1, x2, y2) => {
  const lean = Math.atan2(y2 - y1, x2 - x1);
  const tip = (turn) => `${x2 - 7 * Math.cos(lean + turn)} ${y2 - 7 * Math.sin(lean + turn)}`;
  return path("m-line", `M${x1} ${y1}L${x2} ${y2}M${tip(0.6)}L${x2} ${y2}L${tip(-0.6)}`);
};
const bed = (x, width = 40) => [rect("f2", x, -24, width, 9, 3), path("prop", `M${x} -34V0M${x + width} -20V0`)];
const chair = (x) => [path("prop", `M${x} -42V0M${x} -20H${x + 20}M${x + 20} -20V0`)];
const toilet = (x) => [rect("f2", x - 2, -40, 7, 20, 2), path("f2", `M${x} -20H${x + 22}L${x + 16} -4H${x + 6}Z`)];
const wheels = (x) => [...chair(x), circle("frame", x + 6, -11, 11), circle("frame", x + 21, -4, 4)];
const car = (x) => [path("f", `M${x} -8V-22L${x + 10} -24L${x + 18} -38H${x + 40}L${x + 48} -24V-8Z`), circle("f2", x + 12, -7, 7), circle("f2", x + 38, -7, 7)];
const lying = (x, y) => [circle("near", x, y - 4, 5), limb("shirt", [x + 11, y - 3], 5, [x + 28, y - 3], 5), limb("near", [x + 32, y - 3], 4, [x + 56, y - 2], 2.6)];
const seated = (x, y = 0) => [circle("near", x, y - 57, 6.4), limb("shirt", [x, y - 44], 5.4, [x, y - 27], 5.4), limb("near", [x, y - 25], 4.4, [x + 18, y - 25], 3.6), limb("near", [x + 18, y - 24], 3.4, [x + 18, y - 3], 2.4)];
const standing = (x, shirt = "shirt", body = "near") => [circle(body, x, -76, 6.4), limb(shirt, [x, -63], 5.4, [x, -42], 5.4), limb(body, [x, -39], 4.6, [x, -3], 2.6)];
const worker = (x, hand) => [...standing(x, "far", "far"), limb("far", [x, -62], 3, hand, 2.2)];
const twice = (from, to) => () => [...from(-46), arrow(-2, -52, 18, -52), ...to(24)];

const MOVES = {
  bed_to_chair: twice(bed, chair), chair_to_bed: () => [...chair(-44), arrow(-18, -52, 2, -52), ...bed(8)],
  chair_to_toilet: twice(chair, toilet), toilet_to_chair: twice(toilet, chair),
  chair_to_chair: twice(chair, chair), chair_to_wheelchair: twice(chair, wheels),
  car: () => [...chair(-48), arrow(-22, -52, -4, -52), ...car(-2)],
  up_in_bed: () => [...bed(-40, 82), ...lying(-28, -25), arrow(24, -46, -20, -46)],
  turn_in_bed: () => [...bed(-40, 82), ...lying(-28, -25), path("m-line", "M-12 -42C-2 -58 18 -58 24 -44M24 -44l-8 -2M24 -44l3 -8")],
  sit_up: () => [...bed(-40, 82), ...seated(-6, 2), path("m-line", "M-34 -30C-34 -46 -28 -54 -18 -58M-18 -58l-8 0M-18 -58l-4 7")],
  up_in_chair: () => [...chair(-16), ...seated(-6, 5), arrow(26, -30, 26, -56)],
  lateral: () => [...bed(-48, 44), ...bed(6, 44), arrow(-24, -40, 28, -40)],
  floor_to_chair: () => [...lying(-44, -2), ...chair(22), arrow(12, -12, 24, -30)],
  hold_limb: () => [...bed(-46, 60), limb("near", [-14, -27], 5, [24, -42], 3.4), limb("near", [24, -42], 3, [34, -50], 2.4), path("m-line", "M16 -28C20 -32 26 -32 28 -36")],
  stockings: () => [limb("near", [-16, -64], 6, [-14, -24], 4.4), limb("shirt", [-14, -22], 4.8, [-12, -8], 4), limb("shirt", [-12, -5], 4, [12, -4], 3), arrow(20, -12, 20, -40)],
  shoes: () => [limb("near", [-12, -56], 5.4, [-10, -14], 3.8), path("f", "M-20 -14H-2Q10 -10 22 -8V-1H-20Z"), path("l", "M0 -10L6 -14M6 -8L12 -12")],
  wash_low: () => [limb("near", [-22, -58], 5.4, [-20, -10], 3.8), limb("near", [-20, -6], 3.4, [0, -4], 2.6), path("f2", "M10 -22H40L36 -1H14Z"), path("l", "M10 -16H40"), path("dash", "M-4 -24L-4 -12M4 -30V-18")],
  catch: () => [limb("shirt", [-4, -40], 5.4, [-14, -22], 5.4), circle("near", 4, -50, 6.4), limb("near", [-16, -20], 4.4, [-30, -4], 2.6), path("m-line", "M14 -66L40 -16M40 -66L14 -16")],
};

const WAYS = {
  stand_by: () => [...standing(12), ...worker(-18, [-4, -50])],
  stand_pivot_belt: () => [...standing(14), rect("f", 7, -50, 14, 6, 2), ...worker(-18, [6, -48]), path("m-line", "M28 -8C40 -12 40 -24 30 -26M30 -26l7 -1M30 -26l3 7")],
  stand_aid: () => [path("frame", "M34 0V-62H20M34 -2H-12"), ...standing(4), limb("near", [4, -60], 3, [20, -60], 2.2)],
  slide_board: () => [...chair(-40), ...chair(22), ...seated(-12, 4), rect("f", -22, -20, 52, 4, 2), arrow(0, -64, 22, -64)],
  hoist_two: () => [path("frame", "M-36 0V-74H4V-60M-46 -1H10"), path("l", "M-8 -48C-4 -66 12 -66 16 -48"), ...seated(4, -8), path("f2", "M-6 -30Q4 -20 18 -32L20 -26Q4 -12 -8 -24Z")],
  slide_sheet_two: () => [...bed(-42, 86), rect("f", -38, -27, 78, 4, 1), ...lying(-28, -28), arrow(-2, -50, -24, -50), arrow(6, -50, 28, -50)],
  guided_self_rise: () => [...chair(-16), ...seated(-6, 4), arrow(24, -34, 24, -66)],
  manual_lift: () => [limb("near", [-34, -44], 5, [4, -38], 3.6), limb("near", [4, -38], 3.2, [32, -34], 2.4), limb("far", [-4, -14], 3, [6, -32], 2.4), limb("far", [24, -12], 3, [26, -28], 2.4), arrow(16, -52, 16, -68)],
};

const small = (parts, name) => named(sheet("-24 -24 48 48", parts()), name);
const wide = (parts, name) => named(sheet("-54 -86 108 90", ground(-50, 50, 0), parts()), name);

/** The picture that a person is told by. */
export const personPicture = (name) => small(PEOPLE[name] ?? PEOPLE.star, name);

/** A move. */
export const movePicture = (name) => wide(MOVES[name] ?? MOVES.bed_to_chair, name);

/** A way to move somebody. */
export const wayPicture = (name) => wide(WAYS[name] ?? WAYS.stand_by, name);

function named(picture, name) {
  picture.setAttribute("data-picture", name);
  return picture;
}
