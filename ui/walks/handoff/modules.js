/** A QR symbol from its bits to whole pixels. Numbers only: no page, no canvas. */

/** White modules on each side (ISO/IEC 18004, section 9.1). */
export const QUIET = 4;

/**
 * Reads the modules of a symbol.
 * @param {{size: number, bits: string}} symbol `bits` is Base64, row by row, highest bit first, 1 for dark
 * @returns {Uint8Array} size × size, 1 for dark
 */
export function readModules({ size, bits }) {
  const bytes = atob(bits);
  const modules = new Uint8Array(size * size);
  for (let at = 0; at < modules.length; at += 1) {
    modules[at] = (bytes.charCodeAt(at >> 3) >> (7 - (at & 7))) & 1;
  }
  return modules;
}

/**
 * How many pixels a module gets: a whole number, so that all are alike, and at least one.
 * @param {number} size modules on a side
 * @param {number} room pixels of the screen on a side, quiet zone included
 */
export function pixelsAModule(size, room) {
  return Math.max(1, Math.floor(room / (size + 2 * QUIET)));
}

/**
 * The dark runs of a symbol as rectangles, in pixels, quiet zone included.
 * @returns {Array<[number, number, number, number]>} left, top, width, height
 */
export function darkRuns(modules, size, pixels) {
  const runs = [];
  for (let row = 0; row < size; row += 1) {
    for (let from = 0; from < size; from += 1) {
      let to = from;
      while (to < size && modules[row * size + to] === 1) {
        to += 1;
      }
      if (to > from) {
        runs.push([(from + QUIET) * pixels, (row + QUIET) * pixels, (to - from) * pixels, pixels]);
        from = to;
      }
    }
  }
  return runs;
}
