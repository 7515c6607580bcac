/** How much is asked of a region: dots for some, lines for much, told apart without colour. */
import { circle, path, rect, shape, sheet } from "./draw.js";

const LENGTHS = { little: 30, some: 60, much: 90 };
const INK = {
  some: () => circle("ask-dot", 1.5, 1.5, 0.85),
  much: () => path("ask-line", "M0 1.5H3"),
};
let drawn = 0;

/**
 * The patterns of one picture, and a fill for each.
 * @returns {{defs: Node, fill: (asks: string) => string}}
 */
export function patterns() {
  const own = `asks-${++drawn}`;
  const pattern = (asks) => shape("pattern", {
    id: `${own}-${asks}`, class: `ask--${asks}`, width: 3, height: 3, patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)",
  }, INK[asks]());
  return {
    defs: shape("defs", {}, Object.keys(INK).map(pattern)),
    fill: (asks) => (asks in INK ? `url(#${own}-${asks})` : "none"),
  };
}

/** A bar as long as much is asked, with its pattern. */
export function askBar(asks) {
  const { defs, fill } = patterns();
  const bar = (className, length, paint) => shape("rect", { class: className, x: 1, y: 1, width: length, height: 10, rx: 2, ...(paint && { fill: paint }) });
  const picture = sheet("0 0 92 12", defs, rect("ask-track", 1, 1, 90, 10, 2), bar(`ask-rim ask--${asks}`, LENGTHS[asks] ?? 0, null), bar("ask", LENGTHS[asks] ?? 0, fill(asks)));
  picture.setAttribute("preserveAspectRatio", "xMinYMid meet");
  return picture;
}
