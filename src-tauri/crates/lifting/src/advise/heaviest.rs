//! The heaviest load for today. Only with a plan whose level in practice is known; never above the plan's
//! ceiling, nor above that level and the one step that is offered and not locked.

use super::facts::{Facts, Standing};
use super::request::Request;
use super::search::heaviest_that_lifts;
use crate::progress::{self, Progress};
use crate::quantity::Kilograms;

/// The largest mass for which the judgement says `Lift`; `None` when that is not to be said.
pub(crate) fn today(request: &Request) -> Option<Kilograms> {
    let plan = request.plan.as_ref()?;
    let level = plan.current?;
    let facts = Facts::of(request, &request.task);
    if facts.standing == Standing::TooOld {
        return None;
    }
    let level = Kilograms::clamped(level.value() + offered_step(request));
    let cap = facts
        .plan_ceiling()
        .map_or(level, |ceiling| level.at_most(ceiling));
    heaviest_that_lifts(request, &request.task, cap)
}

fn offered_step(request: &Request) -> f64 {
    let (Some(plan), Some(history)) = (request.plan.as_ref(), request.history.as_ref()) else {
        return 0.0;
    };
    let proposal = progress::propose(&request.person, Some(plan), history);
    if proposal.progress == Progress::StepUp && !plan.steps_locked {
        progress::step_size(plan).map_or(0.0, Kilograms::value)
    } else {
        0.0
    }
}
