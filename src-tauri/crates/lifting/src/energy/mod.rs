//! What a run of lifts costs in energy.
//!
//! The prediction equations are those of Garg, Chaffin & Herrin 1978 (source `garg_1978`, from memory and not
//! verified): they are used for direction and ratio only, in the ranking and beside the figure.

pub mod limits;
pub mod predicted;
pub mod work;
