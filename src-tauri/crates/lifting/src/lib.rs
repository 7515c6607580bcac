//! lifting
