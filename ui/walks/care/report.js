/** The text for the office: shown in full, and leaving only by the user's own tap. */
import { ask } from "../../backend.js";
import { announce } from "../../frame.js";
import { button, heading, make, para } from "../../make.js";
import { act, swap } from "../../router.js";
import { session } from "../../session.js";
import { say } from "../../words.js";
import { canShare, copy, note, ready, share, textBox, whoIsIt } from "./parts.js";

export async function show() {
  await ready();
  const report = await ask("move_report");
  let told = null;
  const status = make("p", { class: "hint", id: "copied" });
  const tell = (text) => {
    status.textContent = text;
    announce(text);
  };
  const keep = (how) => () => act(async () => {
    await ask("move_keep", { result: "refused", told: how ?? told });
    session.notice = { text: say("screen-care-kept"), undo: null };
    swap("#/people");
  });
  const byCopy = async () => {
    const copied = await copy(report.text);
    told = copied ? "copied" : told;
    tell(say(copied ? "screen-care-copied" : "screen-care-copy-failed"));
    if (copied) {
      await note("office", "copied");
    }
  };
  const byShare = async () => {
    if (await share(report.text)) {
      told = "shared";
      await note("office", "shared");
    }
  };
  return {
    title: `${report.title} – ${report.person.code}`,
    back: "#/move",
    home: true,
    body: [
      whoIsIt(report.person, report.move_text),
      heading(report.title),
      para(say("screen-care-report-what")),
      textBox(report.text),
      make("div", { class: "care-buttons care-buttons--two" },
        button(say("screen-care-copy"), "main", byCopy, { id: "copy" }),
        canShare() ? button(say("screen-care-share"), "second", byShare, { id: "share" }) : null),
      status,
      report.refused ? make("div", { class: "care-buttons" },
        button(say("screen-care-log"), "second", keep(null), { id: "log" }),
        button(say("screen-care-said"), "second", keep("said"), { id: "said" })) : null,
    ],
  };
}
