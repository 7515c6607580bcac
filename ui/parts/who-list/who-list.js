/** Whom to call or ask. */
import { make } from "../../make.js";
import { icon } from "../../pictures/icons.js";

class WhoList extends HTMLElement {
  /** Draws `[{id, text}]`. */
  set who(who) {
    this.className = "who-list";
    this.replaceChildren(
      make("ul", { class: "who-list__all" },
        who.map(({ id, text }) => make("li", { class: "who-list__one", "data-who": id }, icon(ICONS[id] ?? "person"), make("span", { text })))),
    );
  }
}

const ICONS = { emergency: "phone", emergency_number: "phone", same_day: "phone", clinician_today: "phone", nurse: "phone", nurse_line: "phone" };

customElements.define("who-list", WhoList);
