//! Helping others move.

pub(crate) mod own;
