//! The command `pose`: the figure for one way, whatever the rules say of it.

mod reply;

use crate::advise::{ObjectWire, PersonWire};
use crate::choice::Choice;
use crate::error::{DoorError, ErrorCode};
use crate::fields::{PartFields, fields_of};
use crate::read::read;
use crate::section::Section;
use lifting::advise::Request;
use lifting::advise::facts::Facts;
use lifting::body::Person;
use lifting::loads::lift::{NoLift, lift_leaning};
use lifting::loads::spine::LeverArm;
use lifting::loads::support::{HandSupport, NoSupport, Push, Rest};
use lifting::posture::solve::NoPosture;
use lifting::quantity::{Centimetres, Kilograms};
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
    support: Option<SupportWire>,
}

/// A hand that leans and lifts nothing.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct SupportWire {
    on: Choice<Rest>,
    push_n: f64,
    height_cm: Option<f64>,
}

const SUPPORT: Section = Section("support");

impl SupportWire {
    fn checked(self) -> Result<HandSupport, DoorError> {
        let push = SUPPORT.quantity("push_n", Some(self.push_n), Push::new)?;
        let height = SUPPORT.quantity("height_cm", self.height_cm, Centimetres::new)?;
        let furniture = self.on.0 == Rest::Furniture;
        SUPPORT.consistent("height_cm", furniture || height.is_none())?;
        Ok(HandSupport {
            on: self.on.0,
            push: push.unwrap_or(Push::clamped(0.0)),
            height: height.unwrap_or(HandSupport::TABLE),
        })
    }
}

/// The fields of the command and of its own part.
pub(crate) fn fields() -> Vec<PartFields> {
    vec![
        ("pose", fields_of::<PoseWire>()),
        ("support", fields_of::<SupportWire>()),
    ]
}

/// Answers the command. Warning signs need not have been asked: a figure is no advice.
///
/// # Errors
/// What [`read`] gives, `out_of_range` and its like with the field's path, and `no_posture` at the field that is in the
/// way when hands, balance and joints cannot all be kept.
pub(crate) fn pose(body: Map<String, Value>) -> Result<PoseReply, DoorError> {
    let PoseWire {
        way: Choice(way),
        person,
        object,
        support,
    } = read(body)?;
    let person = person.map_or_else(|| Ok(Person::default()), PersonWire::for_figure)?;
    let empty = || Task::of(LoadMass::Known(Kilograms::clamped(0.0)));
    let task = object.map_or_else(|| Ok(empty()), ObjectWire::checked)?;
    let request = Request::new(person, task);
    let facts = Facts::of(&request, &request.task);
    let support = support.map(SupportWire::checked).transpose()?;
    let solved = lift_leaning(way, &facts, LeverArm::USUAL, support.as_ref());
    solved
        .map(|lift| PoseReply::of(&lift))
        .map_err(|why| DoorError::at(ErrorCode::NoPosture, in_the_way(why)))
}

/// What about the task leaves no posture: where the hands would have to be, how low, or how heavy it is.
const fn in_the_way(why: NoLift) -> &'static str {
    match why {
        NoLift::Posture(NoPosture::OutOfReach) => "object.reach_cm",
        NoLift::Posture(NoPosture::BeyondRange) => "object.start_height_cm",
        NoLift::Posture(NoPosture::TipsOver) => "object.mass_kg",
        NoLift::Support(NoSupport::OutOfReach) => "support.height_cm",
        NoLift::Support(NoSupport::TipsOver) => "support.push_n",
    }
}

#[cfg(test)]
#[path = "pose_tests.rs"]
mod tests;
