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

/// What takes bytes in: a frame, a photo or a file in, one JSON line out, never a panic.
pub type Take = Arc<dyn Fn(&Handed) -> String + Send + Sync>;

/// Bytes that are handed in, not yet looked at.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Handed {
    /// As they are.
    Raw {
        /// What they are said to be: `frame`, `photo` or `file`.
        kind: String,
        /// Pixels in a row of a frame.
        width: u32,
        /// Rows of a frame.
        height: u32,
        /// The bytes.
        bytes: Vec<u8>,
    },
    /// A JSON object with the same, the bytes as Base64.
    Json(Vec<u8>),
}

/// The longest command line taken, in bytes; the door's own bound.
pub const LONGEST_LINE: usize = 64 * 1024;
