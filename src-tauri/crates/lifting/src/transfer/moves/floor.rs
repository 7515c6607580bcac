//! Up from the floor, after injury was looked for: `osha_3182` figure 6.
//!
//! Rows there: unhurt and independent, gets up alone, stand by · unhurt and not independent, full sling lift
//! with two at least. Never by hand.

use super::bed::hoist;
use crate::reason::{Reason, ReasonId};
use crate::transfer::client::{Follows, WeightBearing};
use crate::transfer::facts::MoveFacts;
use crate::transfer::verdict::Verdict;
use crate::transfer::way::PeopleWay;

pub(super) fn rows(facts: &MoveFacts<'_>) -> Vec<Verdict> {
    let mut by_hand = Verdict::new(PeopleWay::ManualLift, ReasonId::NeverFromFloor);
    by_hand.bar(Reason::of(ReasonId::NeverFromFloor));
    let alone = Verdict::new(PeopleWay::GuidedSelfRise, ReasonId::SelfRiseSuits)
        .bar_if(!independent(facts), ReasonId::CannotAlone);
    vec![alone, hoist(facts), by_hand]
}

/// Said to get up alone, with nothing that speaks against it; not said, only with legs, arms and following.
fn independent(facts: &MoveFacts<'_>) -> bool {
    let moving = facts.moving;
    let follows = moving.follows.is_none_or(|follows| follows == Follows::Yes);
    let legs = moving
        .weight_bearing
        .is_none_or(|legs| legs == WeightBearing::Full);
    let able = match moving.independent {
        Some(said) => said && follows && legs,
        None => facts.legs == WeightBearing::Full && facts.follows && facts.arms,
    };
    able && !facts.lifted()
}
