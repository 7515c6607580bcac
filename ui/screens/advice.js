/** The advice, and what was done with it. A warning sign has a page of its own look. */
import { link, make } from "../make.js";
import { takeNotice } from "../notice.js";
import { act, go, swap } from "../router.js";
import { figureOf, keepLift, pageHere } from "../walk.js";
import { session } from "../session.js";
import { say } from "../words.js";
import "../parts/advice-card/advice-card.js";
import "../parts/emergency-card/emergency-card.js";

export async function show() {
  const page = await pageHere("advice");
  if (!page) {
    return null;
  }
  if (page.card.outcome === "seek_care") {
    return seekCare(page.card);
  }
  const { picture, ways } = page.card;
  return advice(page, picture && picture === ways.at(0)?.way ? await figureOf(picture) : null);
}

function advice({ card, saved }, figure) {
  return {
    title: card.headline,
    back: "#/check",
    home: true,
    body: [
      takeNotice(),
      make("advice-card", { props: { advice: { card, figure } }, on: {
        "advice-card-did": (event) => act(() => did(event.detail)),
        "advice-card-left": () => (card.alternatives.length ? go("#/left") : act(left)),
      } }),
      saved === null ? link(say("screen-save-link"), "#/save/draft", { class: "button", id: "save" }) : null,
    ],
  };
}

function seekCare(card) {
  return {
    title: card.headline,
    back: "#/check",
    home: true,
    tone: card.urgency === "emergency" ? "alarm" : "calm",
    body: [make("emergency-card", { props: { card }, on: { "emergency-card-read": () => act(left) } })],
  };
}

async function did(way) {
  const id = await keepLift({ done: true, way });
  session.notice = { text: say("screen-kept"), undo: id };
  swap(`#/after/${id}`);
}

async function left() {
  const id = await keepLift({ done: false });
  session.notice = { text: say("screen-kept"), undo: id };
  swap("#/home");
}
