/** How much is asked of a region: dots for some, lines for much, told apart without colour. */
import { circle, path, rect, shape, sheet } from "./draw.js";

const INK = { some: () => circle("ask-dot", 1.5, 1.5, 0.85), much: () => path("ask-line", "M0 1.5H3") };
const LENGTH = { little: 30, some: 60, much: 90 };
let drawn = 0;

/** The patterns of one picture, and their fills. */
export function patterns() {
  const own = `asks-${++drawn}`;
  const defs = Object.keys(INK).map((asks) => shape("pattern", {
    id: `${own}-${asks}`, class: `ask--${asks}`, width: 3, height: 3, patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)",
  }, INK[asks]()));
  return { defs, fill: (asks) => (INK[asks] ? `url(#${own}-${asks})` : "none") };
}

/** A bar as long as much is asked, with its pattern. */
export function askBar(asks) {
  const { defs, fill } = patterns();
  const bar = rect("", 1, 1, LENGTH[asks] ?? 0, 10);
  bar.setAttribute("fill", fill(asks));
  return sheet("0 0 92 12", defs, rect("ask-track", 1, 1, 90, 10), rect(`ask-rim ask--${asks}`, 1, 1, LENGTH[asks] ?? 0, 10), bar);
}
