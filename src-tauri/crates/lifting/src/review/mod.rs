//! The look back: what the kept lifts and answers say at follow-up.
//!
//! Numbers only, and "not enough yet" where there are too few; words and charts are for others. Everything
//! here describes what was noted. None of it shows a cause, and none of it is a limit.

pub(crate) mod change;
mod counts;
mod exposure;
mod kept;
mod response;
pub(crate) mod robust;
mod series;
mod variety;

pub use change::{Change, Verdict};
pub use counts::Counts;
pub use exposure::{KilogramsLifted, Week};
pub use kept::{Day, Decision, KeptLift};
pub use response::Response;
pub use series::{Pain, PainKind, Trend};
pub use variety::{Evenness, Variety};

/// A figure, or how far it is from being one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Enough<T> {
    /// There is enough to say it.
    Yes(T),
    /// Not enough yet.
    NotYet(NotYet),
}

/// What is missing for a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NotYet {
    /// More days with what is needed, or days farther apart.
    Days {
        /// Days there are.
        have: u32,
        /// Days that are needed.
        need: u32,
    },
    /// Days enough, but the values are so alike that no interval can be given.
    TooAlike,
}

/// Everything the history says.
#[derive(Debug, Clone, PartialEq)]
pub struct Review {
    /// Pain before, during and the morning after.
    pub pain: Vec<Pain>,
    /// What was lifted, week by week, oldest first; weeks with nothing are there too.
    pub weeks: Vec<Week>,
    /// How often each way was used, and how evenly.
    pub variety: Variety,
    /// What was done, left, and done in spite of the advice; what was not told.
    pub counts: Counts,
    /// The day's heaviest load against the pain of the next morning.
    pub response: Enough<Response>,
}

/// Days that trends look back: twelve weeks. House rule.
pub const WINDOW_DAYS: i32 = 84;

/// Looks back from `until` (that day included). Trends use the last [`WINDOW_DAYS`]; weeks and counts use
/// everything given. Lifts after `until` are left out.
#[must_use]
pub fn look_back(lifts: &[KeptLift], until: Day) -> Review {
    let all: Vec<&KeptLift> = lifts.iter().filter(|lift| lift.day <= until).collect();
    let since = until.days_before(WINDOW_DAYS - 1);
    let recent: Vec<&KeptLift> = all
        .iter()
        .copied()
        .filter(|lift| lift.day >= since)
        .collect();
    Review {
        pain: PainKind::ALL
            .iter()
            .map(|kind| series::pain(*kind, &recent))
            .collect(),
        weeks: exposure::weeks(&all, until),
        variety: variety::variety(&all),
        counts: counts::counts(&all),
        response: response::response(&recent),
    }
}
