//! Practice for the look back: of the plan followed here, or of one that was made here and is followed elsewhere.

use super::{log_of, noted, person_today, today};
use crate::call::Call;
use crate::convert::moment::from_record;
use crate::convert::practice::{Noted, PlanDay, handed};
use crate::failure::Failure;
use crate::report::Practised;
use chrono::NaiveDate;
use lifting::body::Person;
use record::{Identity, Plan};
use std::collections::BTreeMap;
use vault::Vault;

/// One's own practice since a day; `None` without a plan.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn own(call: &Call<'_>, since: Option<NaiveDate>) -> Result<Option<Practised>, Failure> {
    let Some(today) = today(call)? else {
        return Ok(None);
    };
    let log = noted(&log_of(call.vault()?, today.followed.plan.id)?);
    let person = person_today(call)?;
    Ok(Some(Practised::of(from(log, since), today.day, &person)))
}

/// What one pairing handed over of practice with `plan`, the one behind its newest history, as of that history. An entry that is in several histories counts once, as the newest has it.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn received(
    vault: &Vault,
    pairing: Identity,
    plan: Option<&Plan>,
    since: Option<NaiveDate>,
) -> Result<Option<Practised>, Failure> {
    let mut histories = vault.received().of(Some(pairing))?;
    histories.sort_by_key(|(id, _)| *id);
    let newest = histories.last().map(|(_, received)| &received.history);
    let (Some(newest), Some(plan)) = (newest, plan) else {
        return Ok(None);
    };
    let mut log = BTreeMap::new();
    let of_plan = histories.iter().map(|(_, received)| &received.history);
    for history in of_plan.filter(|history| history.plan.is_some_and(|named| named.id == plan.id)) {
        for entry in history.practice.iter().flatten() {
            let noted = handed(entry, history.made_at.offset_min);
            log.insert((entry.at_min, entry.event, entry.way), noted);
        }
    }
    let log: Vec<Noted> = log.into_values().collect();
    let day = PlanDay::of(plan, &log, from_record(newest.made_at));
    Ok(Some(Practised::of(
        from(log, since),
        day,
        &Person::default(),
    )))
}

fn from(log: Vec<Noted>, since: Option<NaiveDate>) -> Vec<Noted> {
    let is_in = |noted: &Noted| since.is_none_or(|since| noted.at.date_naive() >= since);
    log.into_iter().filter(is_in).collect()
}
