/** What to change before a lift. */
import { ground, path, rect, sheet, shape } from "./draw.js";
import { stander } from "./places.js";

const box = (x, y, width, height) => [rect("load", x, y, width, height, 2), path("load-line", `M${x} ${y + height / 3}H${x + width}`)];

const on = (...drawing) => () => sheet("-50 -72 100 76", ground(-42, 42, 0), drawing.map((part) => part()));

/** An arrow from one point along a line: `dx` and `dy` say how far. */
const arrow = (x, y, dx, dy) => {
  const [ux, uy] = [Math.sign(dx) * 7, Math.sign(dy) * 7];
  return path("m-line", `M${x} ${y}l${dx} ${dy}m${-ux - uy} ${-uy - ux}l${ux + uy} ${uy + ux}l${-ux + uy} ${-uy + ux}`);
};

const carrier = () => stander({ lean: 4, nod: 2, hand: [17, 57], farHand: [18, 59] });

export const CHANGES = {
  find_mass: on(
    () => shape("g", { transform: "rotate(-16 -20 -1)" }, box(-20, -41, 44, 40)),
    () => path("m-line", "M31 -50Q31 -58 38 -58Q45 -58 45 -51Q45 -46 38 -43V-37M38 -28V-27"),
  ),
  bring_closer: () => sheet("-26 -108 100 112", ground(-20, 70, 0), stander({ nod: 14 }), box(40, -23, 26, 22), arrow(36, -12, -18, 0)),
  raise_start: on(() => rect("f2", -26, -24, 38, 23), () => path("l", "M-26 -12H12"), () => box(-22, -54, 30, 29), () => arrow(30, -8, 0, -40)),
  raise_end: on(() => path("prop", "M-34 -26H14M14 -26V0"), () => box(-24, -56, 30, 29), () => arrow(32, -16, 0, -40)),
  lower_end: on(() => path("prop", "M-34 -22H14M14 -22V0"), () => box(-24, -52, 30, 29), () => arrow(32, -60, 0, 36)),
  split_load: on(() => box(-40, -46, 36, 45), () => arrow(2, -24, 14, 0), () => box(24, -23, 22, 22), () => box(24, -48, 22, 22)),
  lighten: on(() => path("l", "M-30 -34L-42 -44M14 -34L26 -44"), () => box(-30, -34, 44, 33), () => rect("load", -16, -66, 15, 15, 2), () => arrow(24, -52, 0, -16)),
  better_grip: on(() => path("l", "M-26 -20Q-42 -20 -42 -32Q-42 -44 -26 -44M26 -20Q42 -20 42 -32Q42 -44 26 -44"), () => box(-26, -50, 52, 49)),
  three_people: () => sheet("-80 -108 132 112", ground(-74, 46, 0), shape("g", { transform: "translate(-54 0)" }, carrier()),
    shape("g", { transform: "translate(-27 0)" }, carrier()), shape("g", { transform: "translate(27 0) scale(-1 1)" }, carrier()), box(-15, -70, 30, 20)),
  second_person: () => sheet("-52 -108 104 112", ground(-46, 46, 0),
    shape("g", { transform: "translate(-27 0)" }, carrier()),
    shape("g", { transform: "translate(27 0) scale(-1 1)" }, carrier()),
    box(-15, -70, 30, 20)),
};
