//! Checks of the judgement from outside. This library holds what the checks share: the laws every advice
//! must keep, and the documented grid they are swept over.

pub mod any;
pub mod grid;
pub mod laws;
