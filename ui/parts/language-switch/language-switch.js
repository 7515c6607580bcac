/** One button for each language. Fires "language-switch-pick" with its id. */
import { make, tell } from "../../make.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";

class LanguageSwitch extends HTMLElement {
  /** Draws `{languages: [{id, name}], now: id}`. */
  set choice({ languages, now }) {
    this.className = "language-switch";
    this.replaceChildren(
      make("div", { class: "language-switch__all", role: "group", "aria-label": say("screen-language") },
        languages.map((language) => this.#one(language, language.id === now))),
    );
  }

  #one({ id, name }, now) {
    const pick = () => tell(this, "language-switch-pick", id);
    return make("button", { type: "button", class: "language-switch__one", lang: id, "aria-pressed": String(now), "data-language": id, on: { click: pick } },
      now ? icon("tick") : null, name);
  }
}

customElements.define("language-switch", LanguageSwitch);
