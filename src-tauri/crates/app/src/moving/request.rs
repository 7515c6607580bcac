//! The walk as the judgement takes it.

use super::facts::{grams, workers};
use super::flow::MoveWalk;
use super::ids::MoveQuestion as Q;
use super::options::{SHARES, TRAINING};
use super::plan_age::is_old;
use crate::walk::answer::Answer;
use chrono::NaiveDate;
use lifting::quantity::Minutes;
use lifting::transfer::client::{
    Ability, CarePlan, ClientMass, ClientSign, Follows, Help, Limb, Share, Transfer, WeightBearing,
};
use lifting::transfer::equipment::Equipment;
use lifting::transfer::limit::Hindrance;
use lifting::transfer::way::PeopleWay;
use std::collections::BTreeSet;

/// The move by the answers so far. What was not asked, or is not sure, stays open and is judged on the careful
/// side. Equipment that the worker is not trained on counts as not there.
#[must_use]
pub(crate) fn transfer(
    walk: &MoveWalk<'_>,
    trained: &BTreeSet<String>,
    today: NaiveDate,
) -> Transfer {
    let chosen = |question: Q| match walk.answer(question) {
        Some(Answer::Choice(id)) if walk.asks(question) => Some(id.as_str()),
        _ => None,
    };
    let ticked = |question: Q| match walk.answer(question) {
        Some(Answer::Choices(ids)) if walk.asks(question) => Some(ids),
        _ => None,
    };
    let yes = |question: Q| chosen(question).map(|id| id == "yes");
    let share = chosen(Q::Help).and_then(|id| SHARES.iter().find(|(name, _)| *name == id));
    Transfer {
        mass: chosen(Q::Mass)
            .and_then(grams)
            .and_then(|grams| ClientMass::new(f64::from(grams) / 1000.0).ok()),
        weight_bearing: chosen(Q::Legs).and_then(WeightBearing::from_id),
        follows: chosen(Q::Follows).and_then(Follows::from_id),
        arms_strong: yes(Q::Arms),
        able: chosen(Q::Able).and_then(Ability::from_id),
        help: share.map_or_else(
            || chosen(Q::Help).and_then(Help::from_id),
            |_| Some(Help::SomeLift),
        ),
        staff_share: share.and_then(|(_, permille)| Share::new(f64::from(*permille) / 1000.0).ok()),
        limb: chosen(Q::Limb).and_then(Limb::from_id),
        hold: chosen(Q::Hold).and_then(|id| {
            Minutes::new(match id {
                "up_1_min" => 1.0,
                "up_2_min" => 2.0,
                _ => 3.0,
            })
            .ok()
        }),
        chair_reclines: yes(Q::Reclines),
        independent: yes(Q::Independent),
        unhurt: match chosen(Q::Unhurt) {
            Some("unhurt") => Some(true),
            Some("hurt") => Some(false),
            _ => None,
        },
        agrees: chosen(Q::New).map(|id| id != "they_say_no"),
        signs: ticked(Q::Signs)
            .into_iter()
            .flatten()
            .map(|id| ClientSign::from_id(id).unwrap_or(ClientSign::Other))
            .collect(),
        equipment: usable(walk, trained),
        workers: Some(walk.answer(Q::Here).map_or(1, workers)),
        hindrances: ticked(Q::Harder)
            .into_iter()
            .flatten()
            .filter_map(|id| Hindrance::from_id(id))
            .collect(),
        care_plan: care_plan(walk, today),
        ..Transfer::of(walk.what)
    }
}

/// What is there, works, and may be used by this worker.
fn usable(walk: &MoveWalk<'_>, trained: &BTreeSet<String>) -> BTreeSet<Equipment> {
    there(walk)
        .into_iter()
        .filter(|piece| !TRAINING.contains(piece) || trained.contains(piece.id()))
        .collect()
}

/// What is there by the answers, trained on or not.
#[must_use]
pub(crate) fn there(walk: &MoveWalk<'_>) -> BTreeSet<Equipment> {
    match walk.answer(Q::Here) {
        Some(Answer::Choices(ids)) => ids.iter().filter_map(|id| Equipment::from_id(id)).collect(),
        _ => BTreeSet::new(),
    }
}

fn care_plan(walk: &MoveWalk<'_>, today: NaiveDate) -> CarePlan {
    match walk.plan {
        None => CarePlan::None,
        Some(_) if walk.differs_from_plan() => CarePlan::DiffersToday,
        Some(plan) => CarePlan::Covers {
            ways: Some(
                plan.ways
                    .iter()
                    .filter_map(|id| PeopleWay::from_id(id))
                    .collect(),
            ),
            workers: plan.workers,
            is_old: is_old(plan, today),
        },
    }
}
