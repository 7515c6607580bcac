/**
 * The pictures of the look back, drawn from numbers that Rust worked out. Series differ by mark and dash as well as by
 * grey, so that they can be told apart without colour. The words stand beside them, so they are hidden from screen readers.
 */
import { make } from "../../make.js";
import { path, rect, round, shape, sheet } from "../../pictures/draw.js";

const WIDE = 320;
const HIGH = 132;
const LEFT = 22;
const TOP = 8;
const WORST = 10;
const MARK = 3.4;

/** Pain by day, one line a series, with its key. Nothing if no day was told. */
export function painChart(series) {
  const told = series.filter(({ points }) => points.length > 0);
  const last = Math.max(1, ...told.map(({ points }) => points.at(-1).day));
  if (told.length === 0) {
    return null;
  }
  const x = (day) => round(LEFT + MARK + (day / last) * (WIDE - LEFT - 2 * MARK - 2));
  const y = (score) => round(TOP + (1 - score / WORST) * HIGH);
  const grid = [0, 5, 10].map((score) => [path("chart-grid", `M${LEFT} ${y(score)}H${WIDE}`), label(score, LEFT - 5, y(score) + 4)]);
  const lines = told.map(({ id, points }) => shape("g", { class: `series series--${id}` },
    path("series__line", points.map(({ day, score }, at) => `${at === 0 ? "M" : "L"}${x(day)} ${y(score)}`).join("")),
    points.map(({ day, score }) => MARKS[id](x(day), y(score)))));
  return make("div", { class: "chart" },
    sheet(`0 0 ${WIDE} ${TOP + HIGH + 8}`, grid, lines),
    make("ul", { class: "chart__key" }, told.map(({ id, title }) => make("li", {}, key(id), title))));
}

/** What was lifted, one bar a week. */
export function weeksChart(weeks) {
  const most = Math.max(...weeks.map(({ lifted_kg: lifted }) => lifted));
  if (!(most > 0)) {
    return null;
  }
  const step = (WIDE - LEFT) / weeks.length;
  const bars = weeks.map(({ lifted_kg: lifted }, at) => {
    const high = round((lifted / most) * HIGH);
    return high > 0 ? rect("chart-bar", round(LEFT + at * step + step * 0.12), round(TOP + HIGH - high), round(step * 0.76), high, 1) : null;
  });
  return make("div", { class: "chart" }, sheet(`0 0 ${WIDE} ${TOP + HIGH + 8}`, path("chart-grid", `M${LEFT} ${TOP + HIGH}H${WIDE}`), bars));
}

/** How often each way was used, one bar a way. */
export function waysChart(ways) {
  const most = Math.max(...ways.map(({ count }) => count));
  return make("ul", { class: "chart chart--ways" }, ways.map(({ name, count, times_text: times }) => make("li", {},
    make("span", { text: `${name}: ${times}` }),
    sheet(`0 0 ${WIDE} 12`, rect("chart-track", 1, 1, WIDE - 2, 10), rect("chart-bar", 1, 1, round(Math.max(10, (count / most) * (WIDE - 2))), 10)))));
}

function key(id) {
  return sheet("0 0 26 12", shape("g", { class: `series series--${id}` }, path("series__line", "M0 6H26"), MARKS[id](13, 6)));
}

function label(text, x, y) {
  const node = shape("text", { class: "chart-label", x, y });
  node.textContent = text;
  return node;
}

const MARKS = {
  before: (x, y) => shape("circle", { class: "series__mark", cx: x, cy: y, r: MARK }),
  during: (x, y) => path("series__mark", `M${x} ${round(y - MARK - 1)}L${round(x + MARK + 1)} ${round(y + MARK)}H${round(x - MARK - 1)}Z`),
  next_morning: (x, y) => rect("series__mark", round(x - MARK), round(y - MARK), 2 * MARK, 2 * MARK, 0),
};
