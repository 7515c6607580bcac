/** One pairing: another name for it, something to hand over, or its end. */
import { ask } from "../../backend.js";
import { actions, button, fold, heading, link, make, para, submit } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { act, goBack, swap } from "../../router.js";
import { session } from "../../session.js";
import { say } from "../../words.js";
import { giveTo } from "./wish.js";
import { useLook } from "./look.js";
import "../../parts/name-field/name-field.js";

export async function show({ id }) {
  const [{ pairings }] = await Promise.all([ask("pairings"), useLook()]);
  const pairing = pairings.find((one) => one.id === id);
  if (!pairing) {
    swap("#/hand/people");
    return null;
  }
  const field = make("name-field", { props: { name: { id: "alias", label: say("screen-person-name"), hint: say("screen-person-name-hint") } } });
  field.querySelector("input").value = pairing.alias;
  const keep = (event) => {
    event.preventDefault();
    act(async () => {
      await ask("pairing_rename", { id, alias: field.text.trim() });
      goBack("#/hand/people");
    }, { field: "alias" });
  };
  const end = () => act(async () => {
    await ask("pairing_end", { id });
    session.notice = { text: say("screen-person-ended"), undo: null };
    goBack("#/hand/people");
  });
  return {
    title: pairing.alias,
    back: "#/hand/people",
    body: [
      make("form", { class: "form", novalidate: true, on: { submit: keep } },
        heading(pairing.alias),
        takeNotice(),
        para([pairing.text, pairing.note].filter(Boolean).join(" · "), "hint"),
        button(say("screen-hand-give"), "second", () => giveTo({ to: id }), { id: "give" }),
        link(say("screen-person-history"), `#/person/${id}`, { class: "button", id: "history" }),
        field,
        fold(say("screen-person-end"), { id: "end-fold" }, para(say("screen-person-end-what")), button(say("screen-person-end-yes"), "second", end, { id: "end" })),
        actions(submit(say("screen-person-keep"), "keep"))),
    ],
  };
}
