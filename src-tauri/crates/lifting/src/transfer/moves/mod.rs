//! The decision rows for each kind of move, one rule set per file, one source per row.

mod bed;
mod chair;
mod floor;
mod lateral;
mod limb;
mod seated;
mod sit_up;

use super::client::{Move, Transfer};
use super::equipment::Equipment;
use super::facts::MoveFacts;
use super::verdict::Verdict;
use super::way::PeopleWay;
use super::worker::Worker;
use crate::advise::Request;
use crate::body::Person;
use crate::plan::Plan;
use crate::reason::ReasonId;

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

/// Whether sources differ on this way for this move, so that it takes a care plan that names it: the belt for
/// one alone, and two who lift by hand (`docs/method/deviations.md`, 34 and 35).
#[must_use]
pub const fn by_exception(what: Move, way: PeopleWay) -> bool {
    match way {
        PeopleWay::StandPivotBelt => is_seated(what),
        PeopleWay::ManualLift => matches!(what, Move::UpInChair),
        _ => false,
    }
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

/// A way of the rows, with what it takes at the least.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Taking {
    /// The way.
    pub way: PeopleWay,
    /// Workers whose hands it takes; 0 is stand by.
    pub workers: u32,
    /// Equipment it takes.
    pub equipment: Vec<Equipment>,
}

/// Every way that the rows of this move know and that is ever allowed, first choice first.
#[must_use]
pub fn takings(what: Move) -> Vec<Taking> {
    let worker = Worker {
        bears_nothing: Vec::new(),
        lowers: Vec::new(),
        own_ceiling: None,
        plan_expired: false,
    };
    let moving = Transfer::of(what);
    let never = |verdict: &Verdict| {
        let never = |reason: &crate::reason::Reason| reason.id == ReasonId::NeverFromFloor;
        verdict.barred.iter().any(never)
    };
    verdicts(&MoveFacts::of(&moving, &worker), &Person::default(), None)
        .into_iter()
        .filter(|verdict| !never(verdict))
        .map(|verdict| Taking {
            way: verdict.way,
            workers: verdict.workers,
            equipment: verdict.equipment,
        })
        .collect()
}

/// Equipment that the rows of this move look for, in the order to ask for it.
#[must_use]
pub const fn equipment_of(what: Move) -> &'static [Equipment] {
    use Equipment as E;
    match what {
        Move::Car => &[
            E::CarHoist,
            E::StandAid,
            E::Belt,
            E::SlideBoard,
            E::RemovableArmChair,
        ],
        Move::UpInBed | Move::TurnInBed | Move::UpInChair => &[E::SlideSheet, E::Hoist],
        Move::SitUp => &[E::AdjustableBed, E::Hoist],
        Move::Lateral => &[E::SlideSheet, E::LateralAid, E::Hoist],
        Move::FloorToChair => &[E::Hoist],
        Move::HoldLimb => &[E::AdjustableBed, E::LimbSling, E::Hoist],
        Move::Stockings | Move::Shoes | Move::WashLow => &[E::FootStool, E::AdjustableBed],
        Move::Catch => &[],
        Move::BedToChair
        | Move::ChairToBed
        | Move::ChairToToilet
        | Move::ToiletToChair
        | Move::ChairToChair
        | Move::ChairToWheelchair => &[
            E::Hoist,
            E::StandAid,
            E::Belt,
            E::SlideBoard,
            E::RemovableArmChair,
        ],
    }
}

/// Work on a limb as the worker's own lift of a thing; `None` for every other move, when nothing is held, or
/// when its mass is not known.
#[must_use]
pub fn own_lift(facts: &MoveFacts<'_>, person: &Person, plan: Option<&Plan>) -> Option<Request> {
    if is_limb(facts.moving.what) {
        limb::own_lift(facts, person, plan)
    } else {
        None
    }
}
