//! Lying, sideways to another surface: `osha_3182` figure 2.
//!
//! Rows there: fully able, stand by · else up to 200 lb, a sliding aid or friction-reducing device with two ·
//! over 200 lb, a sliding aid with three or a friction-reducing device with two.

use super::bed::{hoist, stand_by};
use crate::reason::ReasonId;
use crate::transfer::equipment::Equipment;
use crate::transfer::facts::{LB_200, MoveFacts};
use crate::transfer::verdict::Verdict;
use crate::transfer::way::PeopleWay;

pub(super) fn rows(facts: &MoveFacts<'_>) -> Vec<Verdict> {
    vec![stand_by(facts), slide(facts), hoist(facts)]
}

/// The friction-reducing sheet first: it takes fewer workers, or as many.
fn slide(facts: &MoveFacts<'_>) -> Verdict {
    let by_board = !facts.has(Equipment::SlideSheet) && facts.has(Equipment::LateralAid);
    let (aid, workers) = match (by_board, facts.weighs_more_than(LB_200)) {
        (true, true) => (Equipment::LateralAid, 3),
        (true, false) => (Equipment::LateralAid, 2),
        (false, _) => (Equipment::SlideSheet, 2),
    };
    Verdict::new(PeopleWay::SlideSheetTwo, ReasonId::SlideSheetSuits)
        .with(facts, &[aid])
        .bearers(facts, workers)
}
