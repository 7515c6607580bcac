/** A code and a picture for somebody: new, or another one. */
import { ask } from "../../backend.js";
import { actions, heading, make, para, submit } from "../../make.js";
import { act, goBack, swap } from "../../router.js";
import { showProblems } from "../../frame.js";
import { icon } from "../../pictures/icons.js";
import { say } from "../../words.js";
import { ready } from "./parts.js";
import { personPicture } from "./pictures.js";
import "../../parts/name-field/name-field.js";

export async function show({ id = null }) {
  await ready();
  const kept = id === null ? null : (await ask("person", { id: Number(id) })).person;
  const { suggest, pictures } = await ask("people");
  const start = kept ?? suggest;
  const back = kept ? `#/care/${id}` : "#/people";
  const field = make("name-field", { props: { name: { id: "code", label: say("screen-care-code"), hint: say("screen-care-code-what") } } });
  field.querySelector("input").value = start.code;
  const keep = (picture) => act(async () => {
    const code = field.text.trim();
    if (code === "") {
      showProblems([{ text: say("screen-save-empty"), field: "code" }]);
      return;
    }
    const { id: number } = await ask("person_keep", { id: kept?.id ?? null, code, picture });
    kept ? goBack(back) : swap(`#/care/${number}`);
  }, { field: "code" });
  return {
    title: say("screen-care-code-title"),
    back,
    home: true,
    body: [
      make("form", { class: "form", novalidate: true, on: { submit: (event) => { event.preventDefault(); keep(start.picture); } } },
        heading(say("screen-care-code-title")),
        field,
        para(say("screen-care-code-pick")),
        make("ul", { class: "care-tiles" }, pictures.map(({ id: name, text }) => make("li", {},
          make("button", { type: "button", class: "care-tile", "data-picture-of": name, "aria-pressed": String(name === start.picture), on: { click: () => keep(name) } }, personPicture(name), name === start.picture ? make("span", { class: "care-tile__chosen" }, icon("tick"), text) : text)))),
        actions(submit(say("screen-continue"), "keep"))),
    ],
  };
}
