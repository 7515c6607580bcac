/**
 * Holds the fixed words of the screens, in the language of the user. They come
 * from Rust once at start and again when the language changes; none is written here.
 */

let kept = {};

/**
 * Takes over a whole set of words.
 * @param {string} language such as "en"
 * @param {Record<string, string>} words text by id
 */
export function useWords(language, words) {
  kept = words;
  if (globalThis.document) {
    document.documentElement.lang = language;
  }
}

/**
 * One text by its id. Slots such as "[at]" are filled from `slots`.
 * A missing id gives the id itself, so that a gap is seen and never hides a page.
 * @param {string} id such as "screen-back"
 * @param {Record<string, string|number>} [slots]
 * @returns {string}
 */
export function say(id, slots = {}) {
  let text = kept[id] ?? id;
  for (const [slot, value] of Object.entries(slots)) {
    text = text.replaceAll(`[${slot}]`, String(value));
  }
  return text;
}
