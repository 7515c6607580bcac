//! The app behind its screens: one JSON line in, one JSON line out.
//!
//! [`App::answer`] is the one entry for lines; [`App::take`] takes pictures and files of the scan screen.
//! Clock and randomness come in through [`World`]; words, the judgement, the records and the vault meet here
//! and nowhere else.

mod advice_line;
mod app;
mod backoff;
mod base64;
mod call;
pub mod card;
mod commands;
mod convert;
pub mod demo;
mod device;
mod exchange;
mod failure;
mod moving;
mod report;
mod secret;
mod sentences;
mod session;
mod taken;
mod use_cases;
mod walk;
pub mod words;
mod world;

pub use app::{App, AppError};
pub use commands::command_names;
pub use sentences::Sentences;
pub use taken::{LONGEST_FILE, LONGEST_JSON, Taken};
pub use world::{RandomnessError, SystemWorld, World};
