/** What is handed over, on the screen: one symbol, or a sequence without end. Also on paper, or as a file. */
import { ask, save } from "../../backend.js";
import { actions, button, fold, heading, make, para } from "../../make.js";
import { act, goBack, messageOf, redraw, swap } from "../../router.js";
import { announce } from "../../frame.js";
import { say } from "../../words.js";
import { bigWords, lines, useLook } from "./look.js";
import { Screen } from "./screen.js";
import { Sequence } from "./sequence.js";
import { endShowing, fetchSymbols, showing, startShowing } from "./shown.js";

/** Symbols a second (house rules): each is on the screen for at least two frames of a camera. */
const RATE = 7;
const SLOW_RATE = 3;

export async function show() {
  const now = showing();
  if (!now) {
    swap("#/hand/give");
    return null;
  }
  await useLook();
  const stage = now.frames === 0 ? null : new Stage(now);
  await stage?.begin();
  const done = () => goBack("#/hand");
  return {
    title: say("screen-show-title"),
    back: "#/hand",
    body: [
      heading(say("screen-show-title")),
      para(now.to_text, "hand-alias"),
      para(say(HOW[now.frames] ?? "screen-show-many"), "hand-screen-only"),
      now.code ? code(now) : null,
      stage,
      stage ? para(say("screen-show-bright"), "hint hand-screen-only") : null,
      para(now.expires_text, "hint"),
      now.frames === 1 ? paper(now) : null,
      otherWays(now),
      actions(button(say("screen-show-done"), "main", done, { id: "done" })),
    ],
  };
}

/** How it is handed over, by the number of symbols; null is a sequence without end. */
const HOW = { 0: "screen-show-none", 1: "screen-show-one" };

/** The symbol and what steps through the sequence. Leaving the page ends what is shown. */
class Stage extends HTMLElement {
  #now;
  #screen = new Screen();
  #sequence = new Sequence(fetchSymbols);
  #rate = RATE;
  #timer = null;
  #plays = false;

  constructor(now) {
    super();
    this.#now = now;
  }

  /** Fetches the first symbol. */
  async begin() {
    await this.#step();
    this.className = "hand-stage";
    this.replaceChildren(this.#screen);
    if (this.#now.frames !== 1) {
      this.append(this.#buttons());
      this.#label();
      this.addEventListener("hand-screen-rest", () => this.#pause());
    }
  }

  connectedCallback() {
    // Whoever asks for less motion steps by hand.
    if (this.#now.frames !== 1 && !matchMedia("(prefers-reduced-motion: reduce)").matches) {
      this.#play();
    }
  }

  disconnectedCallback() {
    this.#pause();
    if (showing() === this.#now) {
      endShowing();
    }
  }

  #buttons() {
    const pause = button(say("screen-show-pause"), "second", () => (this.#plays ? this.#pause() : this.#play()), { id: "pause" });
    const slower = button(say("screen-show-slower"), "second", () => this.#pace(this.#rate === RATE), { id: "slower", "aria-pressed": "false" });
    const next = button(say("screen-show-next"), "second", () => this.#step(), { id: "next" });
    return make("div", { class: "hand-stage__buttons" }, pause, slower, next);
  }

  #pace(slow) {
    this.#rate = slow ? SLOW_RATE : RATE;
    this.querySelector("#slower").setAttribute("aria-pressed", String(slow));
    this.querySelector("#slower").textContent = say(slow ? "screen-show-faster" : "screen-show-slower");
  }

  #play() {
    if (this.#plays || this.#screen.rests) {
      return;
    }
    this.#plays = true;
    this.#label();
    this.#tick();
  }

  #pause() {
    this.#plays = false;
    clearTimeout(this.#timer);
    this.#label();
  }

  #label() {
    const pause = this.querySelector("#pause");
    if (pause) {
      pause.textContent = say(this.#plays ? "screen-show-pause" : "screen-show-play");
      this.querySelector("#next").hidden = this.#plays;
    }
  }

  async #tick() {
    const began = performance.now();
    try {
      await this.#step();
    } catch (error) {
      this.#pause();
      announce(messageOf(error));
      return;
    }
    if (this.#plays) {
      this.#timer = setTimeout(() => this.#tick(), Math.max(0, 1000 / this.#rate - (performance.now() - began)));
    }
  }

  async #step() {
    this.#screen.symbol = await this.#sequence.next();
  }
}

customElements.define("hand-stage", Stage);

/** The eight words of a parcel for somebody who is not paired: only on a tap, and only to be read aloud. */
function code({ show: id }) {
  const place = make("div", { class: "hand-code" });
  const hide = () => place.replaceChildren(para(say("screen-code-what")), button(say("screen-code-show"), "second", reveal, { id: "code" }));
  const reveal = () => act(async () => {
    const { words } = await ask("show_code", { show: id });
    place.replaceChildren(para(say("screen-code-aloud")), bigWords(words), button(say("screen-code-hide"), "quiet", hide, { id: "code-hide" }));
  });
  hide();
  return make("div", { class: "hand-screen-only" }, place);
}

/** What stands beside the symbol on paper. */
function paper({ leaves }) {
  return make("div", { class: "hand-paper-only" }, para(say("screen-paper-what")), lines(leaves));
}

function otherWays({ show: id, frames, density, asked }) {
  const told = make("p", { class: "hint", id: "saved", role: "status" });
  const saveFile = () => act(async () => {
    const saved = (await save(id)) ?? (await download(id));
    told.textContent = say(saved.path ? "screen-file-saved" : "screen-file-browser", { path: saved.path ?? saved.name });
  });
  const larger = () => act(async () => {
    await startShowing(asked, "coarse");
    await redraw();
  });
  const print = () => act(async () => {
    await ask("departure_note", { what: "show", how: "printed", show: id });
    window.print();
  });
  return fold(say("screen-show-other-ways"), { id: "other-ways", class: "hand-screen-only", open: frames === 0 },
    density === "normal" && frames !== 0 ? button(say("screen-show-larger"), "second", larger, { id: "larger" }) : null,
    frames === 1 ? button(say("screen-show-print"), "second", print, { id: "print" }) : null,
    para(say("screen-file-what")),
    button(say("screen-file-save"), "second", saveFile, { id: "save-file" }),
    told);
}

/** In a browser the page hands the file to the browser, which keeps it where its owner said. */
async function download(id) {
  const { name, base64 } = await ask("show_file", { show: id });
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  const address = URL.createObjectURL(new Blob([bytes], { type: "application/octet-stream" }));
  const away = make("a", { href: address, download: name });
  away.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
  return { name };
}
