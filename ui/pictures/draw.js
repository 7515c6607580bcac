/**
 * The pen: SVG nodes made one by one, in one line style, with colours from classes.
 * Pictures are hidden from screen readers, since the words stand beside them.
 */

const NS = "http://www.w3.org/2000/svg";

/** One SVG node. */
export function shape(name, attributes = {}, ...children) {
  const node = document.createElementNS(NS, name);
  for (const [key, value] of Object.entries(attributes)) {
    node.setAttribute(key, String(value));
  }
  node.append(...children.flat(Infinity).filter(Boolean));
  return node;
}

/** A whole picture with the given view box. */
export function sheet(box, ...children) {
  return shape("svg", { class: "picture", viewBox: box, "aria-hidden": "true", focusable: "false" }, ...children);
}

/** A path: "f" for a filled thing, "l" for a line, "m" for a mark, or any class of pictures.css. */
export const path = (className, d) => shape("path", { class: className, d });

/** A rectangle with round corners. */
export const rect = (className, x, y, width, height, rx = 2) => shape("rect", { class: className, x, y, width, height, rx });

/** A circle. */
export const circle = (className, cx, cy, r) => shape("circle", { class: className, cx, cy, r });

/** An ellipse. */
export const oval = (className, cx, cy, rx, ry) => shape("ellipse", { class: className, cx, cy, rx, ry });

/** The ground line under a thing. */
export const ground = (x1, x2, y) => path("ground", `M${x1} ${y}H${x2}`);

/** A limb: a circle at each end, of its own radius, and what lies between them. */
export const limb = (className, from, r1, to, r2) => path(className, limbLine(from, r1, to, r2));

/** The outline of a limb, for a path that moves. Two equal ends at one place are a circle. */
export function limbLine(from, r1, to, r2) {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy) || 1;
  const lean = Math.atan2(dy, dx);
  const spread = Math.acos(Math.max(-1, Math.min(1, (r1 - r2) / length)));
  const at = ([x, y], r, angle) => `${round(x + r * Math.cos(angle))} ${round(y + r * Math.sin(angle))}`;
  return (
    `M${at(from, r1, lean + spread)}L${at(to, r2, lean + spread)}` +
    `A${r2} ${r2} 0 ${r1 < r2 ? 1 : 0} 0 ${at(to, r2, lean - spread)}` +
    `L${at(from, r1, lean - spread)}A${r1} ${r1} 0 ${r1 > r2 ? 1 : 0} 0 ${at(from, r1, lean + spread)}Z`
  );
}

/** A number short enough for a drawing. */
export function round(value) {
  return Math.round(value * 100) / 100;
}
