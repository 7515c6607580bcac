//! Asking the judgement about a walk, and making its page.

use super::standing::Standing;
use crate::call::Call;
use crate::convert::{advice, advice_back, person, task};
use crate::failure::Failure;
use crate::use_cases::plan::following::{expired_note, from_text};
use crate::use_cases::plan::lines;
use crate::use_cases::plan::practice::today;
use crate::walk::page::{AdvicePage, Page};
use chrono::{DateTime, Duration, FixedOffset, NaiveTime};
use lifting::advise::advice::Advice;
use lifting::advise::facts::Facts;
use lifting::advise::{RecentUse, Request, advise, care_needed};
use lifting::body::WarningSign;
use lifting::rules::who;
use lifting::task::{LoadMass, Task};
use lifting::way::Way;
use std::collections::{BTreeMap, BTreeSet};
use vault::{LiftFilter, Vault};

/// How far back ways used count for variety.
const RECENT: Duration = Duration::weeks(2);
/// Most lifts looked at for variety. House rule.
const MOST_RECENT: u32 = 200;

/// The advice on a walk whose questions are all answered.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn judge(call: &Call<'_>, standing: &Standing) -> Result<Advice, Failure> {
    Ok(advise(&request(call, standing)?))
}

/// What the judgement is asked for a walk.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn request(call: &Call<'_>, standing: &Standing) -> Result<Request, Failure> {
    let walk = standing.walk();
    let vault = call.vault()?;
    let person = person::to_judge(&walk, &standing.about, open_signs(vault)?);
    let mut request = Request::new(person, task::to_judge(&walk));
    request.recent = recent(vault, call.now)?;
    request.bouts_today = goes_today(vault, call.now)?;
    put_plan(call, &mut request)?;
    Ok(request)
}

/// The advice that needs no more questions: a warning sign is open, or nobody here may be advised.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn judge_early(call: &Call<'_>, standing: &Standing) -> Result<Option<Advice>, Failure> {
    let walk = standing.walk();
    let person = person::to_judge(&walk, &standing.about, open_signs(call.vault()?)?);
    let any_task = Task::of(LoadMass::Untested {
        low: None,
        high: None,
    });
    let mut request = Request::new(person, any_task);
    put_plan(call, &mut request)?;
    // Asked apart, so that the whole judgement is made only for somebody it ends for.
    let is_final = care_needed(&request).is_some()
        || !who::check(&Facts::of(&request, &request.task)).is_empty();
    Ok(is_final.then(|| advise(&request)))
}

/// The page of an advice, which is noted in the draft.
///
/// # Errors
/// What writing the vault gives.
pub(crate) fn keep_advice(
    call: &Call<'_>,
    standing: &mut Standing,
    judged: &Advice,
) -> Result<Page, Failure> {
    standing.draft.advice = Some(advice::to_record(judged));
    standing.draft.open_question = None;
    standing.keep(call.vault()?)?;
    page(call, standing, judged)
}

/// The page of an advice.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn page(call: &Call<'_>, standing: &Standing, judged: &Advice) -> Result<Page, Failure> {
    let mut card = super::cards::card(call, judged)?;
    card.plan_text = plan_text(call)?;
    Ok(Page::Advice(AdvicePage {
        card,
        saved: standing.draft.saved_task,
    }))
}

/// Which plan an advice obeys.
fn plan_text(call: &Call<'_>) -> Result<Option<String>, Failure> {
    let reader = call.reader()?;
    let followed = call.vault()?.followed().active()?;
    let done = goes_today(call.vault()?, call.now)?;
    Ok(followed.map(|followed| {
        let title = lines::title(&followed.plan, reader);
        let args = [
            ("title", title.into()),
            ("from", from_text(&followed, reader).into()),
        ];
        let card = reader.words.format("plan-card", &args);
        let often = lines::often(&followed.plan, reader);
        let noted = (done > 0 && followed.plan.bouts_a_day.is_some()).then(|| {
            reader
                .words
                .format("plan-often-noted", &[("count", done.into())])
        });
        let past = expired_note(&followed.plan, call.now, reader);
        let parts = [Some(card), Some(often), noted, past].into_iter().flatten();
        let said: Vec<String> = parts.filter(|part| !part.is_empty()).collect();
        said.join(" ")
    }))
}

/// The plan that is followed, at the level of today; a flare-up that was told today counts.
fn put_plan(call: &Call<'_>, request: &mut Request) -> Result<(), Failure> {
    if let Some(today) = today(call)? {
        request.plan = Some(today.day.to_judge());
        request.history = today.day.history_for_a_lift();
        today.day.mark(&mut request.person);
    }
    Ok(())
}

/// The plan that is followed, as it holds today.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn followed(call: &Call<'_>) -> Result<Option<lifting::plan::Plan>, Failure> {
    Ok(today(call)?.map(|today| today.day.to_judge()))
}

/// The signs that are open. A sign that this version does not know cannot be judged, so it counts as one
/// that needs care today.
pub(crate) fn open_signs(vault: &Vault) -> Result<BTreeSet<WarningSign>, Failure> {
    let open = vault.signs().open()?;
    let known = |id: &str| WarningSign::from_id(id).unwrap_or(WarningSign::FeverUnwell);
    Ok(open.iter().map(|sign| known(&sign.sign)).collect())
}

/// Lifts noted as done since midnight, each of them one go, however many times it was.
fn goes_today(vault: &Vault, now: DateTime<FixedOffset>) -> Result<u32, Failure> {
    let midnight = now.with_time(NaiveTime::MIN).earliest().unwrap_or(now);
    let lifts = vault.lifts().newest(&LiftFilter {
        done: Some(true),
        since_ms: Some(midnight.timestamp_millis()),
        limit: MOST_RECENT,
        ..LiftFilter::default()
    })?;
    Ok(u32::try_from(lifts.len()).unwrap_or(MOST_RECENT))
}

/// How often each way was used in the last two weeks.
fn recent(vault: &Vault, now: DateTime<FixedOffset>) -> Result<RecentUse, Failure> {
    let since = now.checked_sub_signed(RECENT).unwrap_or(now);
    let lifts = vault.lifts().newest(&LiftFilter {
        done: Some(true),
        since_ms: Some(since.timestamp_millis()),
        limit: MOST_RECENT,
        ..LiftFilter::default()
    })?;
    let mut used: BTreeMap<Way, u32> = BTreeMap::new();
    for way in lifts.iter().filter_map(|(_, lift)| lift.way) {
        *used.entry(advice_back::way(way)).or_default() += 1;
    }
    Ok(RecentUse(used))
}

#[cfg(test)]
#[path = "judging_tests.rs"]
mod tests;
