/** What a plan would answer on a good, a usual or a bad day. Which days there are, and their answers, come from Rust. */
import { ask } from "../../backend.js";
import { make, para } from "../../make.js";
import { icon } from "../../pictures/icons.js";
import { act } from "../../router.js";
import { say } from "../../words.js";
import "../../parts/check-rows/check-rows.js";

class PlanPreview extends HTMLElement {
  #plan = null;

  /** Draws `{plan, preview}`: a plan's id, and the reply of `plan_preview`. */
  set tried({ plan, preview }) {
    this.#plan = plan;
    this.#draw(preview);
  }

  #draw({ day, days, loads }) {
    this.replaceChildren(
      para(say("screen-plans-day")),
      make("div", { class: "plan-days", role: "group", "aria-label": say("screen-plans-day") }, days.map((one) => this.#button(one))),
      para(day, "hint"),
      make("check-rows", { id: "preview", props: { facts: loads.map(({ load, answer, why }) => ({ label: load, text: `${answer}. ${why}` })) } }));
  }

  #button({ id, text, shown }) {
    const show = () => act(async () => {
      this.#draw(await ask("plan_preview", { id: this.#plan, day: id }));
      this.querySelector(`[data-day=${id}]`).focus();
    });
    return make("button", { type: "button", class: "plan-day", "data-day": id, "aria-pressed": String(shown), on: { click: show } },
      shown ? icon("tick") : null, text);
  }
}

customElements.define("plan-preview", PlanPreview);
