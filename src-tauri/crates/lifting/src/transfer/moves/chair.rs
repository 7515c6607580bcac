//! Up or back in a chair: `osha_3182` figure 5.
//!
//! Rows there: fully able, stand by · partly with strong arms, the person lifts and one worker pushes the
//! knees · partly without, two workers assist · not able and the chair reclines, friction-reducing device with
//! two · not able otherwise, full sling lift with two. "Two workers assist" is lifting by hand, which
//! `vha_2014` rules out: only a care plan that names it unlocks it, within the limit.

use super::bed::{hoist, stand_by};
use crate::reason::ReasonId;
use crate::transfer::client::{Ability, CarePlan, Help};
use crate::transfer::equipment::Equipment;
use crate::transfer::facts::MoveFacts;
use crate::transfer::verdict::Verdict;
use crate::transfer::way::PeopleWay;

pub(super) fn rows(facts: &MoveFacts<'_>) -> Vec<Verdict> {
    vec![
        stand_by(facts),
        guided(facts),
        slide(facts),
        hoist(facts),
        two_by_hand(facts),
    ]
}

fn guided(facts: &MoveFacts<'_>) -> Verdict {
    let asked = facts.moving.help == Some(Help::SomeLift);
    Verdict::new(PeopleWay::GuidedSelfRise, ReasonId::GuidedSuits)
        .bar_if(facts.able == Ability::Not, ReasonId::CannotAlone)
        .following(facts)
        .strong_arms(facts)
        .within_share(facts, asked)
        .bearers(facts, 1)
}

/// Lying back in a reclined chair is like lying in bed; upright there is nothing to slide on.
fn slide(facts: &MoveFacts<'_>) -> Verdict {
    let reclines = facts.moving.chair_reclines == Some(true);
    Verdict::new(PeopleWay::SlideSheetTwo, ReasonId::SlideSheetSuits)
        .bar_if(!reclines, ReasonId::ChairDoesNotRecline)
        .with(facts, &[Equipment::SlideSheet])
        .bearers(facts, 2)
}

fn two_by_hand(facts: &MoveFacts<'_>) -> Verdict {
    let named = matches!(&facts.moving.care_plan,
        CarePlan::Covers { ways: Some(ways), .. }
            if facts.unlocks() && ways.contains(&PeopleWay::ManualLift));
    Verdict::new(PeopleWay::ManualLift, ReasonId::HandsByPlan)
        .bar_if(!named, ReasonId::NoLiftByHand)
        .bar_if(facts.able == Ability::Not, ReasonId::CannotAlone)
        .following(facts)
        .within_share(facts, true)
        .bearers(facts, 2)
}
