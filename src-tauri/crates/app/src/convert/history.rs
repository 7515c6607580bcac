//! A history put together to be handed over.

use crate::call::Call;
use crate::convert::moment;
use crate::failure::Failure;
use chrono::{DateTime, Days, FixedOffset, NaiveTime, TimeZone};
use lifting::advise::advice::Caution;
use record::{
    CheckIn, Day, History, HistoryLift, HistoryPractice, Lift, LookBack, OpenSign, PlanVersion,
    PracticeEvent, SignRaised,
};
use vault::{LiftFilter, Vault};

use super::plan::to_day;
use super::practice::to_hand;

/// Most lifts in one history (house rule): some years of several a day.
const MOST_LIFTS: u32 = 5000;
/// The caution that asks for an aid or help first.
pub(crate) const AID_FIRST: &str = Caution::AidOrHelpFirst.id();
/// Milliseconds in a minute.
const MINUTE_MS: i64 = 60_000;

/// Everything since so many days ago, or from the beginning. `with_notes`: names of things go along.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn gather(
    call: &Call<'_>,
    from: &str,
    since_days: Option<u32>,
    with_notes: bool,
) -> Result<History, Failure> {
    let vault = call.vault()?;
    let since = since_days.and_then(|days| start(call.now, days));
    let since_ms = since.map(|since| since.timestamp_millis());
    let mut lifts = vault.lifts().newest(&LiftFilter {
        since_ms,
        limit: MOST_LIFTS,
        ..LiftFilter::default()
    })?;
    // By the clock, not by the order of keeping: minutes only go forward.
    lifts.sort_by_key(|(id, lift)| (minutes(lift.at.at_ms), *id));
    let start_min = lifts.first().map_or(0, |(_, lift)| minutes(lift.at.at_ms));
    let mut words = Vec::new();
    let mut before = start_min;
    let mut entries = Vec::new();
    let check_ins = vault.check_ins().since(since_ms)?;
    for (id, lift) in &lifts {
        let looks = check_ins.get(id).map_or(&[][..], Vec::as_slice);
        entries.push(entry(lift, looks, before, with_notes, &mut words));
        before = minutes(lift.at.at_ms);
    }
    Ok(History {
        from: from.to_owned(),
        made_at: moment::to_record(call.now),
        since: since.map(|since| to_day(since.date_naive())),
        with_notes,
        plan: followed(vault)?,
        start_min,
        lifts: entries,
        signs: signs(vault, since_ms, &mut words)?,
        words,
        practice: practice(vault, since_ms)?,
    })
}

/// The first and the last day of a history's lifts.
#[must_use]
pub(crate) fn days(history: &History) -> Option<(Day, Day)> {
    let offset_min = i64::from(history.made_at.offset_min);
    let day = |minutes: i64| {
        let days = minutes.saturating_add(offset_min).div_euclid(24 * 60);
        Day(i32::try_from(days).unwrap_or_default())
    };
    let after = |sum: i64, lift: &HistoryLift| {
        sum.saturating_add(i64::try_from(lift.after_min).unwrap_or(i64::MAX))
    };
    let first = history.lifts.first()?;
    let last = history.lifts.iter().fold(history.start_min, after);
    Some((day(after(history.start_min, first)), day(last)))
}

/// Midnight, by the local clock, so many days ago.
fn start(now: DateTime<FixedOffset>, days: u32) -> Option<DateTime<FixedOffset>> {
    let day = now.date_naive().checked_sub_days(Days::new(days.into()))?;
    now.offset()
        .from_local_datetime(&day.and_time(NaiveTime::MIN))
        .single()
}

fn followed(vault: &Vault) -> Result<Option<PlanVersion>, Failure> {
    let followed = vault.followed().active()?;
    Ok(followed.map(|followed| PlanVersion {
        id: followed.plan.id,
        version: followed.plan.version,
    }))
}

/// The log of the plan that is followed. What the level was before goes along from the beginning.
fn practice(vault: &Vault, since_ms: Option<i64>) -> Result<Option<Vec<HistoryPractice>>, Failure> {
    let Some(followed) = vault.followed().active()? else {
        return Ok(None);
    };
    let sets_the_level = |event| {
        matches!(
            event,
            PracticeEvent::StepUp | PracticeEvent::StepDown | PracticeEvent::Flare
        )
    };
    let all = vault.practice().all()?;
    let log = all.iter().map(|(_, entry)| entry).filter(|entry| {
        entry.plan == followed.plan.id
            && (since_ms.is_none_or(|since| entry.at.at_ms >= since) || sets_the_level(entry.event))
    });
    let log: Vec<HistoryPractice> = log.map(to_hand).collect();
    Ok((!log.is_empty()).then_some(log))
}

fn entry(
    lift: &Lift,
    looks: &[CheckIn],
    before_min: i64,
    with_notes: bool,
    words: &mut Vec<String>,
) -> HistoryLift {
    let body = &lift.body;
    HistoryLift {
        after_min: after(before_min, lift.at.at_ms),
        done: lift.done,
        outcome: lift.advice.outcome,
        way: lift.way,
        advised: lift.advice.ways.first().copied(),
        mass: lift.task.mass,
        start: lift.task.start,
        times: lift.task.reps.unwrap_or(0),
        pain: [
            body.back,
            body.knee_left,
            body.knee_right,
            body.hip_left,
            body.hip_right,
            body.shoulders,
        ],
        back_state: body.back_state,
        looks: looks
            .iter()
            .map(|look| LookBack {
                kind: look.kind,
                after_min: after(minutes(lift.at.at_ms), look.at.at_ms),
                pain: look.pain,
                back_to_usual: look.back_to_usual,
            })
            .collect(),
        instead: lift.instead.as_deref().map_or(0, |id| point(words, id)),
        title: if with_notes {
            point(words, &lift.title)
        } else {
            0
        },
        aid_first: Some(lift.advice.cautions.iter().any(|id| id == AID_FIRST)),
    }
}

fn signs(
    vault: &Vault,
    since_ms: Option<i64>,
    words: &mut Vec<String>,
) -> Result<Vec<SignRaised>, Failure> {
    let is_in = |sign: &&OpenSign| since_ms.is_none_or(|since| sign.raised_at.at_ms >= since);
    let raised = vault.signs().all()?;
    let signs = raised.iter().filter(is_in).map(|sign| SignRaised {
        at_min: minutes(sign.raised_at.at_ms),
        sign: point(words, &sign.sign),
        is_cleared: sign.cleared.is_some(),
    });
    Ok(signs.collect())
}

/// Where a text stands in the list, counted from 1; put there if need be.
fn point(words: &mut Vec<String>, text: &str) -> u32 {
    let at = words.iter().position(|word| word == text);
    let at = at.unwrap_or_else(|| {
        words.push(text.to_owned());
        words.len() - 1
    });
    u32::try_from(at).map_or(0, |at| at + 1)
}

fn minutes(at_ms: i64) -> i64 {
    at_ms.div_euclid(MINUTE_MS)
}

/// Minutes from then to a moment; none if the clock went back.
fn after(before_min: i64, at_ms: i64) -> u64 {
    u64::try_from(minutes(at_ms).saturating_sub(before_min)).unwrap_or(0)
}
