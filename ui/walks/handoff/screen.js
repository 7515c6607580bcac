/**
 * A symbol on a white card, drawn in whole pixels. It is hidden when nobody has touched the phone for a
 * while, and when the app is left. Fires "hand-screen-rest" then, and "hand-screen-wake" when it is back.
 */
import { button, make, para, tell } from "../../make.js";
import { say } from "../../words.js";
import { QUIET, darkRuns, pixelsAModule, readModules } from "./modules.js";

/** House rule: a symbol nobody looks at is hidden after a minute. */
const REST_MS = 60_000;
/** House rule: no larger than this share of the screen's height, so that the buttons stay in reach. */
const OF_HEIGHT = 0.72;

export class Screen extends HTMLElement {
  #canvas = make("canvas", { class: "hand-screen__symbol", role: "img", "aria-label": say("screen-show-symbol") });
  #shown = null;
  #timer = null;
  #room = new ResizeObserver(() => this.#draw());
  #touch = () => this.#wait();
  #leave = () => document.hidden && this.#rest();

  connectedCallback() {
    this.className = "hand-screen";
    this.replaceChildren(this.#canvas);
    this.#room.observe(this);
    document.addEventListener("pointerdown", this.#touch);
    document.addEventListener("keydown", this.#touch);
    document.addEventListener("visibilitychange", this.#leave);
    this.#wait();
  }

  disconnectedCallback() {
    clearTimeout(this.#timer);
    this.#room.disconnect();
    document.removeEventListener("pointerdown", this.#touch);
    document.removeEventListener("keydown", this.#touch);
    document.removeEventListener("visibilitychange", this.#leave);
  }

  /** Shows a symbol: `{size, bits}`. */
  set symbol(symbol) {
    this.#shown = { size: symbol.size, modules: readModules(symbol) };
    this.#draw();
  }

  /** Whether it is hidden, since nobody touched the phone. */
  get rests() {
    return !this.#canvas.isConnected;
  }

  #wait() {
    clearTimeout(this.#timer);
    if (!this.rests) {
      this.#timer = setTimeout(() => this.#rest(), REST_MS);
    }
  }

  #rest() {
    this.replaceChildren(para(say("screen-show-rests"), "hand-screen__rests"), button(say("screen-show-again"), "second", () => this.#wake(), { id: "again" }));
    tell(this, "hand-screen-rest");
  }

  #wake() {
    this.replaceChildren(this.#canvas);
    this.#draw();
    this.#wait();
    tell(this, "hand-screen-wake");
  }

  #draw() {
    if (!this.#shown || !this.isConnected || this.rests) {
      return;
    }
    const { size, modules } = this.#shown;
    const dots = window.devicePixelRatio || 1;
    const pixels = pixelsAModule(size, Math.min(this.clientWidth, window.innerHeight * OF_HEIGHT) * dots);
    const side = (size + 2 * QUIET) * pixels;
    const canvas = this.#canvas;
    if (canvas.width !== side) {
      canvas.width = side;
      canvas.height = side;
      canvas.style.width = `${side / dots}px`;
      canvas.style.height = `${side / dots}px`;
    }
    const pen = canvas.getContext("2d", { alpha: false });
    pen.fillStyle = "#fff";
    pen.fillRect(0, 0, side, side);
    pen.fillStyle = "#000";
    for (const run of darkRuns(modules, size, pixels)) {
      pen.fillRect(...run);
    }
  }
}

customElements.define("hand-screen", Screen);
