//! Changing one field of a plan.

use super::check::contradiction;
use super::fields::{
    CUES, MOST_GOOD_DAYS, MOST_GRACE_WEEKS, MOST_GRAMS, MOST_SETS, MOST_STEP_GRAMS, MOST_TIMES,
};
use super::ways;
use crate::convert::plan::to_day;
use crate::failure::Failure;
use crate::words::{KILOGRAMS_PER_POUND, Units};
use chrono::{DateTime, FixedOffset, NaiveDate};
use door::ErrorCode;
use handoff::Alias;
use record::{Ceiling, HeightWord, NextMorning, Pain, Plan, Practice, Way, WayStanding, Wording};
use serde_json::Value;

/// Longest typed sentence, in characters (house rule).
const LONGEST_SENTENCE: usize = 200;
/// Longest step for a flare-up, in characters (house rule): it is read by somebody in pain.
const LONGEST_STEP: usize = 60;
/// Longest notes (house rule): the longest plan of all still fits on one page of paper.
const LONGEST_NOTES: usize = 700;
/// Most days until a plan is looked at again: as long as a parcel may be valid.
const MOST_REVIEW_DAYS: i32 = 400;

/// Who edits, and when.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Editing {
    /// The time.
    pub(crate) now: DateTime<FixedOffset>,
    /// The unit of masses.
    pub(crate) units: Units,
}

/// Changes one field. Nothing is changed if the plan would contradict itself.
///
/// # Errors
/// `not_a_choice` at `field` for a field there is none of; at `value`: `wrong_type`, `out_of_range`, `too_long`,
/// `not_a_choice`, `alias_length`, `alias_character`; `plan_contradiction` at the field.
pub(crate) fn set(
    plan: &Plan,
    field: &str,
    value: &Value,
    editing: Editing,
) -> Result<Plan, Failure> {
    let mut changed = plan.clone();
    change(&mut changed, field, value, editing)?;
    match contradiction(&changed) {
        Some(found) => Err(Failure::at(ErrorCode::PlanContradiction, field).saying(found.says())),
        None => Ok(changed),
    }
}

fn change(plan: &mut Plan, field: &str, value: &Value, editing: Editing) -> Result<(), Failure> {
    let rule = &mut plan.progression;
    match field {
        "for" => plan.whom = alias(value)?,
        "title" => {
            plan.title = sentence(value, 60)?.ok_or_else(|| fault(ErrorCode::MissingField))?;
        }
        "review_on" => plan.review_on = review_day(value, editing)?,
        "grace_weeks" => {
            let weeks = count(value, 0, MOST_GRACE_WEEKS)?;
            plan.grace_weeks = weeks.ok_or_else(|| fault(ErrorCode::MissingField))?;
        }
        "ceiling" => plan.ceiling_g = mass(value, MOST_GRAMS, editing)?,
        "times_a_bout" => plan.times_a_bout = count(value, 1, MOST_TIMES)?,
        "bouts_a_day" => plan.bouts_a_day = count(value, 1, MOST_TIMES)?,
        "pain_ceiling" => plan.pain_ceiling = score(value)?,
        "next_morning" => plan.next_morning = morning(value)?,
        "preferred" => ways::set(plan, WayStanding::Preferred, &way_list(value)?),
        "not_allowed" => ways::set(plan, WayStanding::NotAllowed, &way_list(value)?),
        "practice_way" => practice_way(plan, value)?,
        "practice_load" => {
            let grams = mass(value, MOST_GRAMS, editing)?;
            practised(plan)?.grams = grams.ok_or_else(|| fault(ErrorCode::MissingField))?;
        }
        "practice_sets" => practised(plan)?.sets = needed(count(value, 1, MOST_SETS)?)?,
        "practice_times" => practised(plan)?.times = needed(count(value, 1, MOST_SETS)?)?,
        "practice_days" => practised(plan)?.days_a_week = needed(count(value, 1, 7)?)?,
        "step" => rule.step_g = mass(value, MOST_STEP_GRAMS, editing)?,
        "good_days" => rule.good_days = count(value, 1, MOST_GOOD_DAYS)?,
        "hold_from" => rule.hold_from = score(value)?,
        "back_over" => rule.back_over = score(value)?,
        "locked" => {
            let locked = value.as_bool();
            rule.is_locked = locked.ok_or_else(|| fault(ErrorCode::WrongType))?;
        }
        "why" => plan.why = sentence(value, LONGEST_SENTENCE)?,
        "notes" => plan.notes = sentence(value, LONGEST_NOTES)?.into_iter().collect(),
        other => return change_one_of_many(plan, other, value, editing),
    }
    Ok(())
}

