/** One typed number with its unit. The page around it asks for `text`. */
import { Field } from "../field.js";
import { make } from "../../make.js";

class NumberField extends Field {
  /** Draws `{label, unit, text, described}`; `described` is the id of the hint or null. */
  set number({ label, unit, text = "", described = null }) {
    this.className = "number-field field";
    this.replaceChildren(
      make("label", { class: "number-field__label", for: "number", text: label }),
      make("p", { class: "problem", id: "number-problem", hidden: true }),
      make("div", { class: "number-field__row" },
        make("input", { id: "number", class: "number-field__input", type: "text", inputmode: "decimal", autocomplete: "off", spellcheck: "false",
          "aria-describedby": ["number-problem", described].filter(Boolean).join(" "), props: { value: text } }),
        unit ? make("span", { class: "number-field__unit", text: unit }) : null),
    );
  }
}

customElements.define("number-field", NumberField);
