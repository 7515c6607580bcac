//! The heaviest load for today. Only with a plan whose level in practice is known; never above the plan's
//! ceiling, nor above that level and the one step that is offered and not locked, or below it by the one step that
//! is taken back; in a flare-up half of the level at most.

use super::facts::{Facts, Standing};
use super::request::Request;
use super::search::heaviest_that_lifts;
use crate::plan::Plan;
use crate::progress::{self, History, Progress};
use crate::quantity::Kilograms;
use crate::reason::{Reason, ReasonId};

/// The largest mass for which the judgement says `Lift`; `None` when that is not to be said.
pub(crate) fn today(request: &Request) -> Option<Kilograms> {
    let plan = request.plan.as_ref()?;
    let level = plan.current?;
    let facts = Facts::of(request, &request.task);
    if facts.standing == Standing::TooOld {
        return None;
    }
    let level = level_today(request, plan, level);
    let cap = facts
        .plan_ceiling()
        .map_or(level, |ceiling| level.at_most(ceiling));
    heaviest_that_lifts(request, &request.task, cap)
}

/// The level as the progression moves it: one step up or down, or where it holds. In a flare-up the level of a
/// flare-up, without a history too.
fn level_today(request: &Request, plan: &Plan, level: Kilograms) -> Kilograms {
    let unknown = History::default();
    let history = request.history.as_ref().unwrap_or(&unknown);
    let size = progress::step_size(plan).map_or(0.0, Kilograms::value);
    let proposal = progress::propose(&request.person, Some(plan), history);
    let is_flare = |reason: &Reason| reason.id == ReasonId::FlareStepDown;
    if proposal.reasons.iter().any(is_flare) {
        return progress::in_a_flare(plan, level);
    }
    Kilograms::clamped(match proposal.progress {
        Progress::StepUp if !plan.steps_locked => level.value() + size,
        Progress::StepUp | Progress::Hold => level.value(),
        Progress::StepDown => level.value() - size,
    })
}
