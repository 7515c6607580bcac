//! The command `pose`: the figure for one way, whatever the rules say of it.

mod reply;

use crate::advise::{ObjectWire, PersonWire};
use crate::choice::Choice;
use crate::error::{DoorError, ErrorCode};
use crate::fields::fields_of;
use crate::read::read;
use lifting::advise::Request;
use lifting::advise::facts::Facts;
use lifting::body::Person;
use lifting::loads::lift::lift;
use lifting::loads::spine::LeverArm;
use lifting::posture::solve::NoPosture;
use lifting::quantity::Kilograms;
use lifting::task::{LoadMass, Task};
use lifting::way::Way;
pub use reply::PoseReply;
use serde::Deserialize;
use serde_json::{Map, Value};

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct PoseWire {
    way: Choice<Way>,
    person: Option<PersonWire>,
    object: Option<ObjectWire>,
}

/// The fields of the command.
pub(crate) fn fields() -> &'static [&'static str] {
    fields_of::<PoseWire>()
}

/// Answers the command. Warning signs need not have been asked: a figure is no advice.
///
/// # Errors
/// What [`read`] gives, `out_of_range` and its like with the field's path, and `no_posture` at the field that is in the way when
/// hands, balance and joints cannot all be kept.
pub(crate) fn pose(body: Map<String, Value>) -> Result<PoseReply, DoorError> {
    let PoseWire {
        way: Choice(way),
        person,
        object,
    } = read(body)?;
    let person = person.map_or_else(|| Ok(Person::default()), PersonWire::for_figure)?;
    let empty = || Task::of(LoadMass::Known(Kilograms::clamped(0.0)));
    let task = object.map_or_else(|| Ok(empty()), ObjectWire::checked)?;
    let request = Request::new(person, task);
    let facts = Facts::of(&request, &request.task);
    let solved = lift(way, &facts, LeverArm::USUAL);
    solved
        .map(|lift| PoseReply::of(&lift))
        .map_err(|why| DoorError::at(ErrorCode::NoPosture, in_the_way(why)))
}

/// What about the task leaves no posture: where the hands would have to be, how low, or how heavy it is.
const fn in_the_way(why: NoPosture) -> &'static str {
    match why {
        NoPosture::OutOfReach => "object.reach_cm",
        NoPosture::BeyondRange => "object.start_height_cm",
        NoPosture::TipsOver => "object.mass_kg",
    }
}

#[cfg(test)]
#[path = "pose_tests.rs"]
mod tests;
