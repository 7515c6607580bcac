/** What all fields to type in have in common. */
export class Field extends HTMLElement {
  /** What is typed, as it stands. */
  get text() {
    return this.querySelector("input").value;
  }

  /** Empties the field. */
  clear() {
    this.querySelector("input").value = "";
  }

  /** Shows a problem at the field, or takes it away with null. */
  set problem(text) {
    const line = this.querySelector(".problem");
    line.textContent = text ?? "";
    line.hidden = !text;
    this.querySelector("input").setAttribute("aria-invalid", String(Boolean(text)));
  }
}
