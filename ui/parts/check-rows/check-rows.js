/** Answers as rows, each with a way to change it. Fires "check-rows-change" with the question's id. */
import { make, tell } from "../../make.js";
import { say } from "../../words.js";

class CheckRows extends HTMLElement {
  /** Draws `[{question, label, text}]`; rows without a question cannot be changed. */
  set rows(rows) {
    this.className = "check-rows";
    this.replaceChildren(make("dl", { class: "check-rows__all" }, rows.map((row) => this.#row(row))));
  }

  /** Draws rows that cannot be changed here. */
  set facts(rows) {
    this.rows = rows.map(({ label, text }) => ({ label, text }));
  }

  #row({ question, label, text }) {
    const change = () => tell(this, "check-rows-change", question);
    return make("div", { class: "check-rows__row" },
      make("dt", { text: label }),
      make("dd", { class: "check-rows__text", text }),
      question
        ? make("dd", { class: "check-rows__act" },
            make("button", { type: "button", class: "check-rows__change", "data-change": question, on: { click: change } },
              say("screen-change"), make("span", { class: "unseen", text: ` ${label}` })))
        : null);
  }
}

customElements.define("check-rows", CheckRows);
