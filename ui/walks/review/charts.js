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
/** Room for the first and the last day under a picture. */
const FOOT = 20;
/** Up to so many weeks each bar has its weight above it; of more only the tallest. */
const FEW = 5;

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
  const ends = told.flatMap(({ points }) => [points[0], points.at(-1)]).sort((one, other) => one.day - other.day);
  const lines = told.map(({ id, points }) => shape("g", { class: `series series--${id}` },
    path("series__line", points.map(({ day, score }, at) => `${at === 0 ? "M" : "L"}${x(day)} ${y(score)}`).join("")),
    points.map(({ day, score }) => MARKS[id](x(day), y(score)))));
  return make("div", { class: "chart" },
    sheet(`0 0 ${WIDE} ${TOP + HIGH + FOOT}`, grid, lines, span(ends[0].day_text, ends.at(-1).day_text)),
    make("ul", { class: "chart__key" }, told.map(({ id, title }) => make("li", {}, key(id), title))));
}

/** What was lifted, one bar a week. */
export function weeksChart(weeks) {
  const most = Math.max(...weeks.map(({ lifted_kg: lifted }) => lifted));
  if (!(most > 0)) {
    return null;
  }
  const step = WIDE / weeks.length;
  const top = TOP + 12;
  const high = HIGH - 12;
  const bars = weeks.map(({ lifted_kg: lifted, lifted_text: text }, at) => {
    const tall = round((lifted / most) * high);
    const middle = round((at + 0.5) * step);
    return tall > 0 ? [
      rect("chart-bar", round(at * step + step * 0.12), round(top + high - tall), round(step * 0.76), tall, 1),
      weeks.length <= FEW || lifted === most ? label(text, Math.min(Math.max(middle, 24), WIDE - 24), round(top + high - tall - 4), "middle") : null,
    ] : null;
  });
  return make("div", { class: "chart" },
    sheet(`0 0 ${WIDE} ${TOP + HIGH + FOOT}`, path("chart-grid", `M0 ${top + high}H${WIDE}`), bars, span(weeks[0].from_text, weeks.at(-1).from_text, 0)));
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

function label(text, x, y, place = "end") {
  const node = shape("text", { class: `chart-label chart-label--${place}`, x, y });
  node.textContent = text;
  return node;
}

/** The first and the last day, under a picture. */
function span(first, last, left = LEFT) {
  const y = TOP + HIGH + 15;
  return first === last ? label(first, left, y, "start") : [label(first, left, y, "start"), label(last, WIDE, y)];
}

const MARKS = {
  before: (x, y) => shape("circle", { class: "series__mark", cx: x, cy: y, r: MARK }),
  during: (x, y) => path("series__mark", `M${x} ${round(y - MARK - 1)}L${round(x + MARK + 1)} ${round(y + MARK)}H${round(x - MARK - 1)}Z`),
  next_morning: (x, y) => rect("series__mark", round(x - MARK), round(y - MARK), 2 * MARK, 2 * MARK, 0),
};
