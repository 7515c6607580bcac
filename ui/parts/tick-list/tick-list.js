/**
 * Boxes of which any may be ticked. The page around it has the buttons and asks
 * for `ticked`.
 */
import { make } from "../../make.js";
import { drawPicture } from "../../pictures/pictures.js";

class TickList extends HTMLElement {
  /** Draws `{options: [{id, label, note, picture}], ticked: [id]}`. */
  set choices({ options, ticked = [] }) {
    this.className = "tick-list field";
    this.replaceChildren(
      make("p", { class: "problem", id: "tick-problem", hidden: true }),
      ...options.map((option, at) => this.#row(option, at, ticked.includes(option.id))),
    );
  }

  /** The ids of the ticked boxes, in the order shown. */
  get ticked() {
    return [...this.querySelectorAll("input:checked")].map((box) => box.value);
  }

  /** Shows a problem above the boxes, or takes it away with null. */
  set problem(text) {
    const line = this.querySelector(".problem");
    line.textContent = text ?? "";
    line.hidden = !text;
  }

  #row({ id, label, note, picture }, at, checked) {
    const box = make("input", { type: "checkbox", id: `tick-${at}`, value: id, class: "tick-list__box", props: { checked }, "aria-describedby": at === 0 ? "tick-problem" : null });
    return make("label", { class: "tick-list__row", for: box.id }, box,
      picture ? drawPicture(picture) : null,
      make("span", { class: "tick-list__label" }, label, note ? make("span", { class: "tick-list__note", text: note }) : null));
  }
}

customElements.define("tick-list", TickList);
