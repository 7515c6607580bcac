/** One way to lift: picture, name, cues, why. Fires "way-card-did" with its id. */
import { button, make, para, tell } from "../../make.js";
import { say } from "../../words.js";
import { drawPicture } from "../../pictures/pictures.js";

class WayCard extends HTMLElement {
  /** Draws `{way, name, gloss, cues, why, live, plain}`; `live` gives it a button, `plain` no picture. */
  set way({ way, name, gloss, cues, why, live, plain = false }) {
    this.className = "way-card note";
    const did = () => tell(this, "way-card-did", way);
    this.replaceChildren(
      make("h3", { class: "way-card__name", text: name }),
      make("div", { class: "look" },
        plain ? null : drawPicture(way),
        para(gloss, "way-card__gloss")),
      make("ul", { class: "way-card__cues" }, cues.map((cue) => make("li", { text: cue }))),
      ...[para(why, "way-card__why"), live ? button(say("screen-did-it-this-way"), "second", did, { "data-way": way }) : null].filter(Boolean),
    );
  }
}

customElements.define("way-card", WayCard);
