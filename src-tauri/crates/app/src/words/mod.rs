//! Every word a person reads: messages in two languages, and numbers, units, dates and reasons in words.
//!
//! Messages are Fluent files under `words/<language>/`, built into the program. Nothing here fails: a
//! message missing in one language is shown in English, and one missing everywhere as its id in brackets.

mod arg;
mod dates;
mod files;
mod format;
mod language;
mod messages;
#[cfg(test)]
mod questions_tests;
mod reasons;

pub use arg::Arg;
pub use format::{KILOGRAMS_PER_POUND, Rounding, Units};
pub use language::Language;
pub use messages::Words;
pub use reasons::{lower_first, message_id, sentence};