/// Fields with a part in their name: a height, a way, a place in a list.
fn change_one_of_many(
    plan: &mut Plan,
    field: &str,
    value: &Value,
    editing: Editing,
) -> Result<(), Failure> {
    let unknown = || Failure::at(ErrorCode::NotAChoice, "field");
    if let Some(height) = field.strip_prefix("ceiling_") {
        let start = HeightWord::from_id(height).ok_or_else(unknown)?;
        let grams = mass(value, MOST_GRAMS, editing)?;
        plan.ceilings.retain(|ceiling| ceiling.start != start);
        plan.ceilings
            .extend(grams.map(|grams| Ceiling { start, grams }));
        plan.ceilings.sort_by_key(|ceiling| ceiling.start);
        return Ok(());
    }
    if let Some(way) = field.strip_prefix("why_") {
        let way = Way::from_id(way).ok_or_else(unknown)?;
        let why = sentence(value, LONGEST_SENTENCE)?;
        return if ways::set_why(plan, way, why) {
            Ok(())
        } else {
            Err(unknown())
        };
    }
    let in_list = |list: &str| {
        let place = field.strip_prefix(list)?.parse::<usize>().ok()?;
        (1..=CUES).contains(&place).then_some(place)
    };
    if let Some(place) = in_list("flare_") {
        let mut steps = plan.flare.take().unwrap_or_default();
        put(&mut steps, place, sentence(value, LONGEST_STEP)?);
        plan.flare = Some(steps).filter(|steps| !steps.is_empty());
        return Ok(());
    }
    let place = in_list("cue_").ok_or_else(unknown)?;
    put(&mut plan.cues, place, sentence(value, LONGEST_SENTENCE)?);
    Ok(())
}

/// Puts a sentence at its place in a list, counted from 1, or takes out what stands there.
fn put(list: &mut Vec<Wording>, place: usize, said: Option<Wording>) {
    let at = place.saturating_sub(1);
    match (said, list.get_mut(at)) {
        (Some(said), Some(there)) => *there = said,
        (Some(said), None) => list.push(said),
        (None, Some(_)) => {
            list.remove(at);
        }
        (None, None) => {}
    }
}

fn fault(code: ErrorCode) -> Failure {
    Failure::at(code, "value")
}

fn needed<T>(value: Option<T>) -> Result<T, Failure> {
    value.ok_or_else(|| fault(ErrorCode::MissingField))
}

/// A typed name, as it is told between the two.
pub(super) fn alias(value: &Value) -> Result<String, Failure> {
    let text = value.as_str().ok_or_else(|| fault(ErrorCode::WrongType))?;
    let alias = crate::use_cases::handoff::device::read_alias(text).map_err(|failure| Failure {
        field: Some("value".to_owned()),
        ..failure
    })?;
    Ok(Alias::as_str(&alias).to_owned())
}

/// A typed sentence on one line; `None` when nothing is left of it.
fn sentence(value: &Value, longest: usize) -> Result<Option<Wording>, Failure> {
    if value.is_null() {
        return Ok(None);
    }
    let text = value.as_str().ok_or_else(|| fault(ErrorCode::WrongType))?;
    let words: Vec<&str> = text.split_whitespace().collect();
    let text = words.join(" ");
    if text.chars().any(char::is_control) {
        return Err(fault(ErrorCode::WrongType));
    }
    if text.chars().count() > longest {
        return Err(fault(ErrorCode::TooLong));
    }
    Ok((!text.is_empty()).then_some(Wording::Typed(text)))
}

