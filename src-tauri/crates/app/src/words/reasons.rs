//! Reasons in words.
