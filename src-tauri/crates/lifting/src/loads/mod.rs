//! What a posture costs the joints.
//!
//! `docs/method/loads.md` gives the equations, the numbered deviations and the limits.

pub mod exposure;
pub mod lift;
pub mod peak;
pub mod spine;
pub mod statics;
pub mod summary;
pub mod support;
