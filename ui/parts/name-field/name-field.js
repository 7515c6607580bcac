/** One line of typed text. The page around it asks for `text`. */
import { Field } from "../field.js";
import { make } from "../../make.js";

class NameField extends Field {
  /** Draws `{id, label, hint}`. */
  set name({ id, label, hint }) {
    this.className = "name-field field";
    this.replaceChildren(
      make("label", { for: id, text: label }),
      make("p", { class: "hint", id: `${id}-hint`, text: hint }),
      make("p", { class: "problem", id: `${id}-problem`, hidden: true }),
      make("input", { id, type: "text", maxlength: "60", autocomplete: "off", spellcheck: "false", "aria-describedby": `${id}-problem ${id}-hint` }),
    );
  }
}

customElements.define("name-field", NameField);
