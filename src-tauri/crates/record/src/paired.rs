//! A device that this one is paired with.

use minicbor::{Decode, Encode};

use crate::codes::codes;
use crate::frame::{Keyed, Record};
use crate::{Identity, Moment, SecretBytes};

/// A pairing that both people agreed to.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Paired {
    /// What it is told apart by; the same on both devices, known to nobody else.
    #[n(1)]
    pub id: Identity,
    /// The pairing itself, as the hand-off writes it.
    #[n(2)]
    pub pairing: SecretBytes,
    /// What the other is called here: the name on their card, or one the holder chose.
    #[n(3)]
    pub name: String,
    /// When both agreed.
    #[n(4)]
    pub since: Moment,
}

impl Record for Paired {
    const KIND: u32 = 12;
}

impl Keyed for Paired {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=4])
    }
}

codes! {
    /// What a parcel carries.
    ParcelPurpose {
        /// A plan for a person who lifts.
        Plan = 1 "plan",
        /// A history for whoever made the plan.
        History = 2 "history",
        /// A plan for helping somebody else move.
        CarePlan = 3 "care_plan",
    }
}
