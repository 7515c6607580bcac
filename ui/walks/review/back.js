/** The look back: pictures first, each with its sentences, and the numbers behind them in a table. */
import { ask } from "../../backend.js";
import { fold, heading, link, make, para, section } from "../../make.js";
import { act } from "../../router.js";
import { say } from "../../words.js";
import { useStyle } from "../style.js";
import { painChart, waysChart, weeksChart } from "./charts.js";

/** How far back, as last chosen. */
let span = "84";

export async function show({ id = null }) {
  await useStyle("./review.css", import.meta.url);
  const found = make("div", {});
  const of = await fill(found, id);
  return {
    title: of ?? say("screen-back-title"),
    back: id === null ? "#/history" : "#/hand/people",
    body: [
      heading(of ?? say("screen-back-title")),
      para(say(id === null ? "screen-back-lead" : "screen-back-theirs")),
      spans((chosen) => act(async () => {
        span = chosen;
        await fill(found, id);
      })),
      found,
      link(say("screen-back-out"), id === null ? "#/out" : `#/person/${id}/out`, { class: "button", id: "take-out" }),
    ],
  };
}

/** Asks and draws; gives whose it is, null for one's own. */
async function fill(found, id) {
  const reply = await ask("look_back", { since_days: span === "all" ? null : Number(span), of: id });
  found.replaceChildren(...reply.passages.map((passage) => section(passage.title,
    PICTURES[passage.id]?.(reply),
    passage.sentences.map((sentence) => para(sentence)),
    TABLES[passage.id] ? fold(say("screen-back-table"), { class: "numbers" }, TABLES[passage.id](reply)) : null)));
  return reply.of;
}

function spans(changed) {
  return make("fieldset", { class: "spans" },
    make("legend", { text: say("screen-back-span") }),
    [["84", "screen-back-12-weeks"], ["365", "screen-back-year"], ["all", "screen-back-all"]].map(([value, words]) =>
      make("label", { class: "pick" },
        make("input", { type: "radio", name: "span", value, props: { checked: span === value }, on: { change: () => changed(value) } }),
        say(words))));
}

function table(heads, rows) {
  return make("table", { class: "numbers__table" },
    make("thead", {}, make("tr", {}, heads.map((text) => make("th", { scope: "col", text })))),
    make("tbody", {}, rows.map(([first, ...rest]) => make("tr", {}, make("th", { scope: "row", text: first }), rest.map((text) => make("td", { text }))))));
}

function painTable({ pain }) {
  const days = new Map();
  for (const [column, { points }] of pain.entries()) {
    for (const { day_text: day, score } of points) {
      days.set(day, days.get(day) ?? pain.map(() => "–"));
      days.get(day)[column] = String(score);
    }
  }
  return table([say("screen-back-day"), ...pain.map(({ title }) => title)], [...days].map(([day, scores]) => [day, ...scores]));
}

const PICTURES = {
  pain: ({ pain }) => painChart(pain),
  weeks: ({ weeks }) => weeksChart(weeks),
  ways: ({ ways }) => waysChart(ways),
};

const TABLES = {
  pain: painTable,
  weeks: ({ weeks }) => table([say("screen-back-week"), say("screen-back-lifted"), say("screen-back-times")],
    weeks.map((week) => [week.from_text, week.lifted_text, week.times_text])),
};
