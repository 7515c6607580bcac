/** After the lift: pain now, one tap. */
import { ask } from "../backend.js";
import { button, group, link, make, para } from "../make.js";
import { act, swap } from "../router.js";
import { say } from "../words.js";
import "../parts/pain-scale/pain-scale.js";

export async function show({ id }) {
  const keep = (pain) => act(async () => {
    await ask("lift_pain", { id: Number(id), pain });
    swap("#/home");
  });
  return {
    title: say("screen-after-title"),
    home: true,
    body: [
      group(say("screen-after-title"),
        para(say("screen-after-hint"), "hint"),
        make("div", { class: "question__low" },
          make("pain-scale", { props: { chosen: null }, on: { "pain-scale-pick": (event) => keep(event.detail) } }),
          button(say("screen-skip"), "second", () => keep(null), { id: "skip" })),
        link(say("screen-save-link"), `#/save/${id}`, { class: "button button--quiet", id: "save" })),
    ],
  };
}
