/**
 * An advice, all of it: what, why, cautions and when to stop first, then what was
 * done, then everything that explains it. Fires "advice-card-did" with a way (or
 * null) and "advice-card-left".
 */
import { button, fold, heading, link, make, para, section, tell } from "../../make.js";
import { say } from "../../words.js";
import { drawPicture, hasPicture } from "../../pictures/pictures.js";
import { icon } from "../../pictures/icons.js";
import "../caution-list/caution-list.js";
import "../outcome-mark/outcome-mark.js";
import { aboutDrawing } from "../pose-figure/pose-figure.js";
import "../way-card/way-card.js";
import "../who-list/who-list.js";

class AdviceCard extends HTMLElement {
  /**
   * Draws `{card, live, figure}`: an ADVICE_CARD; with `live` it is the page's own
   * advice, has the heading of the page and takes what was done. `figure`, if any,
   * is the reply of that command for the first way, in place of a picture.
   */
  set advice({ card, live = true, figure = null }) {
    this.className = "advice-card";
    this.replaceChildren(...this.#top(card, live, figure), ...(live ? [this.#buttons(card)] : []), ...this.#rest(card, live, figure));
  }

  #top(card, live, figure) {
    const head = live ? heading(card.headline) : make("h2", { text: card.headline });
    return [
      make("outcome-mark", { props: { mark: { outcome: card.outcome } } }),
      head,
      this.#look(card, figure),
      para(card.why, "advice-card__why"),
      make("caution-list", { props: { cautions: card.cautions } }),
      card.outcome === "lift_with_change" ? this.#changes(card) : null,
      card.outcome === "do_not_lift" ? this.#alternatives(card) : null,
      card.stop ? make("p", { class: "advice-card__stop" }, icon("stop"), make("span", { text: card.stop })) : null,
    ].filter(Boolean);
  }

  #look({ picture: given, three_words: words, changes, outcome }, figure) {
    const change = outcome === "lift_with_change" && changes.length > 0 ? changes[0].kind : null;
    const picture = given ?? (hasPicture(change) ? change : null);
    if (!picture && words.length === 0) {
      return null;
    }
    const beside = make("ol", { class: "advice-card__words", "aria-label": say("screen-advice-cues") }, words.map((word) => make("li", { text: word })));
    return make("div", { class: "look note" },
      figure ? make("pose-figure", { props: { drawn: { reply: figure, beside } } }) : [picture ? drawPicture(picture) : null, beside]);
  }

  #buttons(card) {
    const way = card.ways.at(0)?.way ?? null;
    const did = button(say("screen-did-it"), "main", () => this.#tell("did", way), { id: "did" });
    const left = button(say("screen-left-it"), "main", () => this.#tell("left"), { id: "left" });
    const leaveFirst = card.outcome === "do_not_lift" || card.outcome === "refuse";
    did.classList.toggle("button--outline", leaveFirst);
    left.classList.toggle("button--outline", !leaveFirst);
    return make("div", { class: "advice-card__buttons" }, leaveFirst ? [left, did] : [did, left]);
  }

  #rest(card, live, figure) {
    const others = card.ways.slice(1);
    return [
      section(say("screen-advice-more-cautions"), card.more_cautions.length ? make("caution-list", { props: { cautions: card.more_cautions } }) : null),
      section(say("screen-advice-how"), card.ways.length ? this.#way({ ...card.ways[0], plain: card.ways[0].way === card.picture }, false) : null),
      section(say("screen-advice-other-ways"), live && others.length ? link(say("screen-compare-link"), "#/compare", { class: "button", id: "compare" }) : null,
        others.map((way) => this.#way(way, live))),
      card.outcome === "lift_with_change" ? null : this.#changes(card),
      card.outcome === "do_not_lift" ? null : this.#alternatives(card),
      section(say("screen-advice-who"), card.who.length ? make("who-list", { props: { who: card.who } }) : null),
      section(say("screen-advice-why"), this.#reasons(card), this.#ruledOut(card), para(card.limit_text), para(card.sure), para(card.disagree), figure ? aboutDrawing(figure.note) : null),
      para(card.foot, "advice-card__foot"),
      para(say("screen-rule-version", { version: card.rule_version }), "advice-card__foot"),
    ].filter(Boolean);
  }

  #way(way, live) {
    return make("way-card", { props: { way: { ...way, live } }, on: { "way-card-did": (event) => this.#tell("did", event.detail) } });
  }

  #changes({ changes, outcome }) {
    return section(
      say("screen-advice-changes"),
      changes.length > 1 ? para(say("screen-advice-changes-any"), "hint") : null,
      changes.length ? make("ul", { class: "advice-card__list" }, changes.map((change) => this.#change(change, outcome))) : null,
    );
  }

  #change({ kind, text, steps = [], then }, outcome) {
    const several = steps.length > 1;
    return make("li", { "data-id": kind }, icon(outcome === "lift_with_change" ? "change" : "dot"),
      make("div", {},
        several ? para(say("screen-advice-together"), "advice-card__step") : para(text, "advice-card__step"),
        several ? make("ol", { class: "advice-card__steps" }, steps.map((step) => make("li", { text: step }))) : null,
        para(then, "advice-card__step advice-card__note")));
  }

  #alternatives({ alternatives }) {
    return section(say("screen-advice-alternatives"), alternatives.length ? this.#list(alternatives) : null);
  }

  #list(rows) {
    return make("ul", { class: "advice-card__list" }, rows.map(({ id, text }) => make("li", { "data-id": id }, icon("dot"), make("span", { text }))));
  }

  #reasons({ reasons }) {
    return reasons.map(({ id, text, authority_text: authority, sure_text: sure, source_text: source }) =>
      fold(text, { "data-reason": id }, para(authority), para(sure), para(source)));
  }

  #ruledOut({ ruled_out: ruledOut }) {
    return ruledOut.length === 0 ? null : fold(say("screen-advice-ruled-out"), {},
      make("ul", { class: "advice-card__list" }, ruledOut.map(({ way, name, why }) => make("li", { "data-id": way }, icon("dot"), make("span", {}, make("b", { text: name }), ` ${why}`)))));
  }

  #tell(what, detail = null) {
    tell(this, `advice-card-${what}`, detail);
  }
}

customElements.define("advice-card", AdviceCard);
