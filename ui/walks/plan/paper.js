/** A plan on paper: who shall scan it, then the page. */
import { ask } from "../../backend.js";
import { heading, make, para } from "../../make.js";
import { go } from "../../router.js";
import { say } from "../../words.js";
import { makingPage } from "../review/making.js";
import "../../parts/choice-list/choice-list.js";

/** Stands for a page without a symbol. */
const NOBODY = "nobody";

export async function show({ id, to = null }) {
  const plan = Number(id);
  if (to !== null) {
    return makingPage({
      asked: { form: "pdf", plan, to: to === NOBODY ? null : to },
      title: say("screen-plans-paper"),
      heading: say("screen-plans-paper"),
      back: `#/paper/${id}`,
    });
  }
  const { pairings } = await ask("pairings");
  const options = [
    ...pairings.map(({ id: pairing, alias, note }) => ({ id: pairing, label: alias, note: note ?? say("screen-plans-paper-for") })),
    { id: NOBODY, label: say("screen-plans-paper-nobody"), note: say("screen-plans-paper-nobody-note") },
  ];
  const pick = (event) => go(`#/paper/${id}/${event.detail}`);
  return {
    title: say("screen-plans-paper"),
    back: `#/plans/${id}`,
    body: [
      heading(say("screen-plans-paper-whom")),
      para(say("screen-plans-paper-what"), "hint"),
      make("choice-list", { props: { choice: { options } }, on: { "choice-list-pick": pick } }),
    ],
  };
}
