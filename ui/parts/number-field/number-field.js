/** One typed number; its label names the unit. The page around it asks for `text`. */
import { Field } from "../field.js";
import { make } from "../../make.js";

class NumberField extends Field {
  /** Draws `{label, text, described}`; `described` is the id of the hint or null. */
  set number({ label, text = "", described = null }) {
    this.className = "number-field field";
    this.replaceChildren(
      make("label", { for: "number", text: label }),
      make("p", { class: "problem", id: "number-problem", hidden: true }),
      make("input", { id: "number", class: "number-field__input", type: "text", inputmode: "decimal", autocomplete: "off", spellcheck: "false",
        "aria-describedby": ["number-problem", described].filter(Boolean).join(" "), props: { value: text } }),
    );
  }
}

customElements.define("number-field", NumberField);
