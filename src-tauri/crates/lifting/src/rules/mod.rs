//! The rules, one set per file, in the order in which they are asked.

pub mod alternatives;
pub mod cautions;
pub mod conditions;
pub mod plan;
pub mod published;
pub mod task;
pub mod warning_signs;
pub mod ways;
pub mod who;
