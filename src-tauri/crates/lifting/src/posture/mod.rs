//! How a body gets down to a load: a planar linked-segment figure, solved for each way.
//!
//! `docs/method/posture.md` gives the equations and the limits: planar, quasi-static, healthy geometry.

pub mod fit;
pub mod geometry;
mod least_squares;
pub mod path;
pub mod signature;
pub mod skeleton;
pub mod solve;
pub mod stance;
