/** The outcome in words, with an icon of its own shape. */
import { make } from "../../make.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";

class OutcomeMark extends HTMLElement {
  /** Draws the mark of an outcome such as "lift"; `text` replaces our own words. */
  set mark({ outcome, text = null }) {
    const known = KNOWN[outcome] ?? KNOWN.refuse;
    this.className = `outcome-mark outcome-mark--${known.tone}`;
    this.replaceChildren(icon(known.icon), make("span", { text: text ?? say(known.words) }));
  }
}

const KNOWN = {
  lift: { icon: "lift", words: "screen-outcome-lift", tone: "go" },
  lift_with_change: { icon: "change", words: "screen-outcome-lift-with-change", tone: "care" },
  do_not_lift: { icon: "leave", words: "screen-outcome-do-not-lift", tone: "stop" },
  seek_care: { icon: "care", words: "screen-outcome-seek-care", tone: "stop" },
  refuse: { icon: "person", words: "screen-outcome-refuse", tone: "care" },
};

customElements.define("outcome-mark", OutcomeMark);
