//! What hurts today, and what the body can do.

use minicbor::{Decode, Encode};

use crate::codes::codes;
use crate::frame::{Keyed, Record};
use crate::{Moment, Pain};

/// The body today. `None` means not asked, never zero and never "no".
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct BodyToday {
    /// When it was answered.
    #[n(1)]
    pub at: Moment,
    /// Pain in the back now.
    #[n(2)]
    pub back: Option<Pain>,
    /// How the back behaves.
    #[n(3)]
    pub back_state: Option<BackState>,
    /// Pain in the left knee now.
    #[n(4)]
    pub knee_left: Option<Pain>,
    /// Pain in the right knee now.
    #[n(5)]
    pub knee_right: Option<Pain>,
    /// Pain in the left hip now.
    #[n(6)]
    pub hip_left: Option<Pain>,
    /// Pain in the right hip now.
    #[n(7)]
    pub hip_right: Option<Pain>,
    /// Pain in the shoulders now, the worse of the two.
    #[n(8)]
    pub shoulders: Option<Pain>,
    /// Balance.
    #[n(9)]
    pub balance: Option<Balance>,
    /// Able to kneel.
    #[n(10)]
    pub kneel: Option<Kneel>,
    /// Warning signs that are new or worse, as text ids. An empty list: asked, none.
    #[n(11)]
    pub signs: Option<Vec<String>>,
}

impl Record for BodyToday {
    const KIND: u32 = 2;
}

impl Keyed for BodyToday {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=11])
    }
}

codes! {
    /// How the back behaves today.
    BackState {
        /// No surprises.
        Steady = 1 "steady",
        /// Catches without warning.
        Volatile = 2 "volatile",
        /// In a flare-up.
        Flare = 3 "flare",
    }
}

codes! {
    /// Balance today.
    Balance {
        /// Good.
        Good = 1 "good",
        /// Fair.
        Fair = 2 "fair",
        /// Poor.
        Poor = 3 "poor",
        /// Asked, and not known.
        Unknown = 4 "unknown",
    }
}

codes! {
    /// Able to kneel.
    Kneel {
        /// On either side.
        Yes = 1 "yes",
        /// On one side only.
        OneSide = 2 "one_side",
        /// No.
        No = 3 "no",
        /// Asked, and not known.
        Unknown = 4 "unknown",
    }
}
