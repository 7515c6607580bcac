/**
 * What is wrong on this page, at its top. Takes the focus when something is, and
 * leads to the field. Empty and hidden otherwise.
 */
import { make } from "../../make.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";

class ErrorSummary extends HTMLElement {
  /** Shows these problems: `[{text, field: element id or null}]`. */
  set problems(problems) {
    this.className = "error-summary";
    this.hidden = problems.length === 0;
    if (this.hidden) {
      this.replaceChildren();
      return;
    }
    const title = make("h2", { id: "error-title", class: "error-summary__title" }, icon("stop"), say("screen-error-title"));
    const list = make("ul", { class: "error-summary__list" }, problems.map((problem) => make("li", {}, this.#line(problem))));
    const box = make("div", { role: "alert", tabindex: "-1", "aria-labelledby": "error-title" }, title, list);
    this.replaceChildren(box);
    box.focus();
    window.scrollTo(0, 0);
  }

  connectedCallback() {
    this.hidden = this.childElementCount === 0;
  }

  #line({ text, field }) {
    if (!field) {
      return make("span", { text });
    }
    const leadThere = (event) => {
      event.preventDefault();
      const target = document.getElementById(field);
      (target?.closest("fieldset")?.querySelector("legend") ?? target)?.scrollIntoView();
      target?.focus({ preventScroll: true });
    };
    return make("a", { href: `#${field}`, text, on: { click: leadThere } });
  }
}

customElements.define("error-summary", ErrorSummary);
