//! What was done, left, and done in spite of the advice; and what was not told.

use super::{Decision, KeptLift};
use crate::way::Way;
use std::collections::BTreeSet;

/// Counts over everything looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Counts {
    /// Entries, lifts and decisions against.
    pub entries: u32,
    /// Lifts that were done.
    pub done: u32,
    /// Left.
    pub left: u32,
    /// Done although the advice was not to lift, or to seek care.
    pub done_against: u32,
    /// Done although the advice was to change something first.
    pub done_unchanged: u32,
    /// Done as it stood, although an aid or help was advised first.
    pub done_without_aid: u32,
    /// Done in another way than the one shown first.
    pub other_way: u32,
    /// Done, and both the way used and the one shown first were told.
    pub way_and_advised: u32,
    /// Days with a flare-up.
    pub flare_days: u32,
    /// Days with an entry.
    pub days: u32,
    /// Done, but pain during or after was not told.
    pub no_pain_during: u32,
    /// Done, but the next morning was not told.
    pub no_next_morning: u32,
    /// Done, but the mass was not known.
    pub no_mass: u32,
    /// Done, but the way was not told.
    pub no_way: u32,
}

pub(super) fn counts(lifts: &[&KeptLift]) -> Counts {
    let count = |is: &dyn Fn(&KeptLift) -> bool| {
        u32::try_from(lifts.iter().filter(|lift| is(lift)).count()).unwrap_or(u32::MAX)
    };
    let done = |is: &dyn Fn(&KeptLift) -> bool| count(&|lift| lift.decision.is_done() && is(lift));
    let days = |is: &dyn Fn(&KeptLift) -> bool| {
        let days: BTreeSet<_> = lifts
            .iter()
            .filter(|lift| is(lift))
            .map(|lift| lift.day)
            .collect();
        u32::try_from(days.len()).unwrap_or(u32::MAX)
    };
    Counts {
        entries: count(&|_| true),
        done: done(&|_| true),
        left: count(&|lift| lift.decision == Decision::Left),
        done_against: count(&|lift| lift.decision == Decision::DoneAgainst),
        done_unchanged: count(&|lift| lift.decision == Decision::DoneUnchanged),
        done_without_aid: count(&|lift| {
            lift.decision == Decision::Done && lift.aid_first == Some(true)
        }),
        other_way: done(&|lift| both_ways(lift).is_some_and(|(used, shown)| used != shown)),
        way_and_advised: done(&|lift| both_ways(lift).is_some()),
        flare_days: days(&|lift| lift.flare),
        days: days(&|_| true),
        no_pain_during: done(&|lift| lift.during.is_none()),
        no_next_morning: done(&|lift| lift.next_morning.is_none()),
        no_mass: done(&|lift| lift.mass.is_none()),
        no_way: done(&|lift| lift.way.is_none()),
    }
}

/// The way used and the one shown first, where both were told.
fn both_ways(lift: &KeptLift) -> Option<(Way, Way)> {
    lift.way.zip(lift.advised)
}