fn review_day(value: &Value, editing: Editing) -> Result<record::Day, Failure> {
    let text = value.as_str().ok_or_else(|| fault(ErrorCode::WrongType))?;
    let date =
        NaiveDate::parse_from_str(text, "%Y-%m-%d").map_err(|_| fault(ErrorCode::WrongType))?;
    let (day, today) = (to_day(date), to_day(editing.now.date_naive()));
    if (0..=MOST_REVIEW_DAYS).contains(&day.0.saturating_sub(today.0)) {
        Ok(day)
    } else {
        Err(fault(ErrorCode::OutOfRange))
    }
}

/// A mass in the reader's unit, as grams; `null` for none.
fn mass(value: &Value, most: u32, editing: Editing) -> Result<Option<u32>, Failure> {
    if value.is_null() {
        return Ok(None);
    }
    let number = value.as_f64().ok_or_else(|| fault(ErrorCode::WrongType))?;
    let kilograms = match editing.units {
        Units::Kilograms => number,
        Units::Pounds => number * KILOGRAMS_PER_POUND,
    };
    if !(0.0..=f64::from(most) / 1000.0).contains(&kilograms) {
        return Err(fault(ErrorCode::OutOfRange));
    }
    Ok(Some(crate::convert::figures::thousandths(kilograms)))
}

/// A whole number within bounds; `null` for none.
fn count(value: &Value, least: u32, most: u32) -> Result<Option<u32>, Failure> {
    if value.is_null() {
        return Ok(None);
    }
    let number = value.as_u64().ok_or_else(|| fault(ErrorCode::WrongType))?;
    match u32::try_from(number) {
        Ok(number) if (least..=most).contains(&number) => Ok(Some(number)),
        _ => Err(fault(ErrorCode::OutOfRange)),
    }
}

fn score(value: &Value) -> Result<Option<Pain>, Failure> {
    let rating = count(value, 0, u32::from(Pain::WORST))?;
    Ok(rating.and_then(|rating| Pain::new(u8::try_from(rating).ok()?)))
}

fn morning(value: &Value) -> Result<Option<NextMorning>, Failure> {
    match value.as_str() {
        None if !value.is_null() => Err(fault(ErrorCode::WrongType)),
        None | Some("none") => Ok(None),
        Some(id) => match NextMorning::from_id(id) {
            Some(rule) => Ok(Some(rule)),
            None => Err(fault(ErrorCode::NotAChoice)),
        },
    }
}

fn way(value: &Value) -> Result<Way, Failure> {
    let id = value.as_str().ok_or_else(|| fault(ErrorCode::WrongType))?;
    Way::from_id(id).ok_or_else(|| fault(ErrorCode::NotAChoice))
}

fn way_list(value: &Value) -> Result<Vec<Way>, Failure> {
    let list = value
        .as_array()
        .ok_or_else(|| fault(ErrorCode::WrongType))?;
    let mut ways = list.iter().map(way).collect::<Result<Vec<_>, _>>()?;
    ways.sort_unstable();
    ways.dedup();
    Ok(ways)
}

/// What to practise begins careful: with the lightest that is set anywhere, few times.
fn practice_way(plan: &mut Plan, value: &Value) -> Result<(), Failure> {
    if value.is_null() || value.as_str() == Some("none") {
        plan.practice.clear();
        return Ok(());
    }
    let way = way(value)?;
    match plan.practice.first_mut() {
        Some(practice) => practice.way = way,
        None => plan.practice.push(Practice {
            way,
            grams: 0,
            sets: 2,
            times: 6,
            days_a_week: 3,
        }),
    }
    Ok(())
}

fn practised(plan: &mut Plan) -> Result<&mut Practice, Failure> {
    let first = plan.practice.first_mut();
    first.ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "field"))
}
