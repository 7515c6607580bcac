/** Taking in: the live camera, a photo, a picture file or a sealed file. */
import { ask, take } from "../../backend.js";
import { heading, make, para } from "../../make.js";
import { act, messageOf, go, swap } from "../../router.js";
import { announce, showProblems } from "../../frame.js";
import { touched } from "../../session.js";
import { say } from "../../words.js";
import { openCamera } from "./frames.js";
import { useLook } from "./look.js";
import { kindOf, pageAfter, readFrames } from "./reading.js";
import "./ring.js";

/** Rust takes files up to this size, in bytes. */
const MOST = 12_000_000;

/** Which opening of this page is the last: only that one may stop the scanning. */
let turn = 0;

export async function show({ what }) {
  if (!TITLES[what]) {
    swap("#/hand");
    return null;
  }
  await useLook();
  turn += 1;
  await ask("scan_start", { for: what });
  const title = say(TITLES[what]);
  const scanner = new Scanner();
  return {
    title,
    back: what === "pair" ? "#/hand/pair" : "#/hand",
    body: [
      heading(title),
      para(say(what === "pair" ? "screen-scan-pair-what" : "screen-scan-parcel-what")),
      scanner,
      make("div", { class: "hand-ways", role: "group", "aria-label": say("screen-scan-other-ways") },
        picker("photo", say("screen-scan-photo"), { accept: "image/*", capture: "environment" }, scanner),
        picker("file", say(what === "pair" ? "screen-scan-picture" : "screen-scan-file"), { accept: what === "pair" ? "image/*" : "image/*,.heft" }, scanner)),
    ],
  };
}

const TITLES = { pair: "screen-scan-pair", parcel: "screen-scan-parcel" };

/** The camera's picture, what it says, and how much is in. */
class Scanner extends HTMLElement {
  #video = make("video", { class: "hand-camera__video", playsinline: true, muted: true, "aria-hidden": "true", tabindex: "-1" });
  #state = make("p", { class: "hand-camera__state", id: "scan-state", role: "status" });
  #ring = make("hand-ring", { hidden: true });
  #source = null;
  #mine = turn;
  #over = false;

  connectedCallback() {
    this.className = "hand-camera";
    this.replaceChildren(make("div", { class: "hand-camera__frame", hidden: true }, this.#video), this.#ring, this.#state);
    this.#state.textContent = say("screen-scan-opening");
    this.#begin();
  }

  disconnectedCallback() {
    this.#end();
    if (this.#mine === turn) {
      // A vault that locked itself has stopped it already.
      ask("scan_stop").catch(() => {});
    }
  }

  async #begin() {
    try {
      this.#source = await openCamera(this.#video);
    } catch (why) {
      this.#state.textContent = say(why === "refused" ? "screen-scan-refused" : "screen-scan-none");
      this.#state.dataset.camera = why;
      return;
    }
    if (this.#over) {
      this.#source.stop();
      return;
    }
    this.querySelector(".hand-camera__frame").hidden = false;
    this.#state.textContent = say("screen-scan-hold");
    this.#state.dataset.camera = "open";
    try {
      await readFrames(this.#source, take, (reply) => this.heed(reply));
    } catch (error) {
      this.#end();
      this.#state.textContent = messageOf(error);
    }
  }

  #end() {
    this.#over = true;
    this.#source?.stop();
    this.querySelector(".hand-camera__frame").hidden = true;
  }

  /** Says what a reply means. Returns whether the reading is over. */
  heed({ state, have, need, next, text }) {
    if (this.#over && state !== "whole") {
      return true;
    }
    if (state === "nothing") {
      return false;
    }
    touched();
    if (state === "refused") {
      this.#say(text, true);
      return false;
    }
    this.#ring.hidden = false;
    this.#ring.progress = { have, need };
    if (state === "whole") {
      this.#end();
      announce(say("screen-scan-whole"));
      const page = pageAfter(next);
      page === "#/hand/pair" ? swap(page) : go(page);
      return true;
    }
    this.#say(say("screen-scan-more"), false);
    return false;
  }

  #say(text, refused) {
    if (this.#state.textContent !== text) {
      this.#state.textContent = text;
    }
    this.#state.classList.toggle("hand-camera__state--refused", refused);
  }
}

customElements.define("hand-camera", Scanner);

/** A button that picks a file; the field itself is there for keys and screen readers. */
function picker(id, label, given, scanner) {
  const pick = () => {
    const [file] = input.files;
    if (!file) {
      return;
    }
    if (file.size > MOST) {
      showProblems([{ text: say("screen-scan-too-large"), field: null }]);
      return;
    }
    act(async () => {
      const reply = await take(kindOf(file.name), new Uint8Array(await file.arrayBuffer()));
      input.value = "";
      if (reply.state === "nothing") {
        showProblems([{ text: say("screen-scan-nothing"), field: null }]);
      } else if (reply.state === "refused") {
        showProblems([{ text: reply.text, field: null }]);
      } else {
        scanner.heed(reply);
      }
      scanner.dataset.taken = Number(scanner.dataset.taken ?? 0) + 1;
    });
  };
  const input = make("input", { type: "file", id, class: "unseen", ...given, on: { change: pick } });
  return make("label", { class: "button hand-pick", for: id }, input, label);
}
