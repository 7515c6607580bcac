/** Start: meets Rust, fetches the words, then hands over to the router. */
import { guardDoubleTaps } from "./frame.js";
import { session, meet, watchLock } from "./session.js";
import { lockedOut, startRouter } from "./router.js";
import "./parts/page-bar/page-bar.js";

// Fetched while Rust answers. What fails here shows when it is opened.
for (const first of ["start", "unlock"]) {
  import(`./screens/${first}.js`).catch(() => null);
}
boot();

async function boot() {
  try {
    await meet();
  } catch {
    document.getElementById("stuck").hidden = false;
    return;
  }
  guardDoubleTaps();
  watchLock(lockedOut);
  startRouter(session.first_start ? "#/start" : "#/home");
}
