//! Checks of the judgement from outside. This library holds what the checks share: the laws every advice
//! must keep, the documented grid they are swept over, and requests that read like sentences.

pub mod any;
pub mod example;
pub mod grid;
pub mod laws;
pub mod moving;
pub mod moving_grid;
pub mod moving_laws;
