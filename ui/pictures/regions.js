/** Parts of the body on a figure seen from behind, so that left is on the left. */
import { circle, limb, path, sheet } from "./draw.js";

const SIDES = [-1, 1];

const body = () => [
  SIDES.map((side) => [
    limb("near", [side * 7, -48], 5.6, [side * 8, -28], 4.1), limb("near", [side * 8, -28], 4.1, [side * 8, -5], 2.7),
    limb("near", [side * 8, -3], 2.1, [side * 11, -2.4], 1.9),
    limb("near", [side * 14.5, -78], 3.7, [side * 19, -61], 2.8), limb("near", [side * 19, -61], 2.8, [side * 21, -43], 2.2),
  ]),
  path("shirt", "M-3 -89C-8 -85 -16 -85 -17.5 -79L-12.5 -72Q-10 -64 -10.5 -60Q-12.5 -54 -12.6 -45H12.6Q12.5 -54 10.5 -60Q10 -64 12.5 -72L17.5 -79C16 -85 8 -85 3 -89Z"),
  circle("near", 0, -96, 7),
];

const spot = (x, y, r) => [circle("spot-ring", x, y, r + 3), circle("spot", x, y, r)];

const region = (...spots) => () => sheet("-34 -106 68 108", body(), spots.map((one) => spot(...one)));

export const REGIONS = {
  back: region([0, -56, 6]),
  knee_left: region([-8, -28, 5]),
  knee_right: region([8, -28, 5]),
  hip_left: region([-8.5, -46, 5]),
  hip_right: region([8.5, -46, 5]),
  shoulders: region([-13, -78, 5], [13, -78, 5]),
};
