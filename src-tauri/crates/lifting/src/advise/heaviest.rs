//! The heaviest load for today. Only with a plan whose level in practice is known; never above the plan's
//! ceiling, nor above that level and the one step that is offered and not locked, or below it by the one step that
//! is taken back.

use super::facts::{Facts, Standing};
use super::request::Request;
use super::search::heaviest_that_lifts;
use crate::plan::Plan;
use crate::progress::{self, History, Progress};
use crate::quantity::Kilograms;

/// The largest mass for which the judgement says `Lift`; `None` when that is not to be said.
pub(crate) fn today(request: &Request) -> Option<Kilograms> {
    let plan = request.plan.as_ref()?;
    let level = plan.current?;
    let facts = Facts::of(request, &request.task);
    if facts.standing == Standing::TooOld {
        return None;
    }
    let level = Kilograms::clamped(level.value() + step(request, plan));
    let cap = facts
        .plan_ceiling()
        .map_or(level, |ceiling| level.at_most(ceiling));
    heaviest_that_lifts(request, &request.task, cap)
}

/// One step up or down, kg, as the progression proposes it; 0 where it holds. A flare today steps down without a
/// history too.
fn step(request: &Request, plan: &Plan) -> f64 {
    let unknown = History::default();
    let history = request.history.as_ref().unwrap_or(&unknown);
    let size = progress::step_size(plan).map_or(0.0, Kilograms::value);
    match progress::propose(&request.person, Some(plan), history).progress {
        Progress::StepUp if !plan.steps_locked => size,
        Progress::StepUp | Progress::Hold => 0.0,
        Progress::StepDown => -size,
    }
}
