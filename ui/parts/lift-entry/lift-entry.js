/** One entry of the history, as a link to it. */
import { make } from "../../make.js";
import "../outcome-mark/outcome-mark.js";

class LiftEntry extends HTMLElement {
  /** Draws an ENTRY. */
  set entry(entry) {
    this.className = "lift-entry";
    this.replaceChildren(
      make("a", { class: "lift-entry__link", href: `#/history/${entry.id}`, "data-entry": entry.id },
        make("span", { class: "lift-entry__when", text: `${entry.day_text}, ${entry.time_text}` }),
        make("span", { class: "lift-entry__title", text: entry.title }),
        make("span", { class: "lift-entry__done", text: entry.done_text }),
        entry.pain_text ? make("span", { class: "lift-entry__pain", text: entry.pain_text }) : null,
        make("outcome-mark", { props: { mark: { outcome: entry.outcome, text: entry.outcome_text } } })),
    );
  }
}

customElements.define("lift-entry", LiftEntry);
