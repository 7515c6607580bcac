//! Up the bed and turning in bed: `osha_3182` figure 4.
//!
//! Rows there: fully able, stand by · partly and under 200 lb, friction-reducing device with two · partly and
//! 200 lb or more, with three · not able, full sling lift or friction-reducing device with two at least. Never
//! one worker alone. Three from 200 lb also for somebody not able: the figure would ask for fewer there.

use crate::reason::ReasonId;
use crate::transfer::client::Ability;
use crate::transfer::equipment::Equipment;
use crate::transfer::facts::{LB_200, MoveFacts};
use crate::transfer::verdict::Verdict;
use crate::transfer::way::PeopleWay;

pub(super) fn rows(facts: &MoveFacts<'_>) -> Vec<Verdict> {
    let workers = if facts.weighs(LB_200) { 3 } else { 2 };
    vec![
        stand_by(facts),
        Verdict::new(PeopleWay::SlideSheetTwo, ReasonId::SlideSheetSuits)
            .with(facts, &[Equipment::SlideSheet])
            .bearers(facts, workers),
        hoist(facts),
    ]
}

/// Stands by whoever does it alone.
pub(super) fn stand_by(facts: &MoveFacts<'_>) -> Verdict {
    Verdict::new(PeopleWay::StandBy, ReasonId::StandBySuits)
        .bar_if(facts.able != Ability::Fully, ReasonId::CannotAlone)
}

/// A full sling hoist with two, for any of these moves.
pub(super) fn hoist(facts: &MoveFacts<'_>) -> Verdict {
    Verdict::new(PeopleWay::HoistTwo, ReasonId::HoistSuits)
        .with(facts, &[Equipment::Hoist])
        .workers(facts, 2)
}
