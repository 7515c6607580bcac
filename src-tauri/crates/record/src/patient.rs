//! Somebody whom a clinician treats.

use minicbor::{Decode, Encode};

use crate::frame::{Keyed, Record};
use crate::{Day, Identity, Moment};

/// A patient, by the name they have here. Stays on this device.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Patient {
    /// What they are called here: never who they are.
    #[n(1)]
    pub alias: String,
    /// When they were put on the list.
    #[n(2)]
    pub since: Moment,
    /// The pairing of their phone, if one is known.
    #[n(3)]
    pub pairing: Option<Identity>,
    /// When something last came from them or was handed to them.
    #[n(4)]
    pub seen_at: Option<Moment>,
    /// When the plan that was last handed over is to be looked at again.
    #[n(5)]
    pub review_on: Option<Day>,
}

impl Record for Patient {
    const KIND: u32 = 23;
}

impl Keyed for Patient {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=5])
    }
}
