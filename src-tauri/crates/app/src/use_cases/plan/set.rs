//! Changing one field of a plan.

mod bands;
mod practice;
mod value;

use self::value::{
    alias, count, fault, line, mass, morning, review_day, score, sentence, way_list,
};
use super::bounds::{
    CUES, LONGEST_CALL, LONGEST_NOTES, LONGEST_PRIVATE, LONGEST_SENTENCE, LONGEST_STEP,
    LONGEST_TITLE, MOST_GOOD_DAYS, MOST_GRACE_WEEKS, MOST_GRAMS, MOST_STEP_GRAMS, MOST_TIMES,
};
use super::check::contradiction;
use super::ways;
use crate::failure::Failure;
use crate::words::Units;
use chrono::{DateTime, FixedOffset};
use door::ErrorCode;
use record::{Ceiling, HeightWord, Plan, Way, WayStanding, Wording};
use serde_json::Value;

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

/// A reason that stays on this phone, as it is typed; `None` when nothing is left of it.
///
/// # Errors
/// `wrong_type`, `too_long` at `value`.
pub(super) fn read_private(value: &Value) -> Result<Option<String>, Failure> {
    line(value, LONGEST_PRIVATE)
}

fn change(plan: &mut Plan, field: &str, value: &Value, editing: Editing) -> Result<(), Failure> {
    let rule = &mut plan.progression;
    match field {
        "for" => plan.whom = alias(value)?,
        "title" => {
            plan.title =
                sentence(value, LONGEST_TITLE)?.ok_or_else(|| fault(ErrorCode::MissingField))?;
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
        "bands_for" => bands::set_regions(plan, value)?,
        "preferred" => ways::set(plan, WayStanding::Preferred, &way_list(value)?),
        "not_allowed" => ways::set(plan, WayStanding::NotAllowed, &way_list(value)?),
        "step" => rule.step_g = mass(value, MOST_STEP_GRAMS, editing)?,
        "good_days" => rule.good_days = count(value, 1, MOST_GOOD_DAYS)?,
        "hold_from" => rule.hold_from = score(value)?,
        "back_over" => rule.back_over = score(value)?,
        "locked" => {
            let locked = value.as_bool();
            rule.is_locked = locked.ok_or_else(|| fault(ErrorCode::WrongType))?;
        }
        "call" => plan.call = line(value, LONGEST_CALL)?,
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
    if let Some(set) = bands::set_band(plan, field, value) {
        return set;
    }
    if let Some(set) = practice::set_practice(plan, field, value, editing) {
        return set;
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
