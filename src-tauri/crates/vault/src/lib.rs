//! vault
