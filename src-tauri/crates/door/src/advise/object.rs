//! `object`: the load, from where to where, how often.

use crate::choice::Choice;
use crate::error::{DoorError, ErrorCode};
use crate::section::Section;
use lifting::quantity::{Centimetres, Degrees, Kilograms, Metres, Minutes, Repetitions};
use lifting::task::{Coupling, Height, HeightWord, Helper, LoadMass, Reach, ReachWord, Task};
use serde::Deserialize;

const OBJECT: Section = Section("object");

/// The most helpers taken. House rule.
const MOST_HELPERS: u32 = 20;

/// The task as it stands on the wire. A missing key and `null` both mean "not asked"; a measured
/// height or reach wins over the word.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct ObjectWire {
    mass_known: Option<bool>,
    mass_kg: Option<f64>,
    guess_low_kg: Option<f64>,
    guess_high_kg: Option<f64>,
    divisible: Option<bool>,
    awkward: Option<bool>,
    living: Option<bool>,
    start_height: Option<Choice<HeightWord>>,
    start_height_cm: Option<f64>,
    end_height_cm: Option<f64>,
    reach: Option<Choice<ReachWord>>,
    reach_cm: Option<f64>,
    twist_deg: Option<f64>,
    carry_m: Option<f64>,
    coupling: Option<Choice<Coupling>>,
    two_hands: Option<bool>,
    width_cm: Option<f64>,
    depth_cm: Option<f64>,
    reps: Option<u32>,
    span_min: Option<f64>,
    helpers: Option<u32>,
    helper_max_kg: Option<Vec<Option<f64>>>,
}

impl ObjectWire {
    /// The task, every number checked.
    pub(crate) fn checked(self) -> Result<Task, DoorError> {
        Ok(Task {
            mass: self.mass()?,
            divisible: self.divisible,
            awkward: self.awkward,
            living: self.living.unwrap_or(false),
            start: self.start()?,
            end: OBJECT
                .quantity("end_height_cm", self.end_height_cm, Centimetres::new)?
                .map(Height::Measured),
            reach: self.reach()?,
            twist: OBJECT.quantity("twist_deg", self.twist_deg, Degrees::new)?,
            carry: OBJECT.quantity("carry_m", self.carry_m, Metres::new)?,
            coupling: self.coupling.map(|coupling| coupling.0),
            two_hands: self.two_hands,
            width: OBJECT.quantity("width_cm", self.width_cm, Centimetres::new)?,
            depth: OBJECT.quantity("depth_cm", self.depth_cm, Centimetres::new)?,
            repetitions: OBJECT.quantity("reps", self.reps, Repetitions::new)?,
            span: OBJECT.quantity("span_min", self.span_min, Minutes::new)?,
            helpers: self.helpers()?,
        })
    }

    /// A mass that is given is known unless `mass_known` says otherwise, and then both cannot be true.
    fn mass(&self) -> Result<LoadMass, DoorError> {
        let mass = OBJECT.quantity("mass_kg", self.mass_kg, Kilograms::new)?;
        let low = OBJECT.quantity("guess_low_kg", self.guess_low_kg, Kilograms::new)?;
        let high = OBJECT.quantity("guess_high_kg", self.guess_high_kg, Kilograms::new)?;
        let in_order = !matches!((low, high), (Some(low), Some(high)) if low > high);
        OBJECT.consistent("guess_low_kg", in_order)?;
        match (self.mass_known, mass) {
            (Some(false), Some(_)) => Err(OBJECT.fault(ErrorCode::Contradiction, "mass_kg")),
            (Some(true), None) => Err(OBJECT.fault(ErrorCode::MissingField, "mass_kg")),
            (_, Some(mass)) => Ok(LoadMass::Known(mass)),
            (_, None) => Ok(LoadMass::Untested { low, high }),
        }
    }

    fn start(&self) -> Result<Option<Height>, DoorError> {
        let measured =
            OBJECT.quantity("start_height_cm", self.start_height_cm, Centimetres::new)?;
        let word = self.start_height.map(|word| Height::Word(word.0));
        Ok(measured.map(Height::Measured).or(word))
    }

    fn reach(&self) -> Result<Option<Reach>, DoorError> {
        let measured = OBJECT.quantity("reach_cm", self.reach_cm, Centimetres::new)?;
        let word = self.reach.map(|word| Reach::Word(word.0));
        Ok(measured.map(Reach::Measured).or(word))
    }

    /// As many helpers as were counted; those past the end of the list have no known limit.
    fn helpers(&self) -> Result<Vec<Helper>, DoorError> {
        let mut helpers = Vec::new();
        for (place, limit) in self.helper_max_kg.iter().flatten().enumerate() {
            let own_limit =
                OBJECT.quantity(&format!("helper_max_kg[{place}]"), *limit, Kilograms::new)?;
            helpers.push(Helper { own_limit });
        }
        let listed = helpers.len();
        let Some(count) = OBJECT.count("helpers", self.helpers, MOST_HELPERS)? else {
            let few = u32::try_from(listed).is_ok_and(|listed| listed <= MOST_HELPERS);
            return if few {
                Ok(helpers)
            } else {
                Err(OBJECT.fault(ErrorCode::OutOfRange, "helper_max_kg"))
            };
        };
        let count = usize::try_from(count).unwrap_or(usize::MAX);
        OBJECT.consistent("helper_max_kg", listed <= count)?;
        helpers.resize(count, Helper::default());
        Ok(helpers)
    }
}
