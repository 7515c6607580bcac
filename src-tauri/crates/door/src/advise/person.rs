//! `person`: who would lift, and how the body is today.

use crate::choice::{Choice, ChoiceOrUnknown, set_of};
use crate::error::{DoorError, ErrorCode};
use crate::section::Section;
use lifting::body::{
    AgeBand, BackState, Balance, Condition, Kneeling, PainToday, Person, Sex, WarningSign,
};
use lifting::quantity::{BodyMass, OutOfRange, Stature, Weeks};
use serde::Deserialize;

const PERSON: Section = Section("person");

/// The longest pregnancy taken, in weeks; births later than 43 weeks are hardly known. House rule.
const LONGEST_PREGNANCY: f64 = 45.0;

/// The longest note, in bytes. House rule.
const LONGEST_NOTE: usize = 4000;

/// The person as it stands on the wire. A missing key and `null` both mean "not asked".
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PersonWire {
    age_band: Option<Choice<AgeBand>>,
    sex: Option<Choice<Sex>>,
    stature_cm: Option<f64>,
    mass_kg: Option<f64>,
    back_nrs: Option<u8>,
    knee_left_nrs: Option<u8>,
    knee_right_nrs: Option<u8>,
    hip_left_nrs: Option<u8>,
    hip_right_nrs: Option<u8>,
    shoulder_nrs: Option<u8>,
    back_state: Option<Choice<BackState>>,
    balance: Option<ChoiceOrUnknown<Balance>>,
    fell_last_year: Option<bool>,
    can_kneel: Option<ChoiceOrUnknown<Kneeling>>,
    flags: Option<Vec<Choice<WarningSign>>>,
    conditions: Option<Vec<Choice<Condition>>>,
    pregnancy_weeks: Option<f64>,
    weeks_since_surgery: Option<f64>,
    note: Option<String>,
}

impl PersonWire {
    /// The person for a figure: warning signs need not have been asked.
    pub(crate) fn for_figure(mut self) -> Result<Person, DoorError> {
        self.flags.get_or_insert_default();
        self.checked()
    }

    /// The person, every number checked.
    pub(crate) fn checked(self) -> Result<Person, DoorError> {
        if self.note.is_some_and(|note| note.len() > LONGEST_NOTE) {
            return Err(PERSON.fault(ErrorCode::TooLong, "note"));
        }
        Ok(Person {
            signs: set_of(
                self.flags
                    .ok_or_else(|| PERSON.fault(ErrorCode::AnswerNeeded, "flags"))?,
            ),
            age: self.age_band.map(|age| age.0),
            sex: self.sex.map(|sex| sex.0),
            stature: PERSON.quantity("stature_cm", self.stature_cm, Stature::new)?,
            mass: PERSON.quantity("mass_kg", self.mass_kg, BodyMass::new)?,
            pain: PainToday {
                back: PERSON.pain("back_nrs", self.back_nrs)?,
                knee_left: PERSON.pain("knee_left_nrs", self.knee_left_nrs)?,
                knee_right: PERSON.pain("knee_right_nrs", self.knee_right_nrs)?,
                hip_left: PERSON.pain("hip_left_nrs", self.hip_left_nrs)?,
                hip_right: PERSON.pain("hip_right_nrs", self.hip_right_nrs)?,
                shoulders: PERSON.pain("shoulder_nrs", self.shoulder_nrs)?,
            },
            back_state: self.back_state.map(|state| state.0),
            balance: self.balance.and_then(|balance| balance.0),
            fell_last_year: self.fell_last_year,
            can_kneel: self.can_kneel.and_then(|kneeling| kneeling.0),
            conditions: set_of(self.conditions.unwrap_or_default()),
            pregnancy: PERSON.quantity("pregnancy_weeks", self.pregnancy_weeks, weeks_pregnant)?,
            since_surgery: PERSON.quantity(
                "weeks_since_surgery",
                self.weeks_since_surgery,
                Weeks::new,
            )?,
        })
    }
}

fn weeks_pregnant(weeks: f64) -> Result<Weeks, OutOfRange> {
    if weeks <= LONGEST_PREGNANCY {
        return Weeks::new(weeks);
    }
    Err(OutOfRange {
        name: "time",
        unit: "weeks",
        min: Weeks::MIN,
        max: LONGEST_PREGNANCY,
    })
}
