/** One person: plans with what changed and why, what came from them, and notes that stay here. */
import { ask } from "../../backend.js";
import { button, fold, heading, link, make, para, section } from "../../make.js";
import { takeNotice } from "../../notice.js";
import { act, goBack } from "../../router.js";
import { say } from "../../words.js";
import { giveTo } from "../handoff/wish.js";
import { lines, loud, rowTo, rows, useLook } from "../handoff/look.js";

export async function show({ id }) {
  const [patient] = await Promise.all([ask("patient", { id: Number(id) }), useLook()]);
  const remove = () => act(async () => {
    await ask("patient_remove", { id: patient.id });
    goBack("#/patients");
  });
  return {
    title: patient.alias,
    back: "#/patients",
    body: [
      heading(patient.alias),
      takeNotice(),
      patient.due ? loud(para(patient.text)) : para(patient.text, "hint"),
      para(patient.histories_text),
      patient.pairing ? link(say("screen-patients-look"), `#/person/${patient.pairing}`, { class: "button", id: "look-back" }) : null,
      patient.pairing ? button(say("screen-patients-give"), "second", () => giveTo({ to: patient.pairing }), { id: "give" }) : null,
      section(say("screen-patients-plans"), plans(patient.plans)),
      link(say("screen-patients-make"), `#/patients/${id}/plan`, { class: "button", id: "make" }),
      section(say("screen-patients-notes"), para(say("screen-patients-notes-what"), "hint"), patient.notes.map((note) => noteOf(patient.id, note))),
      link(say("screen-patients-note"), `#/patients/${id}/note`, { class: "button", id: "note" }),
      link(say("screen-patients-rename"), `#/patients/${id}/name`, { class: "button", id: "rename" }),
      fold(say("screen-patients-remove"), { id: "remove-fold" }, para(say("screen-patients-remove-what")), button(say("screen-patients-remove-yes"), "second", remove, { id: "remove" })),
    ],
  };
}

function plans(all) {
  return all.length === 0 ? para(say("screen-patients-no-plan")) : all.map(({ id, title, versions }) => [
    rows(rowTo(`#/plans/${id}`, title, versions[0]?.title ?? say("screen-patients-not-given"), { "data-plan": id })),
    versions.map((version) => fold(version.title, { class: "version" },
      version.why ? para(say("screen-patients-why", { why: version.why })) : null,
      version.why_private ? para(say("screen-patients-why-private", { why: version.why_private })) : null,
      version.changes.length === 0 ? para(say("screen-patients-first"), "hint") : lines(version.changes))),
  ]).flat();
}

function noteOf(id, { id: note, day_text: day, text }) {
  const gone = () => act(async () => {
    await ask("patient_note_remove", { id, note });
    section.remove();
  });
  const section = make("div", { class: "note" }, para(day, "hint"), para(text), button(say("screen-patients-note-remove"), "quiet", gone, { "data-note": note }));
  return section;
}
