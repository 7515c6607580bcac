//! A warning sign that was raised, and who cleared it.

use minicbor::{Decode, Encode};

use crate::Moment;
use crate::codes::codes;
use crate::frame::{Keyed, Record};

/// A warning sign. Until it is cleared there is no advice on how to lift around it.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct OpenSign {
    /// Text id of the sign, such as `fever_unwell`.
    #[n(1)]
    pub sign: String,
    /// When it was raised.
    #[n(2)]
    pub raised_at: Moment,
    /// When and by whom it was cleared; `None` while it is open.
    #[n(3)]
    pub cleared: Option<Cleared>,
}

/// How a sign was cleared.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Cleared {
    /// When.
    #[n(1)]
    pub at: Moment,
    /// By whom.
    #[n(2)]
    pub by: ClearedBy,
}

impl Record for OpenSign {
    const KIND: u32 = 9;
}

impl Keyed for OpenSign {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=3] | [3, 1..=2])
    }
}

codes! {
    /// Who cleared a sign.
    ClearedBy {
        /// The user.
        Me = 1 "me",
        /// A clinician.
        Clinician = 2 "clinician",
    }
}
