//! The decision rows for each kind of move, one rule set per file, one source per row.

mod bed;
mod chair;
mod floor;
mod lateral;
mod limb;
mod seated;
mod sit_up;

use super::client::Move;
use super::facts::MoveFacts;
use super::verdict::Verdict;
use crate::body::Person;
use crate::plan::Plan;

/// Whether the move goes from one seat to another (figure 1 of `osha_3182`).
#[must_use]
pub const fn is_seated(what: Move) -> bool {
    matches!(
        what,
        Move::BedToChair
            | Move::ChairToBed
            | Move::ChairToToilet
            | Move::ToiletToChair
            | Move::ChairToChair
            | Move::ChairToWheelchair
            | Move::Car
    )
}

/// Whether the move is work on a limb, with the worker's own posture to judge.
#[must_use]
pub const fn is_limb(what: Move) -> bool {
    matches!(
        what,
        Move::HoldLimb | Move::Stockings | Move::Shoes | Move::WashLow
    )
}

/// Every way the rows of this move know, in the order in which they are offered. Empty for a catch.
#[must_use]
pub fn verdicts(facts: &MoveFacts<'_>, person: &Person, plan: Option<&Plan>) -> Vec<Verdict> {
    let rows = match facts.moving.what {
        Move::UpInBed | Move::TurnInBed => bed::rows(facts),
        Move::UpInChair => chair::rows(facts),
        Move::SitUp => sit_up::rows(facts),
        Move::Lateral => lateral::rows(facts),
        Move::FloorToChair => floor::rows(facts),
        Move::HoldLimb | Move::Stockings | Move::Shoes | Move::WashLow => {
            limb::rows(facts, person, plan)
        }
        Move::Catch => Vec::new(),
        Move::BedToChair
        | Move::ChairToBed
        | Move::ChairToToilet
        | Move::ToiletToChair
        | Move::ChairToChair
        | Move::ChairToWheelchair
        | Move::Car => seated::rows(facts),
    };
    rows.into_iter().map(|row| row.planned(facts)).collect()
}
