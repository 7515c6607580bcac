/** Cautions: an icon and a sentence each, never behind a tap. */
import { make } from "../../make.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";

class CautionList extends HTMLElement {
  /** Draws `[{id, text}]`. */
  set cautions(cautions) {
    this.className = "caution-list";
    this.hidden = cautions.length === 0;
    this.replaceChildren(
      make("ul", { class: "caution-list__all", "aria-label": say("screen-cautions") },
        cautions.map(({ id, text }) => make("li", { class: "caution-list__one", "data-caution": id }, icon("care"), make("span", { text })))),
    );
  }
}

customElements.define("caution-list", CautionList);
