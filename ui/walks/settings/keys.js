/** What asks for the passphrase though the notes are open: a new one, and erasing everything. */
import { ask } from "../../backend.js";
import { heading, para } from "../../make.js";
import { passForm } from "../../pass-form.js";
import { swap } from "../../router.js";
import { session } from "../../session.js";
import { say } from "../../words.js";

export function show({ what }) {
  return what === "erase" ? erase() : change();
}

function change() {
  const fields = [
    { id: "old", label: say("screen-pass-old") },
    { id: "new", label: say("screen-pass-new"), hint: say("screen-pass-new-hint"), fresh: true },
    { id: "again", label: say("screen-pass-again"), fresh: true },
  ];
  return screen(say("screen-pass-change"), [say("screen-private-lost")], fields, "keep", async (typed) => {
    await ask("passphrase_change", typed);
    session.notice = { text: say("screen-pass-changed"), undo: null };
    swap("#/home");
  });
}

function erase() {
  const fields = [{ id: "passphrase", label: say("screen-pass-label") }];
  const lost = [say("screen-erase-lost"), say("screen-erase-final")];
  return screen(say("screen-erase-title"), lost, fields, "erase", async (typed) => {
    await ask("erase_everything", typed);
    // Started anew, so that nothing of the old notes is left in memory; without notes that leads to the first page. No
    // address is opened before: doing so can take the place of starting anew.
    location.reload();
  });
}

function screen(title, texts, fields, id, send) {
  const above = [heading(title), texts.map((text) => para(text))];
  return { title, back: "#/settings", body: [passForm(fields, { above, label: title, id }, send)] };
}
