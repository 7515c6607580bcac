//! A day of the calendar.

use minicbor::{Decode, Encode};

/// Days since 1970-01-01, by the calendar of whoever wrote it; may be negative.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Encode, Decode)]
#[cbor(transparent)]
pub struct Day(#[n(0)] pub i32);
