/** Reads frames until what they carry is whole. Knows no camera and no bridge: both come in. */

/**
 * Hands frames over one at a time: the next is taken only when Rust has looked at the last.
 * @param {{next: () => Promise<{grey: Uint8Array, side: number}|null>}} source
 * @param {(kind: string, bytes: Uint8Array, size: object) => Promise<object>} take
 * @param {(reply: object) => boolean} heed told every reply; true ends the reading
 */
export async function readFrames(source, take, heed) {
  for (let frame = await source.next(); frame; frame = await source.next()) {
    const reply = await take("frame", frame.grey, { width: frame.side, height: frame.side });
    if (heed(reply)) {
      return;
    }
  }
}

/**
 * Which kind a picked file is, by its name.
 * @param {string} name
 * @returns {"file"|"photo"}
 */
export function kindOf(name) {
  return /\.heft$/i.test(name) ? "file" : "photo";
}

/** Where to go on when something is whole. */
export function pageAfter(next) {
  return { compare: "#/hand/pair", code: "#/hand/code", accept: "#/hand/question" }[next] ?? "#/hand";
}

/**
 * How much is in, from 0 to 1; 0 while it is not known how much there is.
 * @param {number} have
 * @param {number} need
 */
export function shareOf(have, need) {
  return need > 0 ? Math.min(1, Math.max(0, have / need)) : 0;
}
