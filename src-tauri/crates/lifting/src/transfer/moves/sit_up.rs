//! Sitting up from lying. No figure of `osha_3182` covers it: house rules on the same answers as in bed.
//!
//! Fully able, stand by · partly, follows, and strong arms or a bed whose backrest rises, guided · else a full
//! sling hoist with two.

use super::bed::{hoist, stand_by};
use crate::reason::ReasonId;
use crate::transfer::client::{Ability, Help};
use crate::transfer::equipment::Equipment;
use crate::transfer::facts::MoveFacts;
use crate::transfer::verdict::Verdict;
use crate::transfer::way::PeopleWay;

pub(super) fn rows(facts: &MoveFacts<'_>) -> Vec<Verdict> {
    vec![stand_by(facts), guided(facts), hoist(facts)]
}

fn guided(facts: &MoveFacts<'_>) -> Verdict {
    let asked = facts.moving.help == Some(Help::SomeLift);
    let mut guided = Verdict::new(PeopleWay::GuidedSelfRise, ReasonId::GuidedSuits)
        .bar_if(facts.able == Ability::Not, ReasonId::CannotAlone)
        .following(facts)
        .within_share(facts, asked)
        .bearers(facts, 1);
    if facts.has(Equipment::AdjustableBed) {
        guided.equipment.push(Equipment::AdjustableBed);
        guided
    } else {
        guided.strong_arms(facts)
    }
}
