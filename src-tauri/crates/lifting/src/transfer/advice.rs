//! What the judgement on moving a person answers.

use super::checks::{Check, StopSign};
use super::equipment::Equipment;
use super::limit::ManualLimit;
use super::way::PeopleWay;
use crate::advise::advice::{Alternative, Caution, HowSoon, Urgency};
use crate::reason::{Reason, ReasonId};

/// A way that serves, with what it takes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Offer {
    /// The way.
    pub way: PeopleWay,
    /// Workers whose hands it takes; 0 is stand by.
    pub workers: u32,
    /// Equipment it takes; all of it is there.
    pub equipment: Vec<Equipment>,
}

/// Ways in order of rank: there is always a first.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Offers {
    /// The way offered first.
    pub first: Offer,
    /// Others that serve, best first.
    pub others: Vec<Offer>,
}

impl Offers {
    /// From a list, best first. `None` when it is empty.
    #[must_use]
    pub fn from_list(list: Vec<Offer>) -> Option<Self> {
        let mut list = list.into_iter();
        let first = list.next()?;
        Some(Self {
            first,
            others: list.collect(),
        })
    }

    /// All of them, best first.
    pub fn iter(&self) -> impl Iterator<Item = &Offer> {
        std::iter::once(&self.first).chain(&self.others)
    }
}

/// Whether the office must hear of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Tell {
    /// Nobody needs to be told.
    Nobody,
    /// Tell the office.
    Office,
    /// Tell the office today, before anything else.
    OfficeToday,
}

/// The one outcome.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum MoveOutcome {
    /// If the worker chooses to go ahead, these ways. Never a clearance.
    GoAhead {
        /// Ways left, ranked.
        ways: Offers,
    },
    /// Not now, not as things are.
    DoNotMove {
        /// Who has to hear of it.
        tell: Tell,
    },
    /// A warning sign, of the person or the worker.
    SeekCare {
        /// How soon.
        how_soon: HowSoon,
    },
    /// We cannot advise this worker; others can.
    Refuse,
}

impl MoveOutcome {
    /// The wire id, the same as for lifting a thing.
    #[must_use]
    pub const fn id(&self) -> &'static str {
        match self {
            Self::GoAhead { .. } => "lift",
            Self::DoNotMove { .. } => "do_not_lift",
            Self::SeekCare { .. } => "seek_care",
            Self::Refuse => "refuse",
        }
    }

    /// How soon somebody should be told or seen.
    #[must_use]
    pub const fn urgency(&self) -> Urgency {
        match self {
            Self::SeekCare {
                how_soon: HowSoon::Emergency,
            } => Urgency::Emergency,
            Self::SeekCare {
                how_soon: HowSoon::SameDay,
            }
            | Self::DoNotMove {
                tell: Tell::OfficeToday,
            } => Urgency::SameDay,
            Self::Refuse | Self::DoNotMove { tell: Tell::Office } => Urgency::Routine,
            Self::GoAhead { .. } | Self::DoNotMove { tell: Tell::Nobody } => Urgency::None,
        }
    }

    /// What is offered, best first; empty for every outcome that offers nothing.
    #[must_use]
    pub fn offers(&self) -> Vec<&Offer> {
        match self {
            Self::GoAhead { ways } => ways.iter().collect(),
            Self::DoNotMove { .. } | Self::SeekCare { .. } | Self::Refuse => Vec::new(),
        }
    }

    /// How permissive it is, on the same scale as for lifting a thing: 3 go ahead, 1 do not, 0 no advice.
    #[must_use]
    pub const fn permissiveness(&self) -> u8 {
        match self {
            Self::GoAhead { .. } => 3,
            Self::DoNotMove { .. } => 1,
            Self::SeekCare { .. } | Self::Refuse => 0,
        }
    }
}

/// A way that may not be used now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MoveRuledOut {
    /// The way.
    pub way: PeopleWay,
    /// Why; never empty.
    pub because: Vec<ReasonId>,
}

/// The whole answer.
#[derive(Debug, Clone, PartialEq)]
pub struct MoveAdvice {
    /// What to do.
    pub outcome: MoveOutcome,
    /// Ways that may not be used, with reasons.
    pub ruled_out: Vec<MoveRuledOut>,
    /// What to heed, most serious first.
    pub cautions: Vec<Caution>,
    /// What else to do, in the order to offer it.
    pub alternatives: Vec<Alternative>,
    /// Every reason met on the way, in order of authority.
    pub reasons: Vec<Reason>,
    /// Before the first way offered: look at these. Empty when no way is offered.
    pub checks: Vec<Check>,
    /// When to stop, lower and call. Empty when no way is offered.
    pub stop_signs: &'static [StopSign],
    /// How much one worker may take by hand; absent when no way was judged.
    pub limit: Option<ManualLimit>,
}
