//! A shift: its entries are handed over together, and may be erased afterwards.

use minicbor::{Decode, Encode};

use crate::Moment;
use crate::frame::{Keyed, Record};

/// One shift of moving people.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Shift {
    /// When its first entry was kept.
    #[n(1)]
    pub began_at: Moment,
    /// When the user said that it was handed over.
    #[n(2)]
    pub handed_at: Option<Moment>,
    /// What was erased of it, if anything was.
    #[n(3)]
    pub erased: Option<Erased>,
}

impl Record for Shift {
    const KIND: u32 = 20;
}

impl Keyed for Shift {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=3).contains(key),
            [3, inner @ ..] => Erased::knows(inner),
            _ => false,
        }
    }
}

/// How many entries of each kind were erased: the count stays when the entries go.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Erased {
    /// When, for the last time.
    #[n(1)]
    pub at: Moment,
    /// Moves that were done or left.
    #[n(2)]
    pub plain: u32,
    /// Near misses and refusals.
    #[n(3)]
    pub proofs: u32,
}

impl Keyed for Erased {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=3])
    }
}
