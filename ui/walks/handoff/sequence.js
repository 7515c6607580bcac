/** An endless sequence of symbols, fetched ahead in small lots so that none has to be waited for. */

/** Symbols fetched at once, and how few are left when the next lot is asked for (house rules). */
const LOT = 8;
const FEW = 4;
/** Numbers of frames: after this many they come again. */
const ALL = 65_536;

export class Sequence {
  #bring;
  #next = 0;
  #held = [];
  #coming = null;

  /** @param {(from: number, count: number) => Promise<object[]>} bring */
  constructor(bring) {
    this.#bring = bring;
  }

  /** The next symbol, in order, without end. */
  async next() {
    if (this.#held.length === 0) {
      await this.#more();
    }
    const symbol = this.#held.shift();
    if (this.#held.length <= FEW) {
      // What fails here is asked for again when it is needed.
      this.#more().catch(() => {});
    }
    return symbol;
  }

  #more() {
    this.#coming ??= this.#lot().finally(() => {
      this.#coming = null;
    });
    return this.#coming;
  }

  async #lot() {
    const count = Math.min(LOT, ALL - this.#next);
    const symbols = await this.#bring(this.#next, count);
    this.#next = (this.#next + count) % ALL;
    this.#held.push(...symbols);
  }
}
