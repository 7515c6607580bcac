// The one file that talks to Rust: the window's bridge, or a post in a browser.
import assert from "node:assert/strict";
import { afterEach, test } from "node:test";
import { ask } from "../../ui/backend.js";

const realFetch = globalThis.fetch;

afterEach(() => {
  delete globalThis.__TAURI__;
  globalThis.fetch = realFetch;
});

function inWindow(reply) {
  const sent = [];
  globalThis.__TAURI__ = { core: { invoke: async (command, body) => (sent.push([command, body]), reply) } };
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
