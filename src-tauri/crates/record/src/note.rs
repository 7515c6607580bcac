//! Something typed that is kept here and nowhere else.

use minicbor::{Decode, Encode};

use crate::Moment;
use crate::frame::{Keyed, Record};

/// A note. It stays on this device: nothing that is handed over or taken out holds one.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Note {
    /// When it was typed.
    #[n(1)]
    pub at: Moment,
    /// The text.
    #[n(2)]
    pub text: String,
}

impl Record for Note {
    const KIND: u32 = 24;
}

impl Keyed for Note {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=2])
    }
}
