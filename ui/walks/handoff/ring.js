/** A ring that fills as the parts of a parcel come in, with the count in its middle. */
import { make } from "../../make.js";
import { say } from "../../words.js";
import { shape } from "../../pictures/draw.js";
import { shareOf } from "./reading.js";

const RADIUS = 42;
const ROUND = 2 * Math.PI * RADIUS;

class Ring extends HTMLElement {
  /** Draws `{have, need}`. */
  set progress({ have, need }) {
    const full = shareOf(have, need);
    this.className = "hand-ring";
    const around = (className, dashes) => shape("circle", { class: className, cx: 50, cy: 50, r: RADIUS, transform: "rotate(-90 50 50)", "stroke-dasharray": dashes });
    const text = say("screen-scan-count", { have, need });
    this.setAttribute("role", "progressbar");
    this.setAttribute("aria-valuemin", "0");
    this.setAttribute("aria-valuemax", String(need));
    this.setAttribute("aria-valuenow", String(Math.min(have, need)));
    this.setAttribute("aria-label", say("screen-scan-ring"));
    this.setAttribute("aria-valuetext", text);
    this.replaceChildren(
      shape("svg", { viewBox: "0 0 100 100", "aria-hidden": "true", focusable: "false" },
        around("hand-ring__whole", `${ROUND} 0`),
        around("hand-ring__in", `${ROUND * full} ${ROUND}`)),
      make("b", { class: "hand-ring__count", text }));
  }
}

customElements.define("hand-ring", Ring);
