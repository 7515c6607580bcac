//! A flare-up today, told in one tap.

use super::{Today, entry, grams, log_of, today};
use crate::call::Call;
use crate::convert::moment::from_record;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::use_cases::keep::Kept;
use crate::use_cases::plan::wording::texts;
use crate::walk::text::Reader;
use chrono::Duration;
use door::ErrorCode;
use record::{PracticeEntry, PracticeEvent};

/// Two flare-ups within this time are a reason to ring the clinician. From clinical teaching; house rule.
const OFTEN_WITHIN: Duration = Duration::days(14);
/// What to do in a flare-up where the plan does not say. House rules.
const STEPS: [&str; 4] = [
    "plan-flare-signs",
    "plan-flare-leave",
    "plan-flare-move",
    "plan-flare-ring",
];

/// Notes a flare-up: the level is halved, and the back counts as in a flare for the rest of the day. What was told of the body before is no longer true, so the rest of it is asked again at the next lift. A second time on one day changes nothing.
///
/// # Errors
/// `unknown_plan` without a plan; `contradiction` when it was told today; what the vault gives.
pub(crate) fn flare_start(call: &mut Call<'_>, _: Nothing) -> Result<Kept, Failure> {
    let today = today(call)?.ok_or_else(|| Failure::new(ErrorCode::UnknownPlan))?;
    if today.day.flare_today {
        return Err(Failure::new(ErrorCode::Contradiction));
    }
    let kept = PracticeEntry {
        grams: today.day.in_a_flare().map(grams),
        ..entry(call, &today, PracticeEvent::Flare)
    };
    let id = call.vault()?.together(|vault| {
        vault.body_today().clear()?;
        vault.practice().add(&kept)
    })?;
    Ok(Kept { id: id.0 })
}

/// What to do in a flare-up: the clinician's steps, or ours where the plan has none.
#[must_use]
pub(crate) fn steps(plan: &record::Plan, reader: Reader<'_>) -> Vec<String> {
    let own = plan.flare.as_deref().unwrap_or_default();
    let own = texts(own, reader.words);
    if own.is_empty() {
        STEPS.map(|id| reader.words.text(id)).to_vec()
    } else {
        own
    }
}

/// Whether this is not the first flare-up within two weeks.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn is_often(call: &Call<'_>, today: &Today) -> Result<bool, Failure> {
    let since = call
        .now
        .checked_sub_signed(OFTEN_WITHIN)
        .unwrap_or(call.now);
    let log = log_of(call.vault()?, today.followed.plan.id)?;
    let told = log
        .iter()
        .filter(|(_, entry)| entry.event == PracticeEvent::Flare && from_record(entry.at) >= since);
    Ok(told.count() > 1)
}
