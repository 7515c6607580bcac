/** Settings: language, units, what you do most, what the app knows about you. */
import { ask } from "../../backend.js";
import { languageSwitch } from "../../language.js";
import { button, heading, link, make, para, section } from "../../make.js";
import { act, go, redraw } from "../../router.js";
import { startAbout } from "../../walk.js";
import { session } from "../../session.js";
import { say } from "../../words.js";
import "../../parts/check-rows/check-rows.js";

export async function show() {
  const [settings, home] = await Promise.all([ask("settings"), ask("home")]);
  const rows = [
    { question: "use", label: say("screen-use-title"), text: say(`screen-use-${settings.use}`) },
    { question: "units", label: say("screen-units-title"), text: say(`screen-units-${settings.units}`) },
  ];
  return {
    title: say("screen-settings-title"),
    back: "#/home",
    body: [
      heading(say("screen-settings-title")),
      section(say("screen-language"), languageSwitch()),
      make("check-rows", { props: { rows }, on: { "check-rows-change": (event) => go(`#/settings/${event.detail}`) } }),
      section(say("screen-about-title"),
        settings.about.length ? make("check-rows", { props: { facts: settings.about } }) : para(say("screen-about-none")),
        button(say("screen-about-again"), "second", () => act(startAbout), { id: "about" })),
      section(say("screen-saved-title"), home.saved.map(savedTask)),
      section(say("screen-hand-title"), link(say("screen-hand-link"), "#/hand", { class: "button", id: "hand" })),
      section(say("screen-private-title"), para(say("screen-private-here")), para(say("screen-private-locked")), para(say("screen-private-lost")),
        link(say("screen-gone-title"), "#/what-left", { class: "button", id: "what-left" }),
        link(say("screen-pass-change"), "#/keys/passphrase", { class: "button", id: "passphrase" }),
        link(say("screen-erase-title"), "#/keys/erase", { class: "button", id: "erase" })),
      section(say("screen-limits-title"), para(say("screen-start-limits")), para(say("screen-limits-text"))),
      para(say("screen-version", { version: session.version }), "hint"),
    ],
  };
}

function savedTask({ id, name, text }) {
  const drop = () => act(async () => {
    await ask("saved_drop", { id });
    await redraw();
  });
  return make("div", { class: "drop-row" },
    make("div", {}, make("b", { text: name }), make("span", { class: "row__note", text })),
    make("button", { type: "button", class: "check-rows__change", "data-drop": id, on: { click: drop } }, say("screen-saved-drop"), make("span", { class: "unseen", text: ` ${name}` })));
}
