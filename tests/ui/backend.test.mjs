// The one file that talks to Rust: the window's bridge, or a post in a browser.
import assert from "node:assert/strict";
import { afterEach, test } from "node:test";
import { ask, save, take } from "../../ui/backend.js";

const realFetch = globalThis.fetch;
const realNavigator = globalThis.navigator;

afterEach(() => {
  delete globalThis.__TAURI__;
  globalThis.fetch = realFetch;
  Object.defineProperty(globalThis, "navigator", { value: realNavigator, configurable: true });
});

function inWindow(reply) {
  const sent = [];
  globalThis.__TAURI__ = { core: { invoke: async (...given) => (sent.push(given), reply) } };
  return sent;
}

function inBrowser(reply) {
  const sent = [];
  globalThis.fetch = async (address, request) => (sent.push([address, request]), { text: async () => reply });
  return sent;
}

test("in the window a command goes over the bridge as one line", async () => {
  const sent = inWindow('{"ok":{"locked":true}}');
  assert.deepEqual(await ask("hello"), { locked: true });
  assert.deepEqual(sent, [["command", { line: '{"do":"hello"}' }]]);
});

test("in a browser the same line is posted to our own origin with its cookie", async () => {
  const sent = inBrowser('{"ok":{}}');
  await ask("walk_answer", { question: "back", answer: { pain: 3 } });
  const [address, request] = sent[0];
  assert.equal(address, "/command");
  assert.equal(request.method, "POST");
  assert.equal(request.credentials, "same-origin");
  assert.equal(request.headers["content-type"], "application/json");
  assert.equal(request.body, '{"do":"walk_answer","question":"back","answer":{"pain":3}}');
});

test("a refusal is thrown with its code, its field and its sentence", async () => {
  inWindow('{"error":{"code":"out_of_range","field":"answer","message":"Type a number from 1 to 42."}}');
  await assert.rejects(ask("walk_answer"), { code: "out_of_range", field: "answer", message: "Type a number from 1 to 42." });
});

test("no reply, half a reply and a reply of another kind are all unreachable", async () => {
  const lost = { code: "unreachable", field: null, message: "" };
  globalThis.fetch = async () => {
    throw new TypeError("no route");
  };
  await assert.rejects(ask("hello"), lost);
  for (const reply of ["", '{"ok":', "<html>", "null", "[]", "{}"]) {
    inWindow(reply);
    await assert.rejects(ask("hello"), lost, reply);
  }
});

const SIZE = { width: 3, height: 2 };
const PIXELS = Uint8Array.from([102, 111, 111, 98, 97, 114]);

test("in the window bytes go over the bridge as they are, with their kind and size beside them", async () => {
  const sent = inWindow('{"ok":{"state":"nothing"}}');
  assert.deepEqual(await take("frame", PIXELS, SIZE), { state: "nothing" });
  assert.deepEqual(sent, [["take", PIXELS, { headers: { "x-kind": "frame", "x-width": "3", "x-height": "2" } }]]);
});

test("on Android, whose bridge carries text only, they go as Base64", async () => {
  Object.defineProperty(globalThis, "navigator", { value: { userAgent: "Mozilla/5.0 (Linux; Android 15)" }, configurable: true });
  const sent = inWindow('{"ok":{"state":"nothing"}}');
  await take("frame", PIXELS, SIZE);
  // RFC 4648, section 10: "foobar".
  assert.deepEqual(sent, [["take", { kind: "frame", width: 3, height: 2, base64: "Zm9vYmFy" }]]);
});

test("a whole frame survives the way to Base64", async () => {
  Object.defineProperty(globalThis, "navigator", { value: { userAgent: "Android" }, configurable: true });
  const sent = inWindow('{"ok":{}}');
  const frame = Uint8Array.from({ length: 720 * 720 }, (_, at) => at % 251);
  await take("frame", frame, { width: 720, height: 720 });
  assert.deepEqual(Buffer.from(sent[0][1].base64, "base64"), Buffer.from(frame));
});

test("in a browser bytes are posted to our own origin as bytes", async () => {
  const sent = inBrowser('{"ok":{"state":"nothing"}}');
  await take("photo", PIXELS);
  const [address, request] = sent[0];
  assert.equal(address, "/take");
  assert.equal(request.method, "POST");
  assert.equal(request.credentials, "same-origin");
  assert.deepEqual(request.headers, { "content-type": "application/octet-stream", "x-kind": "photo", "x-width": "0", "x-height": "0" });
  assert.equal(request.body, PIXELS);
});

test("a refusal of bytes is thrown like any other", async () => {
  inWindow('{"error":{"code":"scan_not_started","field":null,"message":"…"}}');
  await assert.rejects(take("frame", PIXELS, SIZE), { code: "scan_not_started" });
  globalThis.__TAURI__ = { core: { invoke: () => Promise.reject("not allowed") } };
  await assert.rejects(take("frame", PIXELS, SIZE), { code: "unreachable" });
});

test("a file is saved by the window, and left to the browser elsewhere", async () => {
  const sent = inWindow('{"ok":{"path":"/home/x/plan.heft"}}');
  assert.deepEqual(await save("a1"), { path: "/home/x/plan.heft" });
  assert.deepEqual(sent, [["save", { show: "a1" }]]);
  delete globalThis.__TAURI__;
  assert.equal(await save("a1"), null);
});
