//! The judgement: which way of lifting suits this body, this load and this day, and why.
//!
//! Pure: no input or output, no clock, no randomness, no other crate of ours. The same request always
//! gets the same advice. Start at [`advise::advise`].

pub mod advise;
pub mod body;
pub mod energy;
pub mod limits;
pub mod loads;
mod naming;
pub mod plan;
pub mod posture;
pub mod progress;
pub mod quantity;
pub mod reason;
pub mod review;
pub mod rules;
pub mod task;
pub mod transfer;
pub mod way;
