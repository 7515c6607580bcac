/** From a picture of the camera to grey pixels. Numbers only: no page, no camera. */

/** Rust takes frames up to this side, in pixels. */
const MOST = 1920;

/**
 * The largest square in the middle of a picture, and the side it is read at. Never enlarged, and reduced
 * only where it would be too large to hand over.
 * @returns {{left: number, top: number, side: number, to: number}}
 */
export function squareOf(width, height) {
  const side = Math.min(width, height);
  return { left: Math.floor((width - side) / 2), top: Math.floor((height - side) / 2), side, to: Math.min(side, MOST) };
}

/**
 * Brightness of each pixel, 0 to 255, by the weights of ITU-R BT.601 in 256ths.
 * @param {Uint8ClampedArray} rgba four bytes a pixel
 * @returns {Uint8Array}
 */
export function toGrey(rgba) {
  const grey = new Uint8Array(rgba.length >> 2);
  for (let at = 0, from = 0; at < grey.length; at += 1, from += 4) {
    grey[at] = (77 * rgba[from] + 150 * rgba[from + 1] + 29 * rgba[from + 2] + 128) >> 8;
  }
  return grey;
}
