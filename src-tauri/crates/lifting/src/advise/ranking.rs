//! Step 6. Trade rules first, then variety, then the order in which the ways are listed.

use super::advice::Ranked;
use super::request::RecentUse;
use crate::reason::{Reason, ReasonId, Value};
use crate::rules::ways::Verdict;
use crate::way::Way;

/// Ways in order, and those that yielded for variety.
#[derive(Debug, Clone)]
pub(crate) struct Ranking {
    pub(crate) ways: Option<Ranked>,
    pub(crate) yielded: Vec<Reason>,
}

/// Ranks the usable ways. `None` when none of them may come first.
pub(crate) fn rank(verdicts: &[Verdict], recent: &RecentUse) -> Ranking {
    let mut usable: Vec<&Verdict> = verdicts.iter().filter(|verdict| verdict.usable()).collect();
    usable.sort_by_key(|verdict| {
        (
            !verdict.may_be_first(),
            -verdict.weight(),
            recent.mostly(verdict.way),
        )
    });
    let yielded = usable
        .iter()
        .filter(|verdict| recent.mostly(verdict.way) && yields(verdict, &usable))
        .map(|verdict| Reason::of(ReasonId::Variety).with("way", Value::Way(verdict.way)))
        .collect();
    let order: Vec<Way> = usable.iter().map(|verdict| verdict.way).collect();
    let may_lead = usable.first().is_some_and(|verdict| verdict.may_be_first());
    Ranking {
        ways: Ranked::from_list(&order).filter(|_| may_lead),
        yielded,
    }
}

fn yields(verdict: &Verdict, usable: &[&Verdict]) -> bool {
    usable.iter().any(|other| {
        other.way != verdict.way
            && other.may_be_first() == verdict.may_be_first()
            && other.weight() == verdict.weight()
    })
}
