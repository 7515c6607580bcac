//! What is shown of an advice, and the page of warning signs: every text resolved, nothing left to look up.
//!
//! The shapes are the replies' own; `docs/commands.md` documents them.

mod build;
mod care;
mod changes;
mod given;
mod model;
mod reasons;
mod signs;
mod ways;
mod why;

pub use build::{Reader, card};
pub use given::Given;
pub use model::{AdviceCard, CardChange, CardReason, CardRuledOut, CardWay, IdText};
pub(crate) use reasons::one as reason;
pub use signs::{SignGroup, SignsPage, signs_page};

/// Which rules gave an advice. Kept with it, so that an old advice can be understood later.
pub const RULE_VERSION: &str = env!("CARGO_PKG_VERSION");
