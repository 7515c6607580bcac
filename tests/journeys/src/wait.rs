//! Waiting for something to become true, with a limit. No journey waits for a fixed time.

use std::time::{Duration, Instant};

/// How long a screen, a process or a file may take to come; far more than it should.
pub const LIMIT: Duration = Duration::from_secs(30);
const PAUSE: Duration = Duration::from_millis(20);

/// Asks again and again until there is a value; `None` when `limit` has passed.
#[allow(
    clippy::disallowed_methods,
    reason = "the thing waited for is in another process and sends no event"
)]
pub fn until<T>(limit: Duration, mut ask: impl FnMut() -> Option<T>) -> Option<T> {
    let end = Instant::now() + limit;
    loop {
        if let Some(value) = ask() {
            return Some(value);
        }
        if Instant::now() > end {
            return None;
        }
        std::thread::sleep(PAUSE);
    }
}
