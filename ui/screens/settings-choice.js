/** Changes one setting: what you do most, or the units. */
import { ask } from "../backend.js";
import { heading, make } from "../make.js";
import { act, goBack, swap } from "../router.js";
import { say } from "../words.js";
import "../parts/choice-list/choice-list.js";

export async function show({ what }) {
  const known = CHOICES[what];
  if (!known) {
    swap("#/settings");
    return null;
  }
  const settings = await ask("settings");
  const options = known.options.map(([id, words]) => ({ id, label: say(words) }));
  const pick = (event) => act(async () => {
    await ask("settings_set", { units: settings.units, use: settings.use, [what]: event.detail });
    goBack("#/settings");
  });
  return {
    title: say(known.title),
    back: "#/settings",
    body: [
      make("div", { class: "question", role: "group", "aria-labelledby": "title" },
        heading(say(known.title), { id: "title" }),
        make("choice-list", { props: { choice: { options, chosen: settings[what] } }, on: { "choice-list-pick": pick } })),
    ],
  };
}

const CHOICES = {
  use: { title: "screen-use-title", options: [["lift", "screen-use-lift"], ["help", "screen-use-help"], ["treat", "screen-use-treat"]] },
  units: { title: "screen-units-title", options: [["kg", "screen-units-kg"], ["lb", "screen-units-lb"]] },
};
