/** The switch between languages, as it stands on several pages. */
import { make } from "./make.js";
import { act, redraw } from "./router.js";
import { changeLanguage, session } from "./session.js";
import "./parts/language-switch/language-switch.js";

export function languageSwitch() {
  const change = (event) => act(async () => {
    await changeLanguage(event.detail);
    await redraw();
  });
  const choice = { languages: session.languages, now: session.language };
  return make("language-switch", { props: { choice }, on: { "language-switch-pick": change } });
}
