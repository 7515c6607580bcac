//! app

pub mod words;
