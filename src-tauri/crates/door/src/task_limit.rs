//! The command `task_limit`: the revised NIOSH equation for one or more tasks, in either unit system.

mod reply;
mod request;

pub(crate) use reply::limit_value;

use crate::choice::Choice;
use crate::error::{DoorError, ErrorCode};
use crate::fields::{PartFields, fields_of};
use crate::read::read;
use lifting::limits::niosh::{LiftingTask, UnitSystem, Units, composite, task_limit as limit_of};
use request::{MetricCommand, MetricTask, UnitsOnly, UsCommand, UsTask};
use serde_json::{Map, Value, json};

/// The fields of the command and of its tasks.
pub(crate) fn fields() -> Vec<PartFields> {
    vec![
        ("task_limit", fields_of::<MetricCommand>()),
        ("tasks metric", fields_of::<MetricTask>()),
        ("tasks us", fields_of::<UsTask>()),
    ]
}

/// Answers the command.
///
/// # Errors
/// What [`read`] gives, and `out_of_range`, `missing_field` and `contradiction` with the field's path.
/// A task beyond the equation's cut-offs is no error: its limit is 0.
pub(crate) fn task_limit(body: Map<String, Value>) -> Result<Value, DoorError> {
    match units(&body)? {
        Units::Metric => answer(&read::<MetricCommand>(body)?.checked()?),
        Units::Us => answer(&read::<UsCommand>(body)?.checked()?),
    }
}

/// The unit system decides which fields there are, so it is read first.
fn units(body: &Map<String, Value>) -> Result<Units, DoorError> {
    let given = body
        .iter()
        .filter(|(key, _)| *key == "units")
        .map(|(key, value)| (key.clone(), value.clone()));
    let UnitsOnly { units } = read(given.collect())?;
    Ok(units.map_or(Units::Metric, |Choice(units)| units))
}

fn answer<S: UnitSystem>(tasks: &[LiftingTask<S>]) -> Result<Value, DoorError> {
    if tasks.is_empty() {
        return Err(DoorError::at(ErrorCode::OutOfRange, "tasks"));
    }
    let limits: Vec<Value> = tasks
        .iter()
        .map(|task| limit_value(&limit_of(task)))
        .collect();
    let index = composite(tasks).map(|job| job.index);
    Ok(json!({ "tasks": limits, "composite_lifting_index": index }))
}

#[cfg(test)]
#[path = "task_limit_tests.rs"]
mod tests;
