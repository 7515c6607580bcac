/**
 * A warning sign: whom to call, first and large. Has no word about lifting.
 * Fires "emergency-card-read".
 */
import { actions, button, heading, link, make, para, tell } from "../../make.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";
import "../caution-list/caution-list.js";
import "../who-list/who-list.js";

class EmergencyCard extends HTMLElement {
  /** Draws an ADVICE_CARD whose outcome is "seek_care". */
  set card({ urgency, headline, why, who, cautions, foot }) {
    const emergency = urgency === "emergency";
    const read = () => tell(this, "emergency-card-read");
    this.className = `emergency-card emergency-card--${emergency ? "now" : "today"}`;
    this.replaceChildren(
      make("div", { class: "emergency-card__sign" }, icon(emergency ? "phone" : "care")),
      heading(headline),
      make("who-list", { props: { who } }),
      ...[para(why, "emergency-card__why")].filter(Boolean),
      make("caution-list", { props: { cautions } }),
      actions(
        link(say("screen-signs-link"), "#/signs", { class: "button" }),
        button(say("screen-read-it"), "main", read, { id: "read" })),
      para(foot, "emergency-card__foot"),
    );
  }
}

customElements.define("emergency-card", EmergencyCard);
