/** Kinds of things to lift, each standing on the ground. */
import { circle, ground, limb, oval, path, rect, sheet } from "./draw.js";

const on = (...drawing) => () => sheet("-50 -78 100 82", ground(-42, 42, 0), drawing.map((part) => part()));

/** A function, since one node cannot stand in two pictures. */
const bucket = () => [
  path("l", "M-22 -44C-22 -72 22 -72 22 -44"),
  path("f", "M-24 -44H24L18 -1H-18Z"), oval("f", 0, -44, 24, 5), path("l", "M-21 -26H21"),
];
export const OBJECTS = {
  small: on(() => [rect("f", -11, -26, 22, 25, 3), oval("f", 0, -26, 11, 3.5), path("l", "M-11 -16H11")]),
  box: on(() => [rect("f", -30, -42, 60, 41, 3), path("l", "M-30 -30H30M0 -42V-30M-9 -16H9")]),
  bag: on(() => [
    path("l", "M-10 -50C-10 -72 10 -72 10 -50"),
    path("f", "M-22 -50H22L26 -4Q26 -1 23 -1H-23Q-26 -1 -26 -4Z"), path("l", "M-23 -38H23"),
  ]),
  basket: on(() => [
    path("f2", "M-20 -46Q-16 -60 -4 -52Q4 -64 14 -52Q22 -56 24 -46Z"),
    path("f", "M-34 -46H34L27 -1H-27Z"), path("l", "M-32 -34H32M-29 -16H29M-14 -46L-11 -1M14 -46L11 -1"),
  ]),
  bucket: on(bucket),
  long: on(() => [path("f", "M-44 -6L36 -62L42 -54L-38 2Z"), path("l", "M-32 -8L38 -57")]),
  big: on(() => [
    path("f", "M-26 -70H26Q30 -70 30 -66V-30H-30V-66Q-30 -70 -26 -70Z"), rect("f", -26, -38, 52, 22, 4),
    rect("f", -40, -46, 15, 44, 6), rect("f", 25, -46, 15, 44, 6), path("l", "M-24 -16H24M-34 -2V-1M34 -2V-1"),
  ]),
  living: on(() => [
    circle("near", -22, -54, 7.5), limb("shirt", [-22, -42], 5.5, [-22, -25], 5.5),
    limb("near", [-24, -23], 3.4, [-25, -3], 2.6), limb("near", [-20, -23], 3.4, [-19, -3], 2.6),
    limb("near", [-26, -42], 2.6, [-31, -27], 2.1), limb("near", [-18, -42], 2.6, [-12, -29], 2.1),
    limb("f", [4, -21], 7, [25, -22], 7.5), limb("f", [27, -26], 4, [33, -36], 3.5),
    limb("f", [34, -38], 5.5, [41, -35], 3), path("f", "M29 -41L31 -50L36 -43Z"),
    limb("f", [4, -16], 3, [3, -2], 2.2), limb("f", [24, -16], 3, [25, -2], 2.2), path("l", "M-2 -25Q-9 -30 -8 -38"),
  ]),
};

export { bucket as drawBucket, on as onGround };
