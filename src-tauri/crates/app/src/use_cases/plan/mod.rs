//! Plans: made from a starting pattern, edited, handed over, followed.

mod bounds;
pub(crate) mod check;
pub(crate) mod fields;
pub(crate) mod following;
pub(crate) mod lines;
pub(crate) mod making;
pub(crate) mod patterns;
pub(crate) mod practice;
mod practice_field;
pub(crate) mod preview;
mod private;
pub(crate) mod set;
pub(crate) mod sheet;
pub(crate) mod ways;
pub(crate) mod wording;
