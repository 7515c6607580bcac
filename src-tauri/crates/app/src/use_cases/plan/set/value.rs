//! Reading the new value of a field.

use super::Editing;
use crate::convert::plan::to_day;
use crate::failure::Failure;
use crate::use_cases::plan::bounds::MOST_REVIEW_DAYS;
use crate::words::{KILOGRAMS_PER_POUND, Units};
use chrono::NaiveDate;
use door::ErrorCode;
use handoff::Alias;
use record::{NextMorning, Pain, Way, Wording};
use serde_json::Value;

pub(super) fn fault(code: ErrorCode) -> Failure {
    Failure::at(code, "value")
}

pub(super) fn needed<T>(value: Option<T>) -> Result<T, Failure> {
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
pub(super) fn sentence(value: &Value, longest: usize) -> Result<Option<Wording>, Failure> {
    Ok(line(value, longest)?.map(Wording::Typed))
}

/// Typed text on one line; `None` when nothing is left of it.
pub(super) fn line(value: &Value, longest: usize) -> Result<Option<String>, Failure> {
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
    Ok((!text.is_empty()).then_some(text))
}

pub(super) fn review_day(value: &Value, editing: Editing) -> Result<record::Day, Failure> {
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
pub(super) fn mass(value: &Value, most: u32, editing: Editing) -> Result<Option<u32>, Failure> {
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
pub(super) fn count(value: &Value, least: u32, most: u32) -> Result<Option<u32>, Failure> {
    if value.is_null() {
        return Ok(None);
    }
    let number = value.as_u64().ok_or_else(|| fault(ErrorCode::WrongType))?;
    match u32::try_from(number) {
        Ok(number) if (least..=most).contains(&number) => Ok(Some(number)),
        _ => Err(fault(ErrorCode::OutOfRange)),
    }
}

pub(super) fn score(value: &Value) -> Result<Option<Pain>, Failure> {
    let rating = count(value, 0, u32::from(Pain::WORST))?;
    Ok(rating.and_then(|rating| Pain::new(u8::try_from(rating).ok()?)))
}

pub(super) fn morning(value: &Value) -> Result<Option<NextMorning>, Failure> {
    match value.as_str() {
        None if !value.is_null() => Err(fault(ErrorCode::WrongType)),
        None | Some("none") => Ok(None),
        Some(id) => match NextMorning::from_id(id) {
            Some(rule) => Ok(Some(rule)),
            None => Err(fault(ErrorCode::NotAChoice)),
        },
    }
}

pub(super) fn way(value: &Value) -> Result<Way, Failure> {
    let id = value.as_str().ok_or_else(|| fault(ErrorCode::WrongType))?;
    Way::from_id(id).ok_or_else(|| fault(ErrorCode::NotAChoice))
}

pub(super) fn way_list(value: &Value) -> Result<Vec<Way>, Failure> {
    let list = value
        .as_array()
        .ok_or_else(|| fault(ErrorCode::WrongType))?;
    let mut ways = list.iter().map(way).collect::<Result<Vec<_>, _>>()?;
    ways.sort_unstable();
    ways.dedup();
    Ok(ways)
}
