/** What leaves is told, then it is made, then the person takes it: for a history as for a plan on paper. */
import { ask, saveReport } from "../../backend.js";
import { announce } from "../../frame.js";
import { button, heading, make, para, section } from "../../make.js";
import { act } from "../../router.js";
import { say } from "../../words.js";
import { useStyle } from "../style.js";

/** The page that makes what `report_make` gives for the fields `asked`. */
export async function makingPage({ asked, title, heading: text, back }) {
  const [summary] = await Promise.all([ask("report_summary", asked), useStyle("./review.css", import.meta.url)]);
  const made = make("div", {});
  const making = button(say("screen-out-make"), "main", () => act(async () => {
    fill(made, asked, await ask("report_make", asked));
    making.remove();
    made.querySelector("h2").focus();
  }), { id: "make" });
  return {
    title,
    back,
    body: [
      heading(text),
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

function fill(made, asked, file) {
  const told = make("p", { class: "hint", id: "told" });
  const tell = (text) => {
    told.textContent = text;
    announce(text);
  };
  const save = () => act(async () => {
    const saved = await saveReport(asked);
    if (saved) {
      tell(say("screen-out-saved-at", { path: saved.path }));
    } else {
      download(await ask("report_make", { ...asked, how: "saved" }));
      tell(say("screen-out-saved"));
    }
  });
  made.replaceChildren(...[
    make("h2", { tabindex: "-1", text: say("screen-out-made") }),
    para(file.name, "hint"),
    file.text === null ? null : copyable(file, tell, () => ask("report_make", { ...asked, how: "copied" })),
    button(say("screen-out-save"), "second", save, { id: "save" }),
    told,
  ].flat().filter(Boolean));
}

/** `note` writes down that it was copied. */
function copyable({ text, name }, tell, note) {
  const field = make("textarea", { class: "made", id: "made", readonly: true, rows: 10, "aria-label": name, props: { value: text } });
  const copy = async () => {
    field.select();
    try {
      await navigator.clipboard.writeText(text);
    } catch {
      tell(say("screen-out-copy-failed"));
      return;
    }
    await act(async () => {
      await note();
      tell(say("screen-out-copied"));
    });
  };
  return [field, button(say("screen-out-copy"), "second", copy, { id: "copy" })];
}

/** A browser saves files itself. */
function download({ name, mime, base64 }) {
  const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
  const href = URL.createObjectURL(new Blob([bytes], { type: mime }));
  make("a", { href, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(href), 60_000);
}
