//! What is said besides the outcome: reasons about the move itself, cautions, and what else to do.

use super::advice::{MoveOutcome, Tell};
use super::client::{CarePlan, Move, Transfer};
use super::facts::{LB_300, MoveFacts};
use super::moves::{is_limb, is_seated};
use super::way::PeopleWay;
use super::worker::Worker;
use crate::advise::advice::{Alternative, Caution, HowSoon, Urgency};
use crate::reason::{Reason, ReasonId, Value};
use std::collections::BTreeSet;

/// Reasons that belong to the move, whichever way is looked at.
pub(super) fn about_the_move(facts: &MoveFacts<'_>) -> Vec<Reason> {
    let mut reasons = Vec::new();
    match facts.moving.care_plan {
        CarePlan::Covers { is_old: true, .. } => {
            reasons.push(Reason::of(ReasonId::CarePlanOld));
        }
        CarePlan::Covers { is_old: false, .. } => {
            reasons.push(Reason::of(ReasonId::CarePlanCovers));
        }
        CarePlan::None => reasons.push(Reason::of(ReasonId::CarePlanNone)),
        CarePlan::DiffersToday => {}
    }
    if facts.worker.plan_expired {
        reasons.push(Reason::of(ReasonId::PlanExpired));
    }
    for by in &facts.limit.lowered_by {
        reasons.push(
            Reason::of(ReasonId::LimitLowered)
                .with("limit", Value::Mass(facts.limit.each))
                .with("what", Value::Id(by.id())),
        );
    }
    if facts.moving.mass.is_some() && facts.weighs(LB_300) {
        reasons.push(Reason::of(ReasonId::CheckRatedLoad));
    }
    reasons.extend(facts.worker.bears_nothing.iter().cloned());
    reasons
}

/// In order of step, then of authority; one entry an id and values.
pub(super) fn in_order(reasons: Vec<Reason>) -> Vec<Reason> {
    let mut kept: Vec<Reason> = Vec::new();
    for reason in reasons {
        if !kept.contains(&reason) {
            kept.push(reason);
        }
    }
    kept.sort_by_key(|reason| (reason.id.step(), reason.id.authority()));
    kept
}

/// What to heed.
pub(super) fn cautions(
    moving: &Transfer,
    worker: &Worker,
    outcome: &MoveOutcome,
    reasons: &[Reason],
) -> Vec<Caution> {
    let said = |id| reasons.iter().any(|reason| reason.id == id);
    let mut cautions = BTreeSet::new();
    if outcome.urgency() == Urgency::Emergency {
        cautions.insert(Caution::EmergencyNow);
    }
    let today = [
        ReasonId::SignSameDay,
        ReasonId::ClientSignToday,
        ReasonId::FloorNotChecked,
    ];
    if today.into_iter().any(said) {
        cautions.insert(Caution::SameDayAdvice);
    }
    if moving.what == Move::FloorToChair {
        cautions.extend([Caution::CheckInjuryFirst, Caution::NoManualFloorLift]);
    }
    let changed = !moving.signs.is_empty() || moving.care_plan == CarePlan::DiffersToday;
    if changed {
        cautions.insert(Caution::ClientChangedReport);
    }
    if said(ReasonId::OverPainCeiling) {
        cautions.insert(Caution::OverPainCeiling);
    }
    if worker.plan_expired || said(ReasonId::PlanTooOld) {
        cautions.insert(Caution::PlanExpired);
    }
    if said(ReasonId::SurgeryNoLimit) {
        cautions.insert(Caution::SurgeonLimitFirst);
    }
    if worker.limits() && !matches!(outcome, MoveOutcome::SeekCare { .. }) {
        cautions.insert(Caution::WorkerOwnBody);
    }
    let out_of_date = said(ReasonId::CarePlanOld);
    if changed || out_of_date || !matches!(outcome, MoveOutcome::GoAhead { .. }) {
        cautions.insert(Caution::ReportToOffice);
    }
    if matches!(
        outcome,
        MoveOutcome::GoAhead { .. } | MoveOutcome::DoNotMove { .. }
    ) {
        for_the_move(moving, outcome, reasons, &mut cautions);
    }
    if moving.what == Move::Catch && !changed {
        cautions.remove(&Caution::ReportToOffice);
    }
    cautions.into_iter().collect()
}

fn for_the_move(
    moving: &Transfer,
    outcome: &MoveOutcome,
    reasons: &[Reason],
    cautions: &mut BTreeSet<Caution>,
) {
    let offers = outcome.offers();
    let by_themselves = offers.first().is_some_and(|offer| offer.workers == 0);
    if !by_themselves && moving.what != Move::Catch {
        cautions.insert(Caution::Over35lbEquipment);
    }
    let two = offers.first().is_some_and(|offer| offer.workers > 1);
    let needs_two = reasons.iter().any(|reason| {
        matches!(
            reason.id,
            ReasonId::TooFewWorkers | ReasonId::CarePlanMoreWorkers
        )
    });
    if two || (offers.is_empty() && needs_two) {
        cautions.insert(Caution::TwoWorkers);
    }
    let on_their_feet = offers.iter().any(|offer| {
        matches!(
            offer.way,
            PeopleWay::StandPivotBelt | PeopleWay::StandAid | PeopleWay::SlideBoard
        )
    });
    if is_seated(moving.what) && on_their_feet {
        cautions.insert(Caution::StrongerSide);
    }
}

/// What else to do, in the order to offer it. Never a dead end.
pub(super) fn alternatives(
    moving: &Transfer,
    worker: &Worker,
    outcome: &MoveOutcome,
    reasons: &[Reason],
) -> Vec<Alternative> {
    let said = |id| reasons.iter().any(|reason| reason.id == id);
    let mut offered = BTreeSet::new();
    match outcome {
        MoveOutcome::SeekCare { how_soon } => {
            offered.insert(Alternative::WaitForHelp);
            if *how_soon == HowSoon::SameDay {
                offered.insert(Alternative::CallClinician);
            }
        }
        MoveOutcome::Refuse => {
            offered.extend([Alternative::CallClinician, Alternative::AskPerson]);
            if said(ReasonId::SurgeryNoLimit) {
                offered.insert(Alternative::FollowSurgeonLimit);
            }
        }
        MoveOutcome::DoNotMove { tell } => {
            offered.insert(Alternative::WaitForHelp);
            if *tell == Tell::OfficeToday || said(ReasonId::CarePlanDiffers) {
                offered.insert(Alternative::CallClinician);
            }
            if said(ReasonId::ClientSaysNo) {
                offered.insert(Alternative::LeaveIt);
            }
            if said(ReasonId::NoMoveLeft) {
                offered.insert(Alternative::UseEquipment);
                if is_limb(moving.what) {
                    offered.insert(Alternative::LongToolOrSit);
                }
            }
        }
        MoveOutcome::GoAhead { .. } => {
            if worker.limits() {
                offered.extend([Alternative::AskPerson, Alternative::WaitForHelp]);
            }
        }
    }
    offered.into_iter().collect()
}
