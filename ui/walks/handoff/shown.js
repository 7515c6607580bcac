/** What is being shown now: sealed by Rust, held there under an id, ended when its page is left. */
import { ask } from "../../backend.js";

let now = null;

/** What is shown: the reply of `show`, and what was asked for. null if nothing is. */
export function showing() {
  return now;
}

/** Seals what was chosen and starts to show it. What was shown before is ended. */
export async function startShowing(asked, density = "normal") {
  await endShowing();
  now = { ...(await ask("show", { ...asked, density })), asked, density };
  return now;
}

/** Ends it; nothing can be read off the screen any more. */
export async function endShowing() {
  const last = now;
  now = null;
  if (last) {
    // A vault that locked itself has ended it already.
    await ask("show_end", { show: last.show }).catch(() => {});
  }
}

/** Fetches symbols of what is shown. */
export async function fetchSymbols(from, count) {
  const { symbols } = await ask("show_frames", { show: now.show, from, count });
  return symbols;
}
