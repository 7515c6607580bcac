//! What was kept of each lift, as far as a look back needs it.

use crate::naming::named;
use crate::quantity::{Kilograms, PainScore, Repetitions};
use crate::way::Way;

/// A day, counted from any fixed day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Day(i32);

impl Day {
    /// The day with this number.
    #[must_use]
    pub const fn of(number: i32) -> Self {
        Self(number)
    }

    /// Its number.
    #[must_use]
    pub const fn number(self) -> i32 {
        self.0
    }

    /// The day so many days earlier.
    #[must_use]
    pub const fn days_before(self, days: i32) -> Self {
        Self(self.0.saturating_sub(days))
    }

    /// Days from `earlier` to this one; negative if it is later.
    #[must_use]
    pub const fn days_since(self, earlier: Self) -> i32 {
        self.0.saturating_sub(earlier.0)
    }
}

named!(
    /// What came of a lift.
    Decision {
        /// Done, and the advice allowed it as it stood.
        Done = "done",
        /// Done although the advice was to change something first.
        DoneUnchanged = "done_unchanged",
        /// Done although the advice was not to lift, or to seek care.
        DoneAgainst = "done_against",
        /// Left.
        Left = "left",
    }
);

impl Decision {
    /// Whether something was lifted.
    #[must_use]
    pub const fn is_done(self) -> bool {
        !matches!(self, Self::Left)
    }
}

/// One lift, or a decision against one. `None` is "not told", never zero.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct KeptLift {
    /// When.
    pub day: Day,
    /// What came of it.
    pub decision: Decision,
    /// Mass of the load.
    pub mass: Option<Kilograms>,
    /// How many times.
    pub times: Repetitions,
    /// The way used.
    pub way: Option<Way>,
    /// The way that was shown first.
    pub advised: Option<Way>,
    /// Whether an aid or help was advised first.
    pub aid_first: Option<bool>,
    /// Back pain before it, on that day.
    pub before: Option<PainScore>,
    /// Worst pain during or just after.
    pub during: Option<PainScore>,
    /// Pain the next morning.
    pub next_morning: Option<PainScore>,
    /// Whether it was a flare-up day.
    pub flare: bool,
}
