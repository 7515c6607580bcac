//! One entry of the log of moving people.

use minicbor::{Decode, Encode};

use crate::codes::codes;
use crate::frame::{Keyed, Record};
use crate::{Moment, Outcome};

/// A move that was done, left, refused, or that nearly went wrong. The user's own body is not in it.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct MoveEntry {
    /// When it was kept.
    #[n(1)]
    pub at: Moment,
    /// Number of the care person.
    #[n(2)]
    pub person: i64,
    /// The code of that day, which stays readable when the person is removed.
    #[n(3)]
    pub code: String,
    /// Text id of the move.
    #[n(4)]
    pub what: String,
    /// What became of it.
    #[n(5)]
    pub result: MoveResult,
    /// The advice that was shown, if one was.
    #[n(6)]
    pub outcome: Option<Outcome>,
    /// Text id of the way used.
    #[n(7)]
    pub way: Option<String>,
    /// Workers who did it.
    #[n(8)]
    pub workers: Option<u32>,
    /// Text ids of the equipment used.
    #[n(9)]
    pub equipment: Vec<String>,
    /// Text ids of what helped.
    #[n(10)]
    pub helped: Vec<String>,
    /// Text ids of the signs to stop that were seen.
    #[n(11)]
    pub signs: Vec<String>,
    /// The text for the office as it was shown, word for word.
    #[n(12)]
    pub report: Option<String>,
    /// How the text left.
    #[n(13)]
    pub told: Option<Told>,
    /// Version of the rules behind the advice.
    #[n(14)]
    pub rule_version: String,
}

impl Record for MoveEntry {
    const KIND: u32 = 19;
}

impl Keyed for MoveEntry {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=14])
    }
}

codes! {
    /// What became of a move.
    MoveResult {
        /// Done.
        Done = 1 "done",
        /// Not done, for now.
        NotDone = 2 "not_done",
        /// It nearly went wrong.
        NearMiss = 3 "near_miss",
        /// Refused, with a reason that the office hears.
        Refused = 4 "refused",
    }
}

impl MoveResult {
    /// Whether it proves that somebody asked, stopped or was nearly hurt: never erased without a word.
    #[must_use]
    pub const fn is_proof(self) -> bool {
        matches!(self, Self::NearMiss | Self::Refused)
    }
}

codes! {
    /// How a text left the app.
    Told {
        /// Copied by the user.
        Copied = 1 "copied",
        /// Handed to another app by the user.
        Shared = 2 "shared",
        /// Told in person or by phone.
        Said = 3 "said",
    }
}
