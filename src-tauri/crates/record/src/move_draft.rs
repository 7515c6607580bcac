//! A walk before a move that is not finished.

use minicbor::{Decode, Encode};

use crate::frame::{Keyed, Record};
use crate::{Answered, Moment};

/// The open walk before moving somebody.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct MoveDraft {
    /// When it was begun.
    #[n(1)]
    pub opened_at: Moment,
    /// Number of the care person.
    #[n(2)]
    pub person: i64,
    /// Text id of the move.
    #[n(3)]
    pub what: String,
    /// Answers given in this walk.
    #[n(4)]
    pub answers: Vec<Answered>,
    /// Text id of the question that was opened again.
    #[n(5)]
    pub open_question: Option<String>,
}

impl Record for MoveDraft {
    const KIND: u32 = 21;
}

impl Keyed for MoveDraft {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=5])
    }
}
