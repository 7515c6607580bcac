/** Everyday weights: things whose weight people know in their hands. */
import { circle, path, rect } from "./draw.js";
import { drawBucket, onGround as on } from "./objects.js";

const bottle = (x) => [
  path("f", `M${x - 3} -64H${x + 3}V-54Q${x + 9} -50 ${x + 9} -43V-3Q${x + 9} -1 ${x + 7} -1H${x - 7}Q${x - 9} -1 ${x - 9} -3V-43Q${x - 9} -50 ${x - 3} -54Z`),
  path("l", `M${x - 9} -34H${x + 9}M${x - 9} -20H${x + 9}`),
];

const iron = () => [circle("l", 0, -59, 8), path("f", "M-13 -52H13L25 -6Q26 -1 21 -1H-21Q-26 -1 -25 -6Z")];

export const WEIGHTS = {
  cup: on(() => [path("l", "M15 -36Q31 -36 27 -22Q24 -13 13 -14"), path("f", "M-19 -42H17L14 -4Q14 -1 11 -1H-13Q-16 -1 -16 -4Z"), path("l", "M-8 -50Q-4 -55 -8 -60M5 -50Q9 -55 5 -60")]),
  flour: on(() => [path("f", "M-19 -54L-15 -64H15L19 -54V-4Q19 -1 16 -1H-16Q-19 -1 -19 -4Z"), path("l", "M-19 -54H19M0 -18V-40M0 -38Q-8 -38 -9 -44M0 -38Q8 -38 9 -44M0 -29Q-8 -29 -9 -35M0 -29Q8 -29 9 -35")]),
  bottle: on(() => bottle(0)),
  two_bottles: on(() => [bottle(-14), bottle(14)]),
  six_pack: on(() => [[-25, -3, 19].map(bottle), rect("f", -36, -26, 67, 25, 3), path("l", "M-14 -60Q-3 -74 8 -60")]),
  water_bucket: on(() => [drawBucket(), path("l", "M-12 -14Q-6 -18 0 -14T12 -14")]),
  bicycle: on(() => [
    circle("l", -25, -19, 17), circle("l", 25, -19, 17),
    path("frame", "M-25 -19L-11 -43H14L0 -19ZM0 -19L-13 -49M25 -19L12 -52H20M-20 -50H-7"),
  ]),
  suitcase: on(() => [path("l", "M-9 -54V-73H9V-54"), rect("f", -24, -56, 48, 51, 6), path("l", "M-10 -48V-13M10 -48V-13M-15 -5V-1M15 -5V-1")]),
  heavier: on(() => [iron(), path("l", "M-9 -20H9M0 -29V-11")]),
  unknown: on(iron),
};
