/** Asks before an open walk is replaced by a new one. */
import { ask } from "../backend.js";
import { actions, button, heading, make, para } from "../make.js";
import { act } from "../router.js";
import { resumeWalk, startWalk } from "../walk.js";
import { say } from "../words.js";

export async function show({ saved }) {
  const { draft } = await ask("home");
  const id = saved === "none" ? null : Number(saved);
  return {
    title: say("screen-fresh-title"),
    back: "#/home",
    body: [
      heading(say("screen-fresh-title")),
      draft ? para(draft.title, "prompt__what") : null,
      para(say("screen-fresh-text")),
      actions(
        draft ? button(say("screen-draft-go-on"), "second", () => act(() => resumeWalk()), { id: "go-on" }) : null,
        button(say("screen-fresh-start"), "main", () => act(() => startWalk(id)), { id: "fresh" }),
      ),
    ],
  };
}
