//! The command `pose`: the figure for one way. Its line is read; the figure is not built yet.

use crate::advise::{ObjectWire, PersonWire};
use crate::choice::Choice;
use crate::error::{DoorError, ErrorCode};
use crate::fields::fields_of;
use crate::read::read;
use lifting::way::Way;
use serde::Deserialize;
use serde_json::{Map, Value};

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct PoseWire {
    way: Choice<Way>,
    #[serde(rename = "person")]
    _person: Option<PersonWire>,
    #[serde(rename = "object")]
    _object: Option<ObjectWire>,
}

/// The fields of the command.
pub(crate) fn fields() -> &'static [&'static str] {
    fields_of::<PoseWire>()
}

/// Answers the command.
///
/// # Errors
/// What [`read`] gives, else `not_built`.
pub(crate) fn pose(body: Map<String, Value>) -> Result<Value, DoorError> {
    let PoseWire {
        way: Choice(_way), ..
    } = read(body)?;
    Err(DoorError::new(ErrorCode::NotBuilt))
}
