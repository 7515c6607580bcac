/**
 * Eleven buttons from 0 to 10, six above five, with words at both ends.
 * Fires "pain-scale-pick" with the number.
 */
import { make, tell } from "../../make.js";
import { say } from "../../words.js";

class PainScale extends HTMLElement {
  /** Draws the buttons; `chosen` is the number kept, or null. */
  set chosen(chosen) {
    this.className = "pain-scale";
    this.replaceChildren(
      make("p", { class: "pain-scale__end" }, make("b", { text: "0" }), ` ${say("screen-pain-none")}`),
      make("div", { class: "pain-scale__all" }, NUMBERS.map((number) => this.#step(number, number === chosen))),
      make("p", { class: "pain-scale__end pain-scale__end--most" }, make("b", { text: "10" }), ` ${say("screen-pain-worst")}`),
    );
  }

  #step(number, chosen) {
    const pick = () => tell(this, "pain-scale-pick", number);
    const words = { 0: say("screen-pain-none"), 10: say("screen-pain-worst") }[number];
    return make("button", { type: "button", id: `pain-${number}`, class: "pain-scale__step", "data-answer": number, "data-chosen": chosen, on: { click: pick } },
      String(number),
      words ? make("span", { class: "unseen", text: ` ${words}` }) : null,
      chosen ? make("span", { class: "unseen", text: ` ${say("screen-chosen")}` }) : null);
  }
}

const NUMBERS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

customElements.define("pain-scale", PainScale);
