/** All answers of this walk, each with a way to change it. */
import { button, heading, make, scrollAbove } from "../make.js";
import { act, go } from "../router.js";
import { confirmAnswers, pageHere } from "../walk.js";
import { backOf } from "../flow/place.js";
import "../parts/check-rows/check-rows.js";

export async function show() {
  const page = await pageHere("check");
  if (!page) {
    return null;
  }
  return {
    title: page.title,
    back: backOf(page),
    home: true,
    body: scrollAbove(
      button(page.button, "main", () => act(confirmAnswers), { id: "confirm" }),
      heading(page.title),
      make("check-rows", { props: { rows: page.rows }, on: { "check-rows-change": (event) => go(`#/walk/${event.detail}`) } }),
    ),
  };
}
