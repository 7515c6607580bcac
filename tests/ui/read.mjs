// Reads the files under test. Not a test itself.
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** Every file below ui/ with this ending: `{path, text}`, the path seen from ui/. */
export function uiFiles(ending) {
  return readdirSync(join(ROOT, "ui"), { recursive: true })
    .filter((path) => path.endsWith(ending))
    .map((path) => ({ path, text: readFileSync(join(ROOT, "ui", path), "utf8") }));
}

/** The fixed words of one language, by id. */
export function screenWords(language) {
  const folder = join(ROOT, "src-tauri/crates/app/words", language);
  const files = readdirSync(folder).filter((name) => name.startsWith("screens"));
  const file = files.map((name) => readFileSync(join(folder, name), "utf8")).join("\n");
  const words = new Map();
  let id = null;
  for (const line of file.split("\n")) {
    const start = /^([a-z0-9-]+) = ?(.*)$/.exec(line);
    if (start) {
      id = start[1];
      words.set(id, start[2]);
    } else if (id && /^\s+\S/.test(line)) {
      words.set(id, `${words.get(id)} ${line.trim()}`.trim());
    } else {
      id = null;
    }
  }
  return words;
}
