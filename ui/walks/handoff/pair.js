/** Pairing, first half: this phone shows its QR code, and scans the other one's. In turn. */
import { ask } from "../../backend.js";
import { actions, heading, link, make, para } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { say } from "../../words.js";
import { askName } from "./card.js";
import { useLook } from "./look.js";
import { Screen } from "./screen.js";

export async function show() {
  await useLook();
  let offer;
  try {
    offer = await ask("pair_start");
  } catch (error) {
    if (error.code === "alias_needed") {
      askName("#/hand/pair");
      return null;
    }
    throw error;
  }
  const screen = new Screen();
  screen.symbol = offer.symbol;
  const scan = (kind) => link(say("screen-pair-scan"), "#/hand/scan/pair", { class: `button button--${kind}`, id: "scan" });
  return {
    title: say("screen-pair-title"),
    back: "#/hand",
    body: [
      heading(say("screen-pair-title")),
      takeNotice(),
      offer.scanned
        ? para(say("screen-pair-scanned"))
        : make("ol", { class: "hand-steps" }, ["screen-pair-step-show", "screen-pair-step-scan", "screen-pair-step-words"].map((id) => make("li", { text: say(id) }))),
      screen,
      para(offer.alias, "hand-alias"),
      para(say("screen-show-bright"), "hint"),
      offer.scanned
        ? actions(scan("second"), link(say("screen-pair-compare"), "#/hand/compare", { class: "button button--main", id: "compare" }))
        : actions(scan("main")),
    ],
  };
}
