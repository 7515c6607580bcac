/** Warning signs and whom to call. Can be read while the vault is locked. */
import { ask } from "../backend.js";
import { heading, make, para } from "../make.js";
import { session } from "../session.js";
import { say } from "../words.js";
import { icon } from "../pictures/icons.js";
import "../parts/who-list/who-list.js";

export async function show() {
  const { title, intro, groups, whom } = await ask("signs");
  return {
    title,
    back: session.first_start ? "#/start" : session.locked ? "#/unlock" : "#/home",
    body: [
      heading(title),
      para(intro),
      make("h2", { text: say("screen-advice-who") }),
      make("who-list", { props: { who: whom } }),
      groups.map(group),
    ],
  };
}

function group({ id, title, do: what, signs }) {
  return make("section", { class: `signs signs--${id}` },
    make("h2", { class: "signs__title" }, icon(id === "emergency" ? "phone" : "care"), title),
    para(what),
    make("ul", { class: "signs__all" }, signs.map((sign) => make("li", { "data-sign": sign.id, text: sign.text }))));
}
