/** Reads steps aloud, on devices that can speak. Elsewhere there is no button. */
import { button } from "../../make.js";
import { session } from "../../session.js";
import { say } from "../../words.js";

/** The button, or null where the device has no voice. */
export function readAloud(lines) {
  const voice = globalThis.speechSynthesis;
  if (!voice || !globalThis.SpeechSynthesisUtterance || lines.length === 0) {
    return null;
  }
  const node = button(say("screen-care-read"), "second", () => {
    const speaking = voice.speaking;
    voice.cancel();
    if (speaking) {
      node.textContent = say("screen-care-read");
      return;
    }
    for (const [at, text] of lines.entries()) {
      const line = new SpeechSynthesisUtterance(text);
      line.lang = session.language;
      line.rate = 0.9;
      line.onend = at === lines.length - 1 ? () => { node.textContent = say("screen-care-read"); } : null;
      voice.speak(line);
    }
    node.textContent = say("screen-care-read-stop");
  }, { id: "read-aloud" });
  window.addEventListener("hashchange", () => voice.cancel(), { once: true });
  return node;
}
