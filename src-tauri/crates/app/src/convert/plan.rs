//! A plan as kept, as the judgement takes it.

use super::advice_back;
use chrono::{DateTime, FixedOffset, NaiveDate};
use lifting::body::Region;
use lifting::plan::{PainBands, Plan, Validity};
use lifting::quantity::{Kilograms, PainScore, Repetitions, Weeks};
use lifting::task::HeightWord;
use record::{Day, WayStanding};
use std::collections::BTreeSet;

/// Days in a week.
const WEEK: f64 = 7.0;

/// The plan on the day of `now`.
///
/// With more than one thing to practise, the level is the lightest of them: the careful side.
#[must_use]
pub(crate) fn to_judge(plan: &record::Plan, now: DateTime<FixedOffset>) -> Plan {
    let score = |pain: record::Pain| PainScore::of(pain.rating());
    let of_standing = |standing: WayStanding| -> BTreeSet<_> {
        let ways = plan.ways.iter();
        ways.filter(|said| said.standing == standing)
            .map(|said| advice_back::way(said.way))
            .collect()
    };
    Plan {
        validity: validity(plan.review_on, now),
        max: plan.ceiling_g.map(mass),
        max_by_height: plan
            .ceilings
            .iter()
            .filter_map(|ceiling| {
                Some((
                    HeightWord::from_id(ceiling.start.id())?,
                    mass(ceiling.grams),
                ))
            })
            .collect(),
        times_a_bout: plan.times_a_bout.map(Repetitions::of),
        bouts_a_day: plan.bouts_a_day.map(Repetitions::of),
        allowed: None,
        avoid: of_standing(WayStanding::NotAllowed),
        prefer: of_standing(WayStanding::Preferred),
        pain_ceiling: plan.pain_ceiling.map(score),
        step: plan.progression.step_g.map(mass),
        current: plan
            .practice
            .iter()
            .map(|practice| practice.grams)
            .min()
            .map(mass),
        good_sessions: plan.progression.good_days,
        hold_from: plan.progression.hold_from.map(score),
        back_over: plan.progression.back_over.map(score),
        steps_locked: plan.progression.is_locked,
        grace: Some(Weeks::clamped(f64::from(plan.grace_weeks))),
        bands: plan
            .bands
            .iter()
            .filter_map(|bands| {
                let region = Region::from_id(bands.region.id())?;
                let bands = PainBands {
                    moderate_from: score(bands.moderate_from),
                    severe_from: score(bands.severe_from),
                };
                Some((region, bands))
            })
            .collect(),
    }
}

/// Grams as the judgement takes them.
#[must_use]
pub(crate) fn mass(grams: u32) -> Kilograms {
    Kilograms::clamped(f64::from(grams) / 1000.0)
}

/// Whether a plan to be reviewed on a day still holds.
#[must_use]
pub(crate) fn validity(review_on: Day, now: DateTime<FixedOffset>) -> Validity {
    let over = days_over(review_on, now);
    if over <= 0 {
        Validity::Valid
    } else {
        Validity::Expired {
            overdue: Some(Weeks::clamped(f64::from(over) / WEEK)),
        }
    }
}

/// Whole days from a day to now; negative before it.
#[must_use]
pub(crate) fn days_over(day: Day, now: DateTime<FixedOffset>) -> i32 {
    to_day(now.date_naive()).0.saturating_sub(day.0)
}

/// A date as it is kept.
#[must_use]
pub(crate) fn to_day(date: NaiveDate) -> Day {
    let days = date.signed_duration_since(NaiveDate::default()).num_days();
    Day(i32::try_from(days).unwrap_or(i32::MAX))
}

/// A kept day as a date. One that no calendar holds, which only a made-up record does, becomes the first of 1970.
#[must_use]
pub(crate) fn to_date(day: Day) -> NaiveDate {
    let since = chrono::TimeDelta::days(i64::from(day.0));
    NaiveDate::default()
        .checked_add_signed(since)
        .unwrap_or_default()
}

#[cfg(test)]
#[path = "plan_tests.rs"]
mod tests;
