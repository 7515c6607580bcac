//! A history on its way to whoever made the plan: small, since it goes through a screen.
//!
//! Lifts and looks back are lists with fixed places instead of maps, times are minutes since the entry
//! before, and texts stand once in a list and are pointed at. A place whose answer is missing holds 0.

mod entry;
mod practice;

use minicbor::{Decode, Encode};

use crate::frame::{Keyed, Record};
use crate::{Day, Identity, Moment};

pub use entry::{HistoryLift, LookBack, SignRaised};
pub use practice::HistoryPractice;

/// What a person did and how it went, over some time.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct History {
    /// Whose it is, by their own name.
    #[n(1)]
    pub from: String,
    /// When it was put together.
    #[n(2)]
    pub made_at: Moment,
    /// The first day that was asked for; `None`: from the beginning.
    #[n(3)]
    pub since: Option<Day>,
    /// Whether names of things go along.
    #[n(4)]
    pub with_notes: bool,
    /// The plan that is followed, if there is one.
    #[n(5)]
    pub plan: Option<PlanVersion>,
    /// Minutes since 1970-01-01T00:00Z from which the first lift's minutes count.
    #[n(6)]
    pub start_min: i64,
    /// Lifts done and decided against, oldest first.
    #[n(7)]
    pub lifts: Vec<HistoryLift>,
    /// Warning signs that were raised, oldest first.
    #[n(8)]
    pub signs: Vec<SignRaised>,
    /// Texts and text ids that are pointed at, counted from 1.
    #[n(9)]
    pub words: Vec<String>,
    /// The log of the plan, oldest first; `None`: nothing in it, or put together by a version without one.
    #[n(10)]
    pub practice: Option<Vec<HistoryPractice>>,
}

/// One version of one plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct PlanVersion {
    /// The plan.
    #[n(1)]
    pub id: Identity,
    /// Its version.
    #[n(2)]
    pub version: u32,
}

impl History {
    /// The text that a place points at; `None` for 0 and for a text that is not there.
    #[must_use]
    pub fn word(&self, at: u32) -> Option<&str> {
        let at = usize::try_from(at.checked_sub(1)?).ok()?;
        self.words.get(at).map(String::as_str)
    }
}

impl Record for History {
    const KIND: u32 = 15;
}

impl Keyed for History {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=10).contains(key),
            [5, key] => (1..=2).contains(key),
            _ => false,
        }
    }
}
