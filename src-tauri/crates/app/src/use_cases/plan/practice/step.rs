//! A step up or down, as an offer: one at a time, to be taken or left.

use super::{Today, entry, grams, person_today, today};
use crate::call::Call;
use crate::failure::Failure;
use crate::use_cases::keep::Kept;
use door::ErrorCode;
use lifting::progress::{Progress, Proposal};
use lifting::quantity::Kilograms;
use record::{PracticeEntry, PracticeEvent};
use serde::Deserialize;

/// The command `step_answer`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct StepAnswer {
    /// Which offer is answered: `step_up` or `step_down`. It must be the one that stands.
    step: String,
    take: bool,
}

/// Takes or leaves the step that is offered.
///
/// # Errors
/// `unknown_plan` without a plan; `not_a_choice` at `step`; `question_not_open` when it is not what is offered now; what
/// the vault gives.
pub(crate) fn step_answer(call: &mut Call<'_>, asked: StepAnswer) -> Result<Kept, Failure> {
    let step =
        Progress::from_id(&asked.step).ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "step"))?;
    let today = today(call)?.ok_or_else(|| Failure::new(ErrorCode::UnknownPlan))?;
    let (proposal, offered) = offer(call, &today)?;
    let Some(level) = offered.filter(|_| proposal.progress == step) else {
        return Err(Failure::at(ErrorCode::QuestionNotOpen, "step"));
    };
    let event = match (asked.take, step) {
        (true, Progress::StepUp) => PracticeEvent::StepUp,
        (true, Progress::StepDown) => PracticeEvent::StepDown,
        (true, Progress::Hold) | (false, _) => PracticeEvent::OfferLeft,
    };
    let kept = PracticeEntry {
        grams: Some(grams(level)),
        ..entry(call, &today, event)
    };
    let id = call.vault()?.practice().add(&kept)?;
    Ok(Kept { id: id.0 })
}

/// What the rule proposes today, and the level that is offered with it, if one is.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn offer(
    call: &Call<'_>,
    today: &Today,
) -> Result<(Proposal, Option<Kilograms>), Failure> {
    let proposal = today.day.proposal(&person_today(call)?);
    let offered = today.day.offered(&proposal);
    Ok((proposal, offered))
}
