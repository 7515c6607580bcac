/** A passphrase field that can be shown while typing. */
import { make } from "../../make.js";
import { Field } from "../field.js";
import { say } from "../../words.js";

class PassField extends Field {
  /** Draws `{id, label, hint, fresh}`; `fresh` is true where a new passphrase is made. */
  set pass({ id, label, hint = null, fresh = false }) {
    this.className = "pass-field field";
    const described = [`${id}-problem`, hint ? `${id}-hint` : null].filter(Boolean).join(" ");
    this.replaceChildren(
      make("label", { for: id, text: label }),
      ...(hint ? [make("p", { class: "hint", id: `${id}-hint`, text: hint })] : []),
      make("p", { class: "problem", id: `${id}-problem`, hidden: true }),
      make("div", { class: "pass-field__row" },
        make("input", { id, class: "pass-field__input", type: "password", autocomplete: fresh ? "new-password" : "current-password",
          autocapitalize: "off", autocorrect: "off", spellcheck: "false", "aria-describedby": described }),
        make("button", { type: "button", class: "pass-field__show", "aria-pressed": "false", "aria-controls": id, text: say("screen-pass-show"),
          on: { click: (event) => this.#turn(event.currentTarget) } })),
    );
  }

  #turn(button) {
    const input = this.querySelector("input");
    const show = input.type === "password";
    input.type = show ? "text" : "password";
    button.setAttribute("aria-pressed", String(show));
  }
}

customElements.define("pass-field", PassField);
