//! The same commands as in the phone app, without a window; for tests, tools and machines
//! without a screen. Nothing here is part of the phone app.
//!
//! - [`lines`]: one JSON line in on stdin, one JSON line out on stdout.
//! - [`web`] (feature `app`): the app's page in a browser on this machine only.

pub mod arguments;
pub mod lines;
#[cfg(feature = "app")]
pub mod web;

use std::sync::Arc;

/// What answers a command: one JSON line in, one JSON line out, never a panic.
pub type Answer = Arc<dyn Fn(&str) -> String + Send + Sync>;

/// The longest command line taken, in bytes; the door's own bound.
pub const LONGEST_LINE: usize = 64 * 1024;
