//! What is practised.

use super::Editing;
use super::value::{count, mass, needed, way};
use crate::failure::Failure;
use crate::use_cases::plan::bounds::{ITEMS, MOST_DAYS, MOST_GRAMS, MOST_SETS};
use crate::use_cases::plan::practice_field;
use door::ErrorCode;
use record::{Plan, Practice, Way};
use serde_json::Value;

/// Sets a part of what is practised, if `field` names one.
pub(super) fn set_practice(
    plan: &mut Plan,
    field: &str,
    value: &Value,
    editing: Editing,
) -> Option<Result<(), Failure>> {
    let (part, at) = practice_field::read(field)?;
    if part == "way" {
        return Some(set_way(plan, at, value));
    }
    let item = plan.practice.get_mut(at)?;
    let number = |most| needed(count(value, 1, most)?);
    Some(match part {
        "load" => mass(value, MOST_GRAMS, editing)
            .and_then(needed)
            .map(|grams| item.grams = grams),
        "sets" => number(MOST_SETS).map(|sets| item.sets = sets),
        "times" => number(MOST_SETS).map(|times| item.times = times),
        "days" => number(MOST_DAYS).map(|days| item.days_a_week = days),
        _ => return None,
    })
}

/// Sets which way is practised at a place, begins a new thing right behind the last, or removes one: what comes after it
/// moves up.
fn set_way(plan: &mut Plan, at: usize, value: &Value) -> Result<(), Failure> {
    let there = plan.practice.len();
    if at > there || at >= ITEMS {
        return Err(Failure::at(ErrorCode::NotAChoice, "field"));
    }
    if value.is_null() || value.as_str() == Some("none") {
        if at < there {
            plan.practice.remove(at);
        }
        return Ok(());
    }
    let way = way(value)?;
    if let Some(practice) = plan.practice.get_mut(at) {
        practice.way = way;
    } else {
        plan.practice.push(begun(plan, way));
    }
    Ok(())
}

/// What to practise begins careful: with the least that is practised already, and few times. House rule.
fn begun(plan: &Plan, way: Way) -> Practice {
    let least = plan.practice.iter().map(|practice| practice.grams).min();
    Practice {
        way,
        grams: least.unwrap_or(0),
        sets: 2,
        times: 6,
        days_a_week: 3,
    }
}
