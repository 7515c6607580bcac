/** What left this phone: what, when, how and to whom; never what was in it. */
import { ask } from "../../backend.js";
import { button, fold, heading, make, para } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { act, cameFrom, redraw } from "../../router.js";
import { session } from "../../session.js";
import { say } from "../../words.js";
import { useStyle } from "../style.js";

export async function show() {
  const [{ entries, more }] = await Promise.all([ask("departures"), useStyle("./what-left.css", import.meta.url)]);
  const list = make("ul", { class: "gone" }, entries.map(entry));
  return {
    title: say("screen-gone-title"),
    back: ["#/hand", "#/shift"].find(cameFrom) ?? "#/settings",
    home: true,
    body: [
      heading(say("screen-gone-title")),
      takeNotice(),
      entries.length === 0 ? para(say("screen-gone-none")) : para(say("screen-gone-lead")),
      para(say("screen-gone-stays"), "hint"),
      entries.length === 0 ? null : [list, older(list, entries, more), clear()],
    ].flat(),
  };
}

function entry({ when, what, parts, how, to }) {
  return make("li", { class: "gone__entry" },
    para(when, "gone__when"),
    make("h2", { class: "gone__what", tabindex: "-1", text: what }),
    para(parts.join(" · ")),
    para(how),
    para(to));
}

/** Older entries, a page at a time, put under those that are there. */
function older(list, entries, more) {
  let last = entries.at(-1).id;
  const fetchMore = () => act(async () => {
    const next = await ask("departures", { before: last });
    const added = next.entries.map(entry);
    list.append(...added);
    last = next.entries.at(-1)?.id ?? last;
    added[0]?.querySelector("h2").focus();
    if (!next.more) {
      again.remove();
    }
  });
  const again = button(say("screen-gone-more"), "second", fetchMore, { id: "more" });
  return more ? again : null;
}

function clear() {
  const erase = () => act(async () => {
    await ask("departures_clear");
    session.notice = { text: say("screen-gone-cleared"), undo: null };
    await redraw();
  });
  return fold(say("screen-gone-clear"), { id: "clear-fold" },
    para(say("screen-gone-clear-what")),
    button(say("screen-gone-clear-yes"), "second", erase, { id: "clear" }));
}
