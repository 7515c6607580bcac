// Addresses: which page is where, and which screen an address opens.
import assert from "node:assert/strict";
import { existsSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { ROUTES, backOf, fileOf, findRoute, hashOf, needsUnlock, questionAt } from "../../ui/flow/place.js";

test("an address opens its screen with its parts", () => {
  assert.deepEqual(findRoute("#/walk/mass"), { screen: "question", params: { question: "mass" } });
  assert.deepEqual(findRoute("#/history/12"), { screen: "entry", params: { id: "12" } });
  assert.deepEqual(findRoute("#/morning/12/usual"), { screen: "morning", params: { id: "12", step: "usual" } });
});

test("an address that nobody made opens nothing", () => {
  for (const hash of ["", "#", "#/", "#/nowhere", "#/walk/", "#/walk/mass/x/y", "#/walk/%", "#/history/<b>"]) {
    assert.equal(findRoute(hash), null, hash);
  }
});

test("every page of a walk has an address that opens it again", () => {
  const pages = [
    [{ page: "question", question: { id: "mass" } }, "#/walk/mass", "question"],
    [{ page: "interruption", id: "flare_pain_0" }, "#/ask/flare_pain_0", "interruption"],
    [{ page: "check" }, "#/check", "check"],
    [{ page: "advice" }, "#/advice", "advice"],
    [{ page: "refuse" }, "#/refuse", "refuse"],
    [{ page: "done" }, "#/home", "home"],
  ];
  for (const [page, hash, screen] of pages) {
    assert.equal(hashOf(page), hash);
    assert.equal(findRoute(hash).screen, screen);
  }
});

test("a walk page opened by its address asks for the right question", () => {
  assert.equal(questionAt("#/walk/mass"), "mass");
  assert.equal(questionAt("#/ask/flare_pain_0"), "flare_pain_0");
  assert.equal(questionAt("#/check"), "check");
  assert.equal(questionAt("#/advice"), null);
  assert.equal(questionAt("#/nowhere"), null);
});

test("back leads to the question before, to the check page, or home", () => {
  assert.equal(backOf({ back: "what" }), "#/walk/what");
  assert.equal(backOf({ back: "check" }), "#/check");
  assert.equal(backOf({ back: null }), "#/home");
  assert.equal(backOf({}), "#/home");
});

test("no two screens have the same address", () => {
  const shapes = ROUTES.map(([pattern]) => pattern.replace(/:\w+/g, ":"));
  assert.deepEqual(shapes, [...new Set(shapes)]);
});

test("only start, unlock, the warning signs and what to do when a move goes wrong open while locked", () => {
  const open = new Set(ROUTES.map(([, screen]) => screen).filter((screen) => !needsUnlock(screen)));
  assert.deepEqual([...open].sort(), ["signs", "start", "unlock", "walks/care/stop"]);
});

test("every route has a screen file and every screen file a route", () => {
  const files = readdirSync(new URL("../../ui/screens/", import.meta.url)).map((name) => name.replace(".js", ""));
  const routed = [...new Set(ROUTES.map(([, screen]) => screen))];
  const first = routed.filter((screen) => !screen.startsWith("walks/")).sort();
  assert.deepEqual(files.filter((name) => name !== "error").sort(), first);
  for (const screen of routed) {
    assert.ok(existsSync(new URL(fileOf(screen), new URL("../../ui/router.js", import.meta.url))), screen);
  }
});
