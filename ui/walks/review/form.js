/** One form of the history: what leaves is told, then it is made, then the person takes it. */
import { ask } from "../../backend.js";
import { announce } from "../../frame.js";
import { button, heading, make, para, section } from "../../make.js";
import { act } from "../../router.js";
import { say } from "../../words.js";
import { useStyle } from "../style.js";

export async function show({ form }) {
  const [summary] = await Promise.all([ask("report_summary", { form }), useStyle("./review.css", import.meta.url)]);
  const made = make("div", {});
  const making = button(say("screen-out-make"), "main", () => act(async () => {
    fill(made, await ask("report_make", { form }));
    making.remove();
    made.querySelector("h2").focus();
  }), { id: "make" });
  return {
    title: say("screen-out-title"),
    back: "#/out",
    body: [
      heading(say(TITLES[form])),
      section(say("screen-out-leaves"), list(summary.leaves)),
      section(say("screen-out-stays"), list(summary.stays)),
      para(summary.open, "note"),
      making,
      made,
    ],
  };
}

function list(lines) {
  return make("ul", {}, lines.map((text) => make("li", { text })));
}

function fill(made, { text, name }) {
  const field = make("textarea", { class: "made", id: "made", readonly: true, rows: 10, "aria-label": name, props: { value: text } });
  const copy = async () => {
    field.select();
    try {
      await navigator.clipboard.writeText(text);
      announce(say("screen-out-copied"));
      told.textContent = say("screen-out-copied");
    } catch {
      told.textContent = say("screen-out-copy-failed");
    }
  };
  const told = make("p", { class: "hint" });
  made.replaceChildren(make("h2", { tabindex: "-1", text: say("screen-out-made") }), para(name, "hint"), field, button(say("screen-out-copy"), "second", copy, { id: "copy" }), told);
}

const TITLES = { note: "screen-out-note", csv: "screen-out-csv", fhir: "screen-out-fhir" };
