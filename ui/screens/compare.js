/** Two of the ways offered, side by side, for the lift at hand. It shows; it advises nothing. */
import { heading, make, para } from "../make.js";
import { act, swap } from "../router.js";
import { adviceAtHand, figureOf } from "../walk.js";
import { say } from "../words.js";
import { aboutDrawing } from "../parts/pose-figure/pose-figure.js";
import "../parts/compare-ways/compare-ways.js";

export async function show() {
  const ways = (await adviceAtHand())?.card.ways ?? [];
  if (ways.length < 2) {
    swap("#/advice");
    return null;
  }
  const find = (pair) => Promise.all(pair.map(async (id) => ({ ...ways.find(({ way }) => way === id), reply: await figureOf(id) })));
  const pick = async (pair) => {
    const shown = await find(pair);
    part.both = { ways, shown };
    part.querySelector(`button[data-way="${pair[1]}"]`).focus();
  };
  const shown = await find([ways[0].way, ways[1].way]);
  const part = make("compare-ways", { props: { both: { ways, shown } }, on: { "compare-ways-pick": (event) => act(() => pick(event.detail)) } });
  const title = say("screen-compare-title");
  return {
    title,
    back: "#/advice",
    home: true,
    body: [heading(title), para(say("screen-compare-decides")), part, para(shown.find(({ reply }) => reply)?.reply.note), aboutDrawing()],
  };
}
