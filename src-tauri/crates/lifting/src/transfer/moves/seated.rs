//! From one seat to another: `osha_3182` figure 1.
//!
//! Rows there: full weight, stand by · part and follows, belt with stand and pivot or a stand aid · none,
//! follows and strong arms, seated aid · all others, full sling lift with two. Who takes part of the weight
//! and has strong arms may slide as well: whoever can do it with no weight on the legs can do it with some.

use crate::reason::{Reason, ReasonId};
use crate::transfer::client::{Help, Move, WeightBearing};
use crate::transfer::equipment::Equipment;
use crate::transfer::facts::MoveFacts;
use crate::transfer::verdict::Verdict;
use crate::transfer::way::PeopleWay;

pub(super) fn rows(facts: &MoveFacts<'_>) -> Vec<Verdict> {
    vec![
        stand_by(facts),
        stand_aid(facts),
        belt(facts),
        slide_board(facts),
        hoist(facts),
    ]
}

fn stand_by(facts: &MoveFacts<'_>) -> Verdict {
    Verdict::new(PeopleWay::StandBy, ReasonId::StandBySuits)
        .on_legs(facts, WeightBearing::Full)
        .bar_if(facts.lifted(), ReasonId::CannotAlone)
}

/// The device of a car move has to reach into the car (`osha_3182`, notes to figure 1).
fn stand_aid(facts: &MoveFacts<'_>) -> Verdict {
    let equipment: &[Equipment] = match facts.moving.what {
        Move::Car => &[Equipment::StandAid, Equipment::CarHoist],
        _ => &[Equipment::StandAid],
    };
    Verdict::new(PeopleWay::StandAid, ReasonId::StandAidSuits)
        .on_legs(facts, WeightBearing::Part)
        .following(facts)
        .bar_if(facts.unpredictable(), ReasonId::HelpUnpredictable)
        .with(facts, equipment)
        .workers(facts, 1)
}

/// Sources differ (`osha_3182` allows it, `vha_2014` does not): alone, only by a care plan that covers the move
/// and is not past its date.
fn belt(facts: &MoveFacts<'_>) -> Verdict {
    let mut belt = Verdict::new(PeopleWay::StandPivotBelt, ReasonId::BeltSuits)
        .on_legs(facts, WeightBearing::Part)
        .following(facts)
        .within_share(facts, true)
        .with(facts, &[Equipment::Belt])
        .bearers(facts, 1);
    if facts.unlocks() {
        belt.notes.push(Reason::of(ReasonId::BeltByPlan));
        belt
    } else {
        belt.bar_if(facts.workers < 2, ReasonId::BeltAlone)
    }
}

/// A seated slide lifts nobody, so an unasked help does not bar it; what is known to be over the limit does.
fn slide_board(facts: &MoveFacts<'_>) -> Verdict {
    let asked = facts.moving.help == Some(Help::SomeLift);
    Verdict::new(PeopleWay::SlideBoard, ReasonId::SlideBoardSuits)
        .following(facts)
        .strong_arms(facts)
        .within_share(facts, asked)
        .with(
            facts,
            &[Equipment::SlideBoard, Equipment::RemovableArmChair],
        )
        .bearers(facts, 1)
}

fn hoist(facts: &MoveFacts<'_>) -> Verdict {
    let equipment = match facts.moving.what {
        Move::Car => Equipment::CarHoist,
        _ => Equipment::Hoist,
    };
    Verdict::new(PeopleWay::HoistTwo, ReasonId::HoistSuits)
        .with(facts, &[equipment])
        .workers(facts, 2)
}
