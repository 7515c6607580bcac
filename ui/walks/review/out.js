/** Taking the history out: in which form. */
import { heading, make, para } from "../../make.js";
import { icon } from "../../pictures/icons.js";
import { say } from "../../words.js";
import { useStyle } from "../style.js";

export async function show({ id = null }) {
  const here = id === null ? "#" : `#/person/${id}`;
  await useStyle("./review.css", import.meta.url);
  return {
    title: say("screen-out-title"),
    back: id === null ? "#/back" : here,
    body: [
      heading(say("screen-out-title")),
      para(say("screen-out-lead")),
      make("ul", { class: "rows" }, FORMS.map(([form, name, hint]) => make("li", {},
        make("a", { class: "row", href: `${here}/out/${form}`, id: `out-${form}` },
          make("span", { class: "row__name", text: say(name) }),
          make("span", { class: "row__note", text: say(hint) }),
          icon("on"))))),
    ],
  };
}

const FORMS = [
  ["note", "screen-out-note", "screen-out-note-hint"],
  ["pdf", "screen-out-pdf", "screen-out-pdf-hint"],
  ["csv", "screen-out-csv", "screen-out-csv-hint"],
  ["fhir", "screen-out-fhir", "screen-out-fhir-hint"],
];
