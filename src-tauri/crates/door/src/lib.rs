//! door
