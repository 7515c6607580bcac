/** One form of the history. */
import { say } from "../../words.js";
import { makingPage } from "./making.js";

export function show({ form, id = null }) {
  return makingPage({
    asked: { form, of: id },
    title: say("screen-out-title"),
    heading: say(TITLES[form]),
    back: id === null ? "#/out" : `#/person/${id}/out`,
  });
}

const TITLES = { note: "screen-out-note", pdf: "screen-out-pdf", csv: "screen-out-csv", fhir: "screen-out-fhir" };
