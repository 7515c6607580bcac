/**
 * Turns what was tapped or typed into an answer for Rust. Whether an answer is
 * in range is not decided here.
 */

/** One option was tapped. */
export const choose = (id) => ({ choice: id });

/** Some options were ticked; none at all is a real answer too. */
export const tick = (ids) => ({ choices: [...ids] });

/** A pain number from 0 to 10 was tapped. */
export const ratePain = (number) => ({ pain: number });

/** A number was typed in a unit. */
export const typeNumber = (number, unit) => ({ number, unit });

/** "I'm not sure". */
export const NOT_SURE = Object.freeze({ not_sure: true });

/**
 * Reads a typed number with a decimal point or a decimal comma.
 * @param {string} text
 * @returns {number|null} null if it is not one plain number
 */
export function readNumber(text) {
  const plain = text.trim().replace(",", ".");
  return /^\d{1,6}(\.\d{0,4})?$/.test(plain) ? Number(plain) : null;
}

/**
 * Writes a number the way the language writes it, for a field that is filled in already.
 * @param {number} number
 * @param {string} language such as "es"
 */
export function writeNumber(number, language) {
  const plain = String(number);
  return language === "es" ? plain.replace(".", ",") : plain;
}

/**
 * What was kept for a question, in the form its part needs.
 * @param {object|null} value the ANSWER that Rust keeps
 * @returns {{choice: string|null, choices: string[]|null, pain: number|null, number: number|null, notSure: boolean}}
 */
export function readKept(value) {
  return {
    choice: value?.choice ?? null,
    choices: value?.choices ?? null,
    pain: value?.pain ?? null,
    number: value?.number ?? null,
    notSure: value?.not_sure === true,
  };
}

/**
 * What to do when Continue or "None of these" is tapped on a page with boxes.
 * @param {string[]} ticked
 * @param {"some"|"none"} tapped
 * @returns {{answer: object}|{problem: "nothing_ticked"|"ticked_and_none"}}
 */
export function settleTicks(ticked, tapped) {
  if (tapped === "none") {
    return ticked.length === 0 ? { answer: tick([]) } : { problem: "ticked_and_none" };
  }
  return ticked.length === 0 ? { problem: "nothing_ticked" } : { answer: tick(ticked) };
}
