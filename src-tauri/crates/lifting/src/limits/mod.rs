//! Published limits for healthy adults: one file or folder per method.

pub mod hse;
pub mod niosh;
mod pace;

pub use pace::{Hours, PerMinute};
