//! A history that somebody handed over.

use minicbor::{Decode, Encode};

use crate::frame::{Keyed, Record};
use crate::{History, Moment};

/// A history as it was accepted here.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Received {
    /// The history.
    #[n(1)]
    pub history: History,
    /// When it was accepted.
    #[n(2)]
    pub at: Moment,
    /// What its sender was called here at that time; `None`: it came under a code, from nobody verified.
    #[n(3)]
    pub from: Option<String>,
}

impl Record for Received {
    const KIND: u32 = 16;
}

impl Keyed for Received {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=3).contains(key),
            [1, inner @ ..] => History::knows(inner),
            _ => false,
        }
    }
}
