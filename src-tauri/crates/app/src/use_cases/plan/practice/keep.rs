//! Noting practice, in two taps, and taking back a wrong one.

use super::{entry, item_grams, today};
use crate::call::Call;
use crate::convert::moment;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::use_cases::keep::{Kept, UNDO_WITHIN, read_pain};
use door::ErrorCode;
use record::{PracticeEntry, PracticeEvent};
use serde::Deserialize;
use vault::PracticeId;

/// The command `practice_keep`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct KeepPractice {
    /// Its place in the plan, from 0.
    item: u32,
    done: bool,
    #[serde(default)]
    pain: Option<u8>,
}

/// Keeps that something of the plan was practised, or left for today. On return it is on the disk.
///
/// # Errors
/// `unknown_plan` without a plan; `not_found` at `item`; `out_of_range` at `pain`; `contradiction` at `pain` for what was
/// left; what the vault gives.
pub(crate) fn practice_keep(call: &mut Call<'_>, asked: KeepPractice) -> Result<Kept, Failure> {
    let pain = read_pain(asked.pain)?;
    if pain.is_some() && !asked.done {
        return Err(Failure::at(ErrorCode::Contradiction, "pain"));
    }
    let today = today(call)?.ok_or_else(|| Failure::new(ErrorCode::UnknownPlan))?;
    let place = usize::try_from(asked.item).unwrap_or(usize::MAX);
    let item = today.followed.plan.practice.get(place);
    let item = item.ok_or_else(|| Failure::at(ErrorCode::NotFound, "item"))?;
    let event = if asked.done {
        PracticeEvent::Done
    } else {
        PracticeEvent::Left
    };
    let kept = PracticeEntry {
        way: Some(item.way),
        grams: Some(item_grams(&today, item)),
        pain,
        ..entry(call, &today, event)
    };
    let id = call.vault()?.practice().add(&kept)?;
    Ok(Kept { id: id.0 })
}

/// The command `practice_undo`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Undo {
    id: i64,
}

/// Takes the newest entry of the log back, within ten minutes: practice, a step, a flare-up.
///
/// # Errors
/// `not_found` for any other entry, or later; what the vault gives.
pub(crate) fn practice_undo(call: &mut Call<'_>, asked: Undo) -> Result<Nothing, Failure> {
    let vault = call.vault()?;
    let newest = vault.practice().all()?.pop();
    let may_go = newest.filter(|(id, entry)| {
        *id == PracticeId(asked.id) && moment::still_holds(entry.at, call.now, UNDO_WITHIN)
    });
    let Some((id, _)) = may_go else {
        return Err(Failure::at(ErrorCode::NotFound, "id"));
    };
    vault.practice().remove(id)?;
    Ok(Nothing {})
}
