//! A walk through the questions that is not finished yet.

use minicbor::{Decode, Encode};

use crate::codes::codes;
use crate::frame::{Keyed, Record};
use crate::{Advice, Answered, Moment};

/// Answers so far. Kept after every tap, so that a killed app loses nothing.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Draft {
    /// When it was opened.
    #[n(1)]
    pub opened_at: Moment,
    /// What it leads to.
    #[n(2)]
    pub purpose: DraftPurpose,
    /// Answers, in the order they were given.
    #[n(3)]
    pub answers: Vec<Answered>,
    /// Id of the saved task it started from.
    #[n(4)]
    pub saved_task: Option<i64>,
    /// The advice, once the answers are confirmed.
    #[n(5)]
    pub advice: Option<Advice>,
    /// Text id of the question that is open, when it is not simply the next one.
    #[n(6)]
    pub open_question: Option<String>,
}

impl Record for Draft {
    const KIND: u32 = 8;
}

impl Keyed for Draft {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=6).contains(key),
            [5, inner @ ..] => Advice::knows(inner),
            _ => false,
        }
    }
}

codes! {
    /// What a walk through questions leads to.
    DraftPurpose {
        /// Advice on a lift.
        Lift = 1 "lift",
        /// Only the questions about the person.
        About = 2 "about",
        /// Only the questions about the body today, before somebody is moved.
        Own = 3 "own",
    }
}
