//! The command `review`: the look back over lifts that the caller gives, so that anyone can check its numbers.

mod reply;
mod request;

use crate::error::DoorError;
use crate::fields::{PartFields, fields_of};
use crate::read::read;
use lifting::review::look_back;
use reply::ReviewReply;
use request::{KeptLiftWire, ReviewWire};
use serde_json::{Map, Value};

/// The fields of the command and of its lifts.
pub(crate) fn fields() -> Vec<PartFields> {
    vec![
        ("review", fields_of::<ReviewWire>()),
        ("lifts", fields_of::<KeptLiftWire>()),
    ]
}

/// Answers the command.
///
/// # Errors
/// What [`read`] gives, and `out_of_range` with the field's path.
pub(crate) fn review(body: Map<String, Value>) -> Result<ReviewReply, DoorError> {
    let (lifts, until) = read::<ReviewWire>(body)?.checked()?;
    Ok(ReviewReply::of(&look_back(&lifts, until)))
}

#[cfg(test)]
#[path = "review_tests.rs"]
mod tests;
