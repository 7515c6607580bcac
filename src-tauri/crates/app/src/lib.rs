//! app

pub mod card;
pub mod words;
