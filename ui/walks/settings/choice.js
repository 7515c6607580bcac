/** Changes one setting: what you do most, or the units. */
import { ask } from "../../backend.js";
import { group, make } from "../../make.js";
import { act, goBack, swap } from "../../router.js";
import { say } from "../../words.js";
import "../../parts/choice-list/choice-list.js";

export async function show({ what }) {
  const known = CHOICES[what];
  if (!known) {
    swap("#/settings");
    return null;
  }
  const settings = await ask("settings");
  const title = say(`screen-${what}-title`);
  const options = known.map((id) => ({ id, label: say(`screen-${what}-${id}`) }));
  const pick = (event) => act(async () => {
    await ask("settings_set", { units: settings.units, use: settings.use, [what]: event.detail });
    goBack("#/settings");
  });
  return {
    title,
    back: "#/settings",
    body: [
      group(title,
        make("choice-list", { props: { choice: { options, chosen: settings[what] } }, on: { "choice-list-pick": pick } })),
    ],
  };
}

const CHOICES = { use: ["lift", "help", "treat"], units: ["kg", "lb"] };
