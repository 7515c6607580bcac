/**
 * Options of which one tap picks one: picture tiles, or rows where there are no
 * pictures. Fires "choice-list-pick" with the id.
 */
import { make, tell } from "../../make.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";
import { drawPicture } from "../../pictures/pictures.js";

class ChoiceList extends HTMLElement {
  /** Draws `{options: [{id, label, note, picture}], chosen: id|null}`. */
  set choice({ options, chosen = null }) {
    const pictures = options.filter((option) => option.picture).length;
    const tiles = pictures > 0;
    this.className = `choice-list choice-list--${tiles ? `tiles choice-list--${sizeFor(pictures)}` : "rows"}`;
    this.replaceChildren(
      make("ul", { class: "choice-list__all" },
        options.map((option) => make("li", { class: tiles && !option.picture ? "choice-list__wide" : null }, this.#option(option, option.id === chosen)))),
    );
  }

  #option({ id, label, note, picture }, chosen) {
    const pick = () => tell(this, "choice-list-pick", id);
    return make("button", { type: "button", class: "choice-list__option", "data-answer": id, "data-chosen": chosen, on: { click: pick } },
      picture ? drawPicture(picture) : null,
      make("span", { class: "choice-list__words" },
        make("span", { class: "choice-list__label", text: label }),
        note ? make("span", { class: "choice-list__note", text: note }) : null),
      chosen ? make("span", { class: "choice-list__chosen" }, icon("tick"), make("span", { class: "unseen", text: say("screen-chosen") })) : null,
    );
  }
}

/** How large the tiles are, so that all fit one phone screen if they can. */
function sizeFor(pictures) {
  return ["few", "some", "several", "many"].find((_, at) => pictures <= [3, 6, 8, Infinity][at]);
}

customElements.define("choice-list", ChoiceList);
