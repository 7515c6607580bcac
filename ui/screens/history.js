/** What was lifted and what was left, newest first, with filters. */
import { ask } from "../backend.js";
import { button, fold, heading, link, make, para } from "../make.js";
import { act } from "../router.js";
import { announce } from "../frame.js";
import { say } from "../words.js";
import "../parts/lift-entry/lift-entry.js";

/** The filters as last set; kept so that Back from an entry finds the same list. */
const filter = { show: "all", way: null, since: null };

export async function show() {
  const list = make("div", { class: "stack", id: "entries" });
  const more = make("div", { class: "section" });
  await fill(list, more, null);
  return {
    title: say("screen-history-title"),
    back: "#/home",
    body: [heading(say("screen-history-title")), filters(() => act(() => fill(list, more, null))), link(say("screen-back-title"), "#/back", { class: "button", id: "look-back" }), list, more],
  };
}

async function fill(list, more, before) {
  const reply = await ask("history", { ...filter, before, limit: PAGE_SIZE });
  const entries = reply.entries.map((entry) => make("lift-entry", { props: { entry } }));
  if (before === null) {
    list.replaceChildren();
  }
  list.append(...entries);
  const count = list.childElementCount;
  if (count === 0) {
    list.append(para(say("screen-history-none"), "note"));
  }
  announce(count === 0 ? say("screen-history-none") : say("screen-history-count", { count }));
  const last = reply.entries.at(-1)?.id ?? null;
  more.replaceChildren(...(reply.more && last !== null
    ? [button(say("screen-history-more"), "second", () => act(() => fill(list, more, last)), { id: "more" })]
    : []), ...(reply.practised ? [link(say("screen-plan-log"), "#/plan/log", { class: "button", id: "practised" })] : []));
}

function filters(changed) {
  const set = (name, value) => {
    filter[name] = value || null;
    filter.show ??= "all";
    changed();
  };
  const narrowed = filter.show !== "all" || filter.way || filter.since;
  return fold(say("screen-filter"), { class: "filters", id: "filters", open: Boolean(narrowed) },
    make("fieldset", { class: "filters__group" },
      make("legend", { text: say("screen-filter-show") }),
      SHOWS.map(([id, words]) => make("label", { class: "pick" },
        make("input", { type: "radio", name: "show", value: id, props: { checked: filter.show === id }, on: { change: () => set("show", id) } }),
        say(words)))),
    make("label", { class: "filters__label", for: "filter-way", text: say("screen-filter-way") }),
    make("select", { id: "filter-way", on: { change: (event) => set("way", event.target.value) } },
      WAYS.map(([id, words]) => make("option", { value: id, text: say(words), props: { selected: (filter.way ?? "") === id } }))),
    make("label", { class: "filters__label", for: "filter-since", text: say("screen-filter-since") }),
    make("input", { type: "date", id: "filter-since", props: { value: filter.since ?? "" }, on: { change: (event) => set("since", event.target.value) } }),
  );
}

/** Entries asked for at a time. */
const PAGE_SIZE = 30;

const SHOWS = [["all", "screen-filter-all"], ["done", "screen-filter-done"], ["left", "screen-filter-left"]];

const WAYS = [
  ["", "screen-filter-any-way"],
  ["hinge", "screen-way-hinge"],
  ["squat", "screen-way-squat"],
  ["lunge", "screen-way-lunge"],
  ["free_bend", "screen-way-free-bend"],
  ["golfer", "screen-way-golfer"],
  ["upright", "screen-way-upright"],
];
