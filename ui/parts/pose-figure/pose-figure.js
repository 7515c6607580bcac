/** A figure solved for this person and load, that moves down and up, and what it asks of the body. */
import { button, fold, make, para } from "../../make.js";
import { say } from "../../words.js";
import { askBar } from "../../pictures/asks.js";
import { drawPosed } from "../../pictures/posed.js";

class PoseFigure extends HTMLElement {
  #move;
  #toggle;
  #turn = 0;

  /** Draws `{reply, beside}`: the reply of `figure`, and a node to stand beside the picture. */
  set drawn({ reply, beside = null }) {
    const { picture, move } = drawPosed(reply);
    this.#move = move;
    this.#toggle = button("", "quiet", () => (this.#turn ? this.#rest() : this.#play()), { "data-move": reply.way });
    this.className = "pose-figure";
    this.replaceChildren(
      make("div", { class: "look" }, picture, make("div", { class: "pose-figure__beside" }, beside, this.#toggle)),
      para(say("screen-figure-asks"), "hint"),
      make("ul", { class: "rows pose-figure__asks" }, reply.regions.map(({ region, asks, text }) => make("li", { "data-region": region, "data-asks": asks }, askBar(asks), text))),
    );
    matchMedia("(prefers-reduced-motion: reduce)").matches ? this.#rest() : this.#play();
  }

  disconnectedCallback() {
    cancelAnimationFrame(this.#turn);
  }

  #play() {
    const start = performance.now();
    const step = (now) => {
      this.#move(Math.max(0, now - start));
      this.#turn = requestAnimationFrame(step);
    };
    this.#turn = requestAnimationFrame(step);
    this.#toggle.textContent = say("screen-figure-stop");
  }

  #rest() {
    cancelAnimationFrame(this.#turn);
    this.#turn = 0;
    this.#move(null);
    this.#toggle.textContent = say("screen-figure-play");
  }
}

/** What such a drawing is worth, one tap away. */
export function aboutDrawing(note) {
  return fold(say("screen-figure-sure"), { id: "drawing" }, para(note), para(say("screen-figure-estimate")));
}

customElements.define("pose-figure", PoseFigure);
