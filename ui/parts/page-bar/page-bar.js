/**
 * The bar at the top: Back, where one is, Home. Fires "page-bar-back" with the
 * address to go back to.
 */
import { make, tell } from "../../make.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";

class PageBar extends HTMLElement {
  /** Draws the bar for a screen: `{back, bar, home}`. */
  set page({ back = null, bar = null, home = false }) {
    this.className = "page-bar";
    this.replaceChildren(
      make("nav", { class: "page-bar__row", "aria-label": say("screen-bar-label") },
        back ? this.#backLink(back) : make("span", { class: "page-bar__name", text: say("screen-app-name") }),
        bar ? make("span", { class: "page-bar__where", text: bar }) : null,
        home ? make("a", { class: "page-bar__link", href: "#/home" }, icon("home"), say("screen-home")) : null,
      ),
    );
  }

  #backLink(back) {
    const follow = (event) => {
      event.preventDefault();
      tell(this, "page-bar-back", back);
    };
    return make("a", { class: "page-bar__link", href: back, id: "back", on: { click: follow } }, icon("back"), say("screen-back"));
  }
}

customElements.define("page-bar", PageBar);
