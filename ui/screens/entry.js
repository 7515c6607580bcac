/** One entry of the history: what it was, how it felt, and the advice as it was given. */
import { ask } from "../backend.js";
import { fold, heading, link, make } from "../make.js";
import { say } from "../words.js";
import "../parts/advice-card/advice-card.js";
import "../parts/check-rows/check-rows.js";

export async function show({ id }) {
  const { entry, rows, advice } = await ask("history_entry", { id: Number(id) });
  const facts = [
    { label: say("screen-entry-when"), text: `${entry.day_text}, ${entry.time_text}` },
    { label: say("screen-entry-done"), text: entry.done_text },
    ...(entry.pain_text ? [{ label: say("screen-entry-pain"), text: entry.pain_text }] : []),
  ];
  return {
    title: entry.title,
    back: "#/history",
    home: true,
    body: [
      heading(entry.title),
      make("check-rows", { props: { rows: facts } }),
      link(say("screen-save-link"), `#/save/${entry.id}`, { class: "button", id: "save" }),
      fold(say("screen-entry-answers"), {}, make("check-rows", { props: { facts: rows } })),
      advice ? fold(say("screen-entry-advice"), {}, make("advice-card", { props: { advice: { card: advice, live: false } } })) : null,
    ],
  };
}
