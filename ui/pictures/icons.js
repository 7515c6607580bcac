/** Small signs beside words, each told apart by its shape. */
import { shape } from "./draw.js";

/**
 * One sign.
 * @param {string} name a key of the list below
 */
export function icon(name) {
  return shape("svg", { class: "icon", viewBox: "0 0 24 24", "aria-hidden": "true", focusable: "false" }, shape("path", { d: SIGNS[name] ?? SIGNS.dot }));
}

const SIGNS = {
  back: "M15 5L8 12L15 19",
  on: "M9 5L16 12L9 19",
  home: "M4 11.5L12 5L20 11.5M6.5 10V19.5H17.5V10",
  tick: "M4.5 12.5L10 18L20 6.5",
  dot: "M12 10A2 2 0 1 0 12 14A2 2 0 1 0 12 10",
  /* a triangle with a mark */
  care: "M12 3.5L21.5 20H2.5ZM12 10V14.5M12 17.3V17.4",
  /* a shield of eight sides with a bar */
  stop: "M8.2 3H15.8L21 8.2V15.8L15.8 21H8.2L3 15.8V8.2ZM8 12H16",
  /* a box going up */
  lift: "M5 13H19V21H5ZM12 10V2.5M8 6L12 2.5L16 6",
  /* a box, and another place for it */
  change: "M3 14H11V21H3ZM15 14H21V21M6 10.5V7.5Q6 5 9 5H18M15 2L18.5 5L15 8",
  /* a box with a line through */
  leave: "M5 9H19V20H5ZM2.5 22L21.5 5",
  person: "M12 11A4 4 0 1 0 12 3A4 4 0 1 0 12 11M4.5 21Q4.5 14 12 14Q19.5 14 19.5 21",
  phone: "M6 3H9.5L11 8L8.5 9.8Q10.3 13.8 14.2 15.5L16 13L21 14.5V18Q21 21 18 21Q12 20.5 7.7 16.3Q3.4 12 3 6Q3 3 6 3Z",
  history: "M4 12A8 8 0 1 0 7 5.8M4 4V8.5H8.5M12 8V12.5L15 14.5",
  settings: "M4 7H20M4 17H20M9 4.5V9.5M15 14.5V19.5",
  hand: "M3 3H10V21H3ZM14 3H21V21H14ZM8 12H16M13 9L16 12L13 15",
  lock: "M6 11H18V20.5H6ZM8.5 11V8A3.5 3.5 0 0 1 15.5 8V11",
};
