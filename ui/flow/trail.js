/**
 * The trail of addresses behind the page, so that our Back and the phone's Back
 * agree and neither makes the other go round in circles.
 */
export class Trail {
  #steps = [];

  /** Notes that `hash` is now shown. Returns whether that was one step back. */
  arrive(hash) {
    if (this.#steps.at(-1) === hash) {
      return false;
    }
    if (this.#steps.at(-2) === hash) {
      this.#steps.pop();
      return true;
    }
    this.#steps.push(hash);
    return false;
  }

  /** Notes that the page now shown stands in the place of the one before it. */
  replace(hash) {
    this.#steps.pop();
    if (this.#steps.at(-1) !== hash) {
      this.#steps.push(hash);
    }
  }

  /** Whether one step back leads to `hash`. */
  leadsBackTo(hash) {
    return this.#steps.at(-2) === hash;
  }
}
