/** The ways to lift, each a clear posture with a load. */
import { ground, rect, path, sheet, shape } from "./draw.js";
import { drawFigure } from "./figure.js";

const both = (x, y = 4) => ({ near: { at: [x, y] }, far: { at: [x + 3, y] } });

/** A carton seen from the side, in figure space (y up), with a hand hole. */
const carton = (x, y, width, height) => [
  rect("load", x, y, width, height, 1.5),
  path("load-line", `M${x} ${y + height - 5}h${width}`),
];

const stand = (box, from, to, pose) => () => sheet(box, ground(from, to, 0), drawFigure(pose));

export const WAYS = {
  hinge: stand("-26 -78 76 82", -22, 46, {
    hip: [-10, 51], lean: 68, nod: 58, ...both(0),
    hand: [18, 19], farHand: [22, 19], load: () => carton(9, 0.5, 21, 19),
  }),
  squat: stand("-30 -80 72 84", -26, 36, {
    hip: [-13, 24], lean: 27, nod: 10, near: { at: [-2, 4] }, far: { at: [5, 6] },
    hand: [10, 13], farHand: [14, 13], load: () => carton(2, 0.5, 19, 15), armBehind: true,
  }),
  lunge: stand("-46 -88 80 92", -42, 32, {
    hip: [-8, 29], lean: 10, nod: 6, far: { at: [15, 4] }, near: { at: [-31.5, 12], tilt: -80 },
    hand: [15, 40], farHand: [19, 46], load: () => carton(3, 33, 19, 19),
  }),
  free_bend: stand("-26 -78 76 82", -22, 46, {
    hip: [-7, 52], lean: 82, round: 13, nod: 128, ...both(0),
    hand: [20, 9], farHand: [5, 34], load: () => [rect("load", 16, 0.5, 9, 8, 1.5)],
  }),
  golfer: () => sheet("-62 -86 116 90",
    ground(-22, 50, 0),
    path("prop", "M37 0V-47M30 -48H48"),
    drawFigure({
      hip: [-4, 52], lean: 84, nod: 64, near: { at: [-1, 4] }, far: { at: [-51, 57], tilt: 258 },
      hand: [25, 14], farHand: [34, 50], load: () => [rect("load", 20, 0.5, 10, 12, 1.5)],
    })),
  upright: stand("-28 -104 60 108", -22, 28, {
    hip: [0, 53], lean: 2, nod: 2, ...both(0),
    hand: [16, 60], farHand: [19, 60], load: () => carton(8, 52, 19, 17),
  }),
};

/** A closed lock on the ground, for the page that opens the vault. */
export function locked() {
  return sheet("-50 -72 100 76", ground(-36, 36, 0),
    shape("path", { class: "l-thick", d: "M-11 -34V-44A11 11 0 0 1 11 -44V-34" }),
    rect("f", -19, -36, 38, 35, 5), path("l", "M0 -21V-13"));
}
