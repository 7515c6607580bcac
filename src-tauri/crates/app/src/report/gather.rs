//! The facts of a report, from the vault.

use super::{Before, Report, Told, plan};
use crate::convert::advice_back;
use crate::convert::history::AID_FIRST;
use crate::convert::moment::from_record;
use crate::failure::Failure;
use chrono::{DateTime, Datelike, FixedOffset, NaiveDate, NaiveTime};
use lifting::quantity::{Kilograms, PainScore, Repetitions};
use lifting::review::{Day, Decision, KeptLift, look_back};
use record::{BackState, BodyToday, CheckIn, CheckInKind, LiftFacts, Mass, Outcome, Pain};
use vault::Vault;

const DAY_MS: i64 = 24 * 60 * 60 * 1000;

/// Everything kept since a day, oldest first, and what it says together.
///
/// # Errors
/// What the vault gives.
pub(crate) fn gather(
    vault: &Vault,
    since: Option<NaiveDate>,
    now: DateTime<FixedOffset>,
) -> Result<Report, Failure> {
    // A day earlier than any place's midnight; which day it was there decides below.
    let since_ms = since.map(|since| {
        let midnight = since.and_time(NaiveTime::MIN).and_utc();
        midnight.timestamp_millis().saturating_sub(DAY_MS)
    });
    let check_ins = vault.check_ins().since(since_ms)?;
    let told = vault
        .lifts()
        .facts_since(since_ms)?
        .into_iter()
        .map(|(id, lift)| tell(lift, check_ins.get(&id).map_or(&[], Vec::as_slice)))
        .filter(|told| since_is(since, told))
        .collect();
    Ok(Report {
        plan: plan::followed(vault)?,
        ..report_of(told, since, now)
    })
}

/// What was told, oldest first, with what it says together.
pub(super) fn report_of(
    told: Vec<Told>,
    since: Option<NaiveDate>,
    now: DateTime<FixedOffset>,
) -> Report {
    let kept: Vec<KeptLift> = told.iter().map(kept).collect();
    Report {
        of: None,
        made: now,
        since,
        review: look_back(&kept, day(now)),
        told,
        plan: None,
        practice: None,
    }
}

/// Whether it is not from before `since`.
pub(super) fn since_is(since: Option<NaiveDate>, told: &Told) -> bool {
    since.is_none_or(|since| told.at.date_naive() >= since)
}

fn tell(lift: LiftFacts, check_ins: &[CheckIn]) -> Told {
    let said = |kinds: &[CheckInKind]| {
        let last = check_ins
            .iter()
            .rev()
            .find(|check_in| kinds.contains(&check_in.kind) && check_in.pain.is_some());
        last.and_then(|check_in| check_in.pain).map(Pain::rating)
    };
    Told {
        at: from_record(lift.at),
        title: lift.title,
        advised: lift.outcome,
        rules: lift.rule_version,
        done: lift.done,
        way: lift.way,
        first: lift.advised,
        aid_first: Some(lift.cautions.iter().any(|id| id == AID_FIRST)),
        mass_g: match lift.mass {
            Some(Mass::Known { grams }) => Some((grams, grams)),
            Some(Mass::Untested {
                low_grams,
                high_grams,
            }) => Some((low_grams, high_grams)),
            Some(Mass::Unknown) | None => None,
        },
        times: lift.reps.unwrap_or(1).max(1),
        before: before(&lift.body),
        during: said(&[CheckInKind::During, CheckInKind::After]),
        next_morning: said(&[CheckInKind::NextMorning]),
        flare: lift.body.back_state == Some(BackState::Flare),
    }
}

fn before(body: &BodyToday) -> Before {
    let rating = |pain: Option<Pain>| pain.map(Pain::rating);
    Before {
        back: rating(body.back),
        knee_left: rating(body.knee_left),
        knee_right: rating(body.knee_right),
        hip_left: rating(body.hip_left),
        hip_right: rating(body.hip_right),
        shoulders: rating(body.shoulders),
    }
}

/// A guess counts with its upper end, as it was judged.
fn kept(told: &Told) -> KeptLift {
    let score = |rating: Option<u8>| rating.map(PainScore::of);
    KeptLift {
        day: day(told.at),
        decision: decision(told),
        mass: told
            .mass_g
            .map(|(_, high)| Kilograms::clamped(f64::from(high) / 1000.0)),
        times: Repetitions::of(told.times),
        way: told.way.map(advice_back::way),
        advised: told.first.map(advice_back::way),
        aid_first: told.aid_first,
        before: score(told.before.worst()),
        during: score(told.during),
        next_morning: score(told.next_morning),
        flare: told.flare,
    }
}

const fn decision(told: &Told) -> Decision {
    match (told.done, told.advised) {
        (false, _) => Decision::Left,
        (true, Outcome::Lift) => Decision::Done,
        (true, Outcome::LiftWithChange) => Decision::DoneUnchanged,
        (true, Outcome::DoNotLift | Outcome::SeekCare | Outcome::Refuse) => Decision::DoneAgainst,
    }
}

fn day(at: DateTime<FixedOffset>) -> Day {
    Day::of(at.date_naive().num_days_from_ce())
}

/// The date of a day of a review.
#[must_use]
pub(crate) fn date_of(day: Day) -> NaiveDate {
    NaiveDate::from_num_days_from_ce_opt(day.number()).unwrap_or_default()
}
