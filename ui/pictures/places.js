/** Where a lift starts and how far away it is: a standing figure, and a mark at the place. */
import { ground, path, rect, sheet } from "./draw.js";
import { drawFigure } from "./figure.js";

/** A standing figure, seen from the side; `pose` says what is different. */
export const stander = (pose) => drawFigure({
  hip: [0, 53], lean: 0, near: { at: [-1, 4] }, far: { at: [2, 4] }, hand: [3, 42], farHand: [3, 42], ...pose,
});

/** A thing on a shelf at a height, in hundredths of stature, with a mark beside it. */
const height = (up) => () => sheet("-24 -128 94 132",
  ground(-20, 64, 0),
  path("dash", `M-20 ${-up}H18`),
  stander(),
  up > 0 ? path("prop", `M24 ${-up}H60M60 ${-up}V0`) : null,
  rect("load", 28, -up - 17, 22, up > 0 ? 15.5 : 16, 2),
  path("m", `M25 ${-up - 8}l-9 -5.5v11z`),
);

/**
 * Heights of the words in the design of the questions: 0, 20, 45, 95, 125 and
 * 175 cm, drawn on a figure of 170 cm.
 */
export const HEIGHTS = {
  floor: height(0),
  shin: height(12),
  knee: height(26),
  waist: height(56),
  chest: height(74),
  overhead: height(103),
};

/** A load held `out` from the ankles, in hundredths of stature, with an arrow below. */
const reach = (out) => () => sheet("-24 -108 86 124",
  ground(-20, 58, 0),
  stander({ lean: out > 30 ? 8 : 2, nod: 2,
    hand: [out, out > 30 ? 66 : 58], farHand: [out + 2, out > 30 ? 68 : 60],
    load: () => [rect("load", out - 9, out > 30 ? 57 : 50, 18, 16, 1.5)] }),
  path("m-line", `M0 10H${out}M${out - 4} 6l4 4l-4 4M4 6l-4 4l4 4`),
);

/** 30, 45 and 63 cm from the ankles to the hands, on a figure of 170 cm. */
export const REACHES = {
  close: reach(17.6),
  medium: reach(26.5),
  far: reach(37),
};
