//! Helping others move: people, the walk before a move, the log, and the shift.

pub(crate) mod log;
pub(crate) mod own;
pub(crate) mod people;
pub(crate) mod plan;
pub(crate) mod sending;
pub(crate) mod shift;
pub(crate) mod standing;
pub(crate) mod taking;
pub(crate) mod trained;
pub(crate) mod walk;
pub(crate) mod worker;
