/** The shift: what is handed over is shown first; afterwards it may be erased, proofs only when asked for. */
import { ask } from "../../backend.js";
import { announce } from "../../frame.js";
import { button, fold, heading, make, para, section } from "../../make.js";
import { act, redraw } from "../../router.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";
import { canShare, copy, note, ready, share, textBox } from "./parts.js";

export async function show() {
  await ready();
  const { open, last } = await ask("shift");
  return {
    title: say("screen-care-shift"),
    back: "#/people",
    home: true,
    body: [
      heading(say("screen-care-shift")),
      open ? ofOpen(open) : para(say("screen-care-shift-none")),
      last ? ofLast(last) : null,
      make("a", { href: "#/what-left", class: "pages__link", id: "what-left" }, icon("on"), say("screen-gone-title")),
    ].flat(),
  };
}

function ofOpen(shift) {
  const status = make("p", { class: "hint", id: "copied" });
  const byCopy = async () => {
    const copied = await copy(shift.text);
    status.textContent = say(copied ? "screen-care-copied" : "screen-care-copy-failed");
    announce(status.textContent);
    if (copied) {
      await note("shift", "copied");
    }
  };
  const byShare = async () => {
    if (await share(shift.text)) {
      await note("shift", "shared");
    }
  };
  const hand = () => act(async () => {
    await ask("shift_hand_over");
    await redraw();
  });
  return [
    section(shift.title, entries(shift)),
    para(say("screen-care-shift-what")),
    textBox(shift.text),
    make("div", { class: "care-buttons care-buttons--two" },
      button(say("screen-care-copy"), "main", byCopy, { id: "copy" }),
      canShare() ? button(say("screen-care-share"), "second", byShare, { id: "share" }) : null),
    status,
    make("div", { class: "care-buttons" }, button(say("screen-care-shift-hand"), "second", hand, { id: "hand-over" })),
  ];
}

function ofLast(shift) {
  const erase = (proofs) => () => act(async () => {
    await ask("shift_erase", { id: shift.id, proofs });
    await redraw();
  });
  return section(`${say("screen-care-shift-last")}: ${shift.title}`,
    entries(shift),
    para(shift.erased_text, "hint"),
    shift.plain > 0 ? button(say("screen-care-shift-erase"), "second", erase(false), { id: "erase" }) : null,
    shift.proofs > 0 ? [para(say("screen-care-shift-proof")),
      fold(say("screen-care-shift-erase-all"), {}, para(say("screen-care-shift-sure")), button(say("screen-care-shift-erase-all"), "second", erase(true), { id: "erase-all" }))] : null);
}

function entries(shift) {
  return shift.entries.length === 0 ? null : make("ul", { class: "care-list" }, shift.entries.map(({ id, text, proof }) => make("li", { "data-entry": id },
    icon(proof ? "care" : "dot"), make("span", {}, proof ? make("b", { text: `${say("screen-care-proof")}: ` }) : null, text))));
}
