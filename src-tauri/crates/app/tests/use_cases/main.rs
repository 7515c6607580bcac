//! What the app does, told as examples: named phones, a clock that stands still until it is moved, and
//! randomness that only counts.
#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

mod answers;
mod care;
mod demo;
mod departures;
mod drafts;
mod first_start;
mod handoff;
mod history;
mod keep;
mod lines;
mod morning;
mod passphrase;
mod patients;
mod phone;
mod random_walks;
mod report;
mod saved;
mod script;
mod settings;
mod sheet;
mod signs;
mod tap_budget;
mod unlock;
mod walk;
