//! What is practised.

use super::value::way;
use crate::failure::Failure;
use door::ErrorCode;
use record::{Plan, Practice};
use serde_json::Value;

/// What to practise begins careful: with the lightest that is set anywhere, few times.
pub(super) fn practice_way(plan: &mut Plan, value: &Value) -> Result<(), Failure> {
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

pub(super) fn practised(plan: &mut Plan) -> Result<&mut Practice, Failure> {
    let first = plan.practice.first_mut();
    first.ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "field"))
}
