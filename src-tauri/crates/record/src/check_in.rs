//! How it felt: during, after, next morning.

use minicbor::{Decode, Encode};

use crate::codes::codes;
use crate::frame::{Keyed, Record};
use crate::{Moment, Pain};

/// One look back at a lift.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct CheckIn {
    /// Which look back.
    #[n(1)]
    pub kind: CheckInKind,
    /// When it was answered.
    #[n(2)]
    pub at: Moment,
    /// Pain, if it was told.
    #[n(3)]
    pub pain: Option<Pain>,
    /// Back to usual, if it was told.
    #[n(4)]
    pub back_to_usual: Option<BackToUsual>,
    /// The question was shown and passed over.
    #[n(5)]
    pub skipped: bool,
}

impl Record for CheckIn {
    const KIND: u32 = 7;
}

impl Keyed for CheckIn {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=5])
    }
}

codes! {
    /// Which look back.
    CheckInKind {
        /// Worst while lifting.
        During = 1 "during",
        /// Just after.
        After = 2 "after",
        /// The next morning.
        NextMorning = 3 "next_morning",
    }
}

codes! {
    /// Whether things are back to usual.
    BackToUsual {
        /// Yes.
        Yes = 1 "yes",
        /// No.
        No = 2 "no",
        /// Not sure.
        NotSure = 3 "not_sure",
    }
}
