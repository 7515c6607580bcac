/** Two ways side by side; of more, buttons say which. Fires "compare-ways-pick" with the last chosen and the new one. */
import { button, make, para, tell } from "../../make.js";
import { say } from "../../words.js";
import { drawPicture } from "../../pictures/pictures.js";
import "../pose-figure/pose-figure.js";

class CompareWays extends HTMLElement {
  /** Draws `{ways, shown}`: all `{way, name}` to choose from, and the two `{way, name, reply}` to show. */
  set both({ ways, shown }) {
    const choice = ({ way, name }) => {
      const chosen = shown.some((one) => one.way === way);
      const pick = () => chosen || tell(this, "compare-ways-pick", [shown[1].way, way]);
      return button(name, "second", pick, { "data-way": way, "data-chosen": chosen, "aria-pressed": String(chosen) });
    };
    this.className = "compare-ways";
    this.replaceChildren(
      ways.length > 2 ? make("fieldset", {}, make("legend", { text: say("screen-compare-choose") }), make("div", { class: "compare-ways__all" }, ways.map(choice))) : "",
      make("div", { class: "compare-ways__all" }, shown.map(({ way, name, reply }) => make("section", { class: "note", "data-shown": way },
        make("h2", { text: name }),
        reply ? make("pose-figure", { props: { drawn: { reply } } }) : [drawPicture(way), para(say("screen-compare-none"))]))),
    );
  }
}

customElements.define("compare-ways", CompareWays);
