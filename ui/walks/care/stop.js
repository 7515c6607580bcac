/** Something is wrong in the middle of a move: lower, stay, call. No question comes before it. */
import { ask } from "../../backend.js";
import { heading, button, link, make } from "../../make.js";
import { act, swap } from "../../router.js";
import { say } from "../../words.js";
import { icon } from "../../pictures/icons.js";
import { ready } from "./parts.js";

export async function show() {
  await ready();
  const log = () => act(async () => {
    const { id } = await ask("move_keep", { result: "near_miss" });
    swap(`#/moved/${id}/near`);
  });
  return {
    title: say("screen-care-stop-title"),
    back: "#/move",
    home: true,
    tone: "alarm",
    body: [
      make("div", { class: "emergency-card__sign" }, icon("stop")),
      heading(say("screen-care-stop-title")),
      make("ol", { class: "care-steps" }, STEPS.map((id) => make("li", { text: say(id) }))),
      make("div", { class: "care-buttons" },
        link(say("screen-signs-link"), "#/signs", { class: "button" }),
        button(say("screen-care-stop-log"), "main", log, { id: "log" }),
        link(say("screen-care-stop-fine"), "#/move", { class: "button", id: "fine" })),
    ],
  };
}

const STEPS = ["screen-care-stop-1", "screen-care-stop-2", "screen-care-stop-3", "screen-care-stop-4"];
