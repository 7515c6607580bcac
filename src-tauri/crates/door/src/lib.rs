//! The wire: one JSON object a line in, one a line out, for the commands that need no vault.
//!
//! A line is bounded, taken apart without letting a key stand twice ([`parse_line`]), and read into the
//! command's own type with the path kept ([`read`]). Failures are a stable [`ErrorCode`], a field and a
//! sentence made from both; no value reaches an error.

mod error;
mod line;
mod path;
mod read;

pub use error::{DoorError, ErrorCode, ok_line};
pub use line::{COMMAND_FIELD, MAX_DEPTH, MAX_LINE_BYTES, Parsed, parse_line};
pub use read::read;
