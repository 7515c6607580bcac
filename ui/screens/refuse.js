/** No advice can be given: why, and who can. */
import { actions, button, heading, make, para } from "../make.js";
import { act, swap } from "../router.js";
import { dropWalk, pageHere } from "../walk.js";
import { say } from "../words.js";
import { backOf } from "../flow/place.js";
import "../parts/outcome-mark/outcome-mark.js";
import "../parts/who-list/who-list.js";

export async function show() {
  const page = await pageHere("refuse");
  if (!page) {
    return null;
  }
  const close = () => act(async () => {
    await dropWalk();
    swap("#/home");
  });
  return {
    title: page.title,
    back: backOf(page),
    home: true,
    body: [
      make("outcome-mark", { props: { mark: { outcome: "refuse" } } }),
      heading(page.title),
      page.text.map((text) => para(text)),
      make("h2", { text: say("screen-advice-who") }),
      make("who-list", { props: { who: page.who } }),
      actions(button(say("screen-close"), "main", close, { id: "close" })),
    ],
  };
}
