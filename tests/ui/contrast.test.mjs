// Colours: contrast of every pair of ink and ground, by day, by night and in an emergency.
// Formula and limits: WCAG 2.2, relative luminance; 1.4.3 (text 4.5), 1.4.11 (controls 3).
import assert from "node:assert/strict";
import { test } from "node:test";
import { uiFiles } from "./read.mjs";

const tokens = uiFiles(".css").find(({ path }) => path.endsWith("tokens.css")).text;

/** The colours of a block, with those of the blocks under it. */
function colours(...blocks) {
  const found = {};
  for (const block of blocks) {
    for (const [, name, value] of block.matchAll(/--([a-z-]+): ([^;]+);/g)) {
      found[name] = value;
    }
  }
  const resolve = (value) => (value.startsWith("var(") ? resolve(found[value.slice(6, -1)]) : value);
  return (name) => resolve(found[name]);
}

function luminance(hex) {
  const [r, g, b] = [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16) / 255).map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one, other) {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

const [day, night, alarm] = [/^:root \{[^}]*\}/m, /@media[^{]*\{\s*:root \{[^}]*\}/, /:root\[data-tone="alarm"\] \{[^}]*\}/].map((part) => part.exec(tokens)[0]);

const LOOKS = { day: colours(day), night: colours(day, night), "alarm by day": colours(day, alarm), "alarm by night": colours(day, night, alarm) };

const TEXT = [
  ["ink", "page"], ["ink", "card"], ["ink", "accent-soft"], ["ink", "care-soft"], ["ink-soft", "page"], ["ink-soft", "card"],
  ["accent", "page"], ["accent", "card"], ["accent-ink", "accent"], ["stop", "page"], ["stop", "card"], ["care", "page"], ["care", "card"],
];
const CONTROLS = [["line", "page"], ["line", "card"], ["focus", "page"], ["focus", "card"], ["care", "care-soft"], ["accent", "accent-soft"]];
const PICTURES = [["body-near", "card"], ["body-near", "page"], ["shirt", "card"], ["load-line", "card"], ["load-line", "page"], ["stop", "card"]];

for (const [name, colour] of Object.entries(LOOKS)) {
  test(`text stands out enough: ${name}`, () => {
    for (const [ink, ground] of TEXT) {
      const found = contrast(colour(ink), colour(ground));
      assert.ok(found >= 4.5, `${ink} on ${ground}: ${found.toFixed(2)}`);
    }
  });

  test(`controls stand out enough: ${name}`, () => {
    for (const [ink, ground] of CONTROLS) {
      const found = contrast(colour(ink), colour(ground));
      assert.ok(found >= 3, `${ink} on ${ground}: ${found.toFixed(2)}`);
    }
  });
}

for (const name of ["day", "night"]) {
  test(`pictures stand out enough: ${name}`, () => {
    for (const [ink, ground] of PICTURES) {
      const found = contrast(LOOKS[name](ink), LOOKS[name](ground));
      assert.ok(found >= 3, `${ink} on ${ground}: ${found.toFixed(2)}`);
    }
  });
}

test("the formula gives the known ends", () => {
  assert.equal(contrast("#000000", "#ffffff"), 21);
  assert.equal(contrast("#777777", "#777777"), 1);
});
