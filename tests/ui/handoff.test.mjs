// Handing over without a page: grey frames, modules of symbols, the ring, the reading loop, what is asked next.
import assert from "node:assert/strict";
import { test } from "node:test";
import { squareOf, toGrey } from "../../ui/walks/handoff/grey.js";
import { QUIET, darkRuns, pixelsAModule, readModules } from "../../ui/walks/handoff/modules.js";
import { kindOf, pageAfter, readFrames, shareOf } from "../../ui/walks/handoff/reading.js";
import { Sequence } from "../../ui/walks/handoff/sequence.js";
import { findRoute } from "../../ui/flow/place.js";

test("grey is the luma of ITU-R BT.601: 0.299 red, 0.587 green, 0.114 blue", () => {
  const colours = [[0, 0, 0], [255, 255, 255], [255, 0, 0], [0, 255, 0], [0, 0, 255], [18, 52, 86], [128, 128, 128]];
  const grey = toGrey(Uint8ClampedArray.from(colours.flatMap((colour) => [...colour, 255])));
  assert.equal(grey.length, colours.length);
  for (const [at, [red, green, blue]] of colours.entries()) {
    const luma = 0.299 * red + 0.587 * green + 0.114 * blue;
    assert.ok(Math.abs(grey[at] - luma) <= 1, `${colours[at]}: ${grey[at]}, not ${luma}`);
  }
});

test("the crop is the middle square, read pixel by pixel", () => {
  assert.deepEqual(squareOf(1280, 720), { left: 280, top: 0, side: 720, to: 720 });
  assert.deepEqual(squareOf(720, 1280), { left: 0, top: 280, side: 720, to: 720 });
  assert.deepEqual(squareOf(641, 480), { left: 80, top: 0, side: 480, to: 480 });
});

test("a frame that would be too large to hand over is reduced to the bound, and no smaller", () => {
  assert.deepEqual(squareOf(3840, 2160), { left: 840, top: 0, side: 2160, to: 1920 });
});

test("modules are read row by row, highest bit first, without padding between rows", () => {
  // Three rows of three: 101 010 110, then seven bits of nothing.
  const bits = Buffer.from([0b10101011, 0b00000000]).toString("base64");
  assert.deepEqual([...readModules({ size: 3, bits })], [1, 0, 1, 0, 1, 0, 1, 1, 0]);
});

test("a finder pattern is drawn as ISO/IEC 18004 has it: 1:1:3:1:1 dark and light", () => {
  const rows = ["1111111", "1000001", "1011101", "1011101", "1011101", "1000001", "1111111"];
  const flat = rows.join("").padEnd(56, "0");
  const bytes = flat.match(/.{8}/g).map((eight) => Number.parseInt(eight, 2));
  const modules = readModules({ size: 7, bits: Buffer.from(bytes).toString("base64") });
  const runs = darkRuns(modules, 7, 2);
  const inRow = (row) => runs.filter(([, top]) => top === (row + QUIET) * 2).map(([left, , width]) => [left / 2 - QUIET, width / 2]);
  assert.deepEqual(inRow(0), [[0, 7]]);
  assert.deepEqual(inRow(1), [[0, 1], [6, 1]]);
  assert.deepEqual(inRow(3), [[0, 1], [2, 3], [6, 1]]);
  const dark = runs.reduce((sum, [, , width, height]) => sum + width * height, 0);
  assert.equal(dark, [...rows.join("")].filter((one) => one === "1").length * 4);
});

test("every module has the same whole number of pixels, with four white ones on each side", () => {
  assert.equal(QUIET, 4);
  // Version 20 has 97 modules (ISO/IEC 18004, table 1); a phone of 360 points at three dots a point.
  assert.equal(pixelsAModule(97, 1080), 10);
  assert.equal(pixelsAModule(97, 105 * 3), 3);
  assert.equal(pixelsAModule(97, 105 * 3 - 1), 2);
  assert.equal(pixelsAModule(177, 100), 1);
});

test("the ring is empty while nothing is known, and never more than full", () => {
  assert.equal(shareOf(0, 0), 0);
  assert.equal(shareOf(3, 0), 0);
  assert.equal(shareOf(3, 6), 0.5);
  assert.equal(shareOf(9, 7), 1);
});

function frames(...sides) {
  return { next: async () => (sides.length ? { grey: new Uint8Array(4), side: sides.shift() } : null) };
}

test("one frame is under way at a time, in order, until something is whole", async () => {
  let open = 0;
  const seen = [];
  const take = async (kind, bytes, { width, height }) => {
    open += 1;
    assert.equal(open, 1, "two frames at once");
    await new Promise((resolve) => setTimeout(resolve, 1));
    open -= 1;
    assert.equal(width, height);
    seen.push([kind, width]);
    return { state: width === 3 ? "whole" : "nothing" };
  };
  await readFrames(frames(1, 2, 3, 4), take, ({ state }) => state === "whole");
  assert.deepEqual(seen, [["frame", 1], ["frame", 2], ["frame", 3]]);
});

test("the reading ends with its source, and a failure reaches whoever started it", async () => {
  const replies = [];
  await readFrames(frames(1, 2), async () => ({ state: "nothing" }), (reply) => replies.push(reply) > 9);
  assert.equal(replies.length, 2);
  const lost = async () => {
    throw { code: "locked" };
  };
  await assert.rejects(readFrames(frames(1), lost, () => false), { code: "locked" });
});

test("a picked file is a sealed one by its name, and a picture otherwise", () => {
  assert.equal(kindOf("plan-3.heft"), "file");
  assert.equal(kindOf("PLAN.HEFT"), "file");
  assert.equal(kindOf("heft.jpg"), "photo");
  assert.equal(kindOf("photo"), "photo");
});

test("what is whole leads to a page that there is", () => {
  for (const next of ["compare", "code", "accept", null, "something new"]) {
    assert.ok(findRoute(pageAfter(next)), next);
  }
});

function lots(asked, limit = Infinity) {
  return async (from, count) => {
    asked.push([from, count]);
    if (asked.length > limit) {
      throw { code: "locked" };
    }
    return Array.from({ length: count }, (_, at) => from + at);
  };
}

test("symbols come in order, in lots, fetched before they are needed", async () => {
  const asked = [];
  const sequence = new Sequence(lots(asked));
  const shown = [];
  for (let at = 0; at < 30; at += 1) {
    shown.push(await sequence.next());
  }
  assert.deepEqual(shown, Array.from({ length: 30 }, (_, at) => at));
  assert.ok(asked.every(([from, count], at) => count <= 8 && from === asked.slice(0, at).reduce((sum, [, n]) => sum + n, 0)));
});

test("a lot that did not come is asked for again when it is needed", async () => {
  const asked = [];
  const sequence = new Sequence(lots(asked, 1));
  for (let at = 0; at < 8; at += 1) {
    assert.equal(await sequence.next(), at);
  }
  await assert.rejects(sequence.next(), { code: "locked" });
});
