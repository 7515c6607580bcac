/** One line of a plan. Its kind decides what takes the new value; Rust decides whether it fits the others. */
import { ask } from "../../backend.js";
import { actions, button, group, heading, make, para, submit } from "../../make.js";
import { act, goBack, swap } from "../../router.js";
import { showProblems } from "../../frame.js";
import { readNumber, writeNumber } from "../../flow/answer.js";
import { session } from "../../session.js";
import { say } from "../../words.js";
import { useLook } from "../handoff/look.js";
import { Field } from "../../parts/field.js";
import "../../parts/choice-list/choice-list.js";
import "../../parts/number-field/number-field.js";
import "../../parts/tick-list/tick-list.js";

export async function show({ id, field: name }) {
  const [plan] = await Promise.all([ask("plan_edit", { id: Number(id) }), useLook()]);
  const field = plan.sections.flatMap(({ fields }) => fields).find((one) => one.id === name);
  if (!field || !KINDS[field.kind]) {
    swap(`#/plans/${id}`);
    return null;
  }
  const set = (value, at = null) => act(async () => {
    await ask("plan_set", { id: Number(id), field: name, value });
    goBack(`#/plans/${id}`);
  }, { field: at });
  return { title: field.label, back: `#/plans/${id}`, bar: plan.title, body: [KINDS[field.kind](field, set)] };
}

const KINDS = {
  choice: (field, set) => pick(field, (field.choices ?? []).map(({ id, text }) => ({ id, label: text })), field.choices?.find(({ chosen }) => chosen)?.id, set),

  yes_no: (field, set) => pick(field,
    [{ id: "yes", label: say("screen-plans-yes") }, { id: "no", label: say("screen-plans-no") }],
    field.value === true ? "yes" : "no", (id) => set(id === "yes")),

  ticks(field, set) {
    const options = field.choices.map(({ id, text }) => ({ id, label: text }));
    const list = make("tick-list", { props: { choices: { options, ticked: field.choices.filter(({ chosen }) => chosen).map(({ id }) => id) } } });
    return form(field, list, () => set(list.ticked, "tick-0"), set);
  },

  kg: number,
  count: number,

  text(field, set) {
    const box = make("plain-field", { props: { plain: { label: field.label, value: field.value ?? "", kind: "text", longest: field.max_length } } });
    return form(field, box, () => set(box.text.trim(), "plain"), set);
  },

  date(field, set) {
    const box = make("plain-field", { props: { plain: { label: field.label, value: field.value ?? "", kind: "date" } } });
    return form(field, box, () => set(box.text, "plain"), set);
  },
};

function pick(field, options, chosen, set) {
  return group(field.label,
    make("choice-list", { props: { choice: { options, chosen } }, on: { "choice-list-pick": (event) => set(event.detail) } }),
    none(field, set));
}

function number(field, set) {
  const label = field.unit ? say("screen-plans-in", { unit: field.unit }) : say("screen-plans-number");
  const text = typeof field.value === "number" ? writeNumber(field.value, session.language) : "";
  const box = make("number-field", { props: { number: { label, text } } });
  return form(field, box, () => {
    const value = readNumber(box.text);
    if (value === null) {
      showProblems([{ text: say("screen-number-problem"), field: "number" }]);
    } else {
      set(value, "number");
    }
  }, set);
}

function form(field, box, settle, set) {
  const send = (event) => {
    event.preventDefault();
    settle();
  };
  return make("form", { class: "form", novalidate: true, on: { submit: send } },
    heading(field.label), para(field.hint, "hint"), range(field), box,
    actions(none(field, set), submit(say("screen-plans-set"), "continue")));
}

/** What may be typed, where Rust says so. */
function range({ min, max }) {
  const write = (number) => writeNumber(number, session.language);
  return min === undefined || max === undefined ? null : para(say("screen-plans-range", { min: write(min), max: write(max) }), "hint");
}

/** Some lines may be left out. */
function none(field, set) {
  return field.optional ? button(say("screen-plans-without"), "second", () => set(null), { id: "none" }) : null;
}

/** A longer text, or a day. */
class PlainField extends Field {
  set plain({ label, value, kind, longest }) {
    this.className = "name-field field";
    const given = { id: "plain", autocomplete: "off", spellcheck: "false", "aria-describedby": "plain-problem" };
    this.replaceChildren(
      make("label", { for: "plain", text: label, class: "unseen" }),
      make("p", { class: "problem", id: "plain-problem", hidden: true }),
      kind === "text"
        ? make("textarea", { ...given, class: "plain-text", rows: "4", maxlength: longest, props: { value } })
        : make("input", { ...given, type: kind, props: { value } }));
  }

  get text() {
    return this.querySelector("#plain").value;
  }

  set problem(text) {
    const line = this.querySelector(".problem");
    line.textContent = text ?? "";
    line.hidden = !text;
    this.querySelector("#plain").setAttribute("aria-invalid", String(Boolean(text)));
  }
}

customElements.define("plain-field", PlainField);
