//! Other ways to get it done, in the order in which they are offered. Never a dead end.

use crate::advise::advice::{Alternative, HowSoon, Outcome};
use crate::advise::facts::{Facts, Standing, knuckle_height};
use crate::reason::{Reason, ReasonId};
use std::collections::BTreeSet;

/// Alternatives for an advice.
#[must_use]
pub fn of(
    facts: &Facts<'_>,
    outcome: &Outcome,
    reasons: &[Reason],
    cautious: bool,
) -> Vec<Alternative> {
    let said = |id| reasons.iter().any(|reason| reason.id == id);
    let mut offered = BTreeSet::new();
    match outcome {
        Outcome::SeekCare { how_soon } => {
            offered.insert(Alternative::LeaveIt);
            if *how_soon == HowSoon::SameDay {
                offered.insert(Alternative::CallClinician);
            }
        }
        Outcome::Refuse => {
            offered.extend([Alternative::CallClinician, Alternative::LeaveIt]);
            if !facts.task.living {
                offered.insert(Alternative::AskPerson);
            }
            if said(ReasonId::SurgeryNoLimit) {
                offered.insert(Alternative::FollowSurgeonLimit);
            }
        }
        Outcome::DoNotLift { .. } => {
            offered.extend(around_the_lift(facts));
            if said(ReasonId::OverPlanTimes) || said(ReasonId::PlanBoutsDone) {
                offered.insert(Alternative::SpreadOverDays);
            }
            if said(ReasonId::OverPainCeiling)
                || (facts.plan.is_some() && facts.standing != Standing::Valid)
            {
                offered.insert(Alternative::CallClinician);
            }
        }
        Outcome::LiftWithChange { .. } => offered.extend(around_the_lift(facts)),
        Outcome::Lift { .. } if cautious || facts.long_run() => {
            offered.extend(around_the_lift(facts));
        }
        Outcome::Lift { .. } => {}
    }
    offered.into_iter().collect()
}

fn around_the_lift(facts: &Facts<'_>) -> Vec<Alternative> {
    let mut offered = vec![Alternative::LeaveIt, Alternative::AskPerson];
    if facts.light() {
        if !facts.upright() {
            offered.extend([Alternative::Reacher, Alternative::LongToolOrSit]);
        }
    } else {
        offered.extend([Alternative::SlideOrRoll, Alternative::Trolley]);
        if facts.task.divisible != Some(false) {
            offered.push(Alternative::SplitLoad);
        }
    }
    if facts.start < knuckle_height(facts.person) {
        offered.push(Alternative::RaiseStart);
    }
    if facts.long_run() {
        offered.push(Alternative::SpreadOverDays);
    }
    if facts.task.known_helpers().next().is_some() && !facts.light() {
        offered.push(Alternative::TwoPerson);
    }
    offered
}
