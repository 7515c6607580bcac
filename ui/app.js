/** Start: meets Rust, fetches the words, then hands over to the router. */
import { guardDoubleTaps } from "./frame.js";
import { session, meet, watchLock } from "./session.js";
import { lockedOut, startRouter } from "./router.js";
import "./parts/page-bar/page-bar.js";

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
