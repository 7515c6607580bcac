//! A plan that came from somebody and was taken up.

use minicbor::{Decode, Encode};

use crate::frame::{Keyed, Record};
use crate::{Identity, Moment, Plan};

/// One version of a plan as it was accepted here.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Followed {
    /// The plan.
    #[n(1)]
    pub plan: Plan,
    /// When it was accepted.
    #[n(2)]
    pub at: Moment,
    /// The pairing it came through; `None`: under a code, and who sealed it is not verified.
    #[n(3)]
    pub pairing: Option<Identity>,
    /// What its sender was called here at that time.
    #[n(4)]
    pub from: Option<String>,
    /// When the holder stopped following it.
    #[n(5)]
    pub stopped_at: Option<Moment>,
}

impl Record for Followed {
    const KIND: u32 = 14;
}

impl Keyed for Followed {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=5).contains(key),
            [1, inner @ ..] => Plan::knows(inner),
            _ => false,
        }
    }
}
