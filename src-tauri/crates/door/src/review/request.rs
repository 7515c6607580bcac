//! Kept lifts as they stand on the wire.

use crate::choice::Choice;
use crate::error::{DoorError, ErrorCode};
use lifting::quantity::{Kilograms, OutOfRange, PainScore, Repetitions};
use lifting::review::{Day, Decision, KeptLift};
use lifting::way::Way;
use serde::Deserialize;

/// The latest day taken, counted from day 0: a hundred years. House rule.
const LAST_DAY: u32 = 36_525;

/// The command. Days are counted from any fixed day.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ReviewWire {
    until_day: u32,
    lifts: Vec<KeptLiftWire>,
}

/// One lift. A missing key and `null` both mean "not told".
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct KeptLiftWire {
    day: u32,
    decision: Choice<Decision>,
    mass_kg: Option<f64>,
    times: Option<u32>,
    way: Option<Choice<Way>>,
    advised_way: Option<Choice<Way>>,
    aid_first: Option<bool>,
    before_nrs: Option<u8>,
    during_nrs: Option<u8>,
    next_morning_nrs: Option<u8>,
    flare: Option<bool>,
}

impl ReviewWire {
    /// The lifts and the day to look back from, every number checked.
    pub(super) fn checked(self) -> Result<(Vec<KeptLift>, Day), DoorError> {
        let until = day(self.until_day, || "until_day".to_owned())?;
        let lifts = self.lifts.into_iter().enumerate();
        let lifts = lifts.map(|(place, lift)| lift.checked(At(place)));
        Ok((lifts.collect::<Result<_, _>>()?, until))
    }
}

impl KeptLiftWire {
    fn checked(self, at: At) -> Result<KeptLift, DoorError> {
        Ok(KeptLift {
            day: day(self.day, || at.path("day"))?,
            decision: self.decision.0,
            mass: at.maybe("mass_kg", self.mass_kg, Kilograms::new)?,
            times: at
                .maybe("times", self.times, Repetitions::new)?
                .unwrap_or(Repetitions::ONCE),
            way: self.way.map(|way| way.0),
            advised: self.advised_way.map(|way| way.0),
            aid_first: self.aid_first,
            before: at.maybe("before_nrs", self.before_nrs, PainScore::new)?,
            during: at.maybe("during_nrs", self.during_nrs, PainScore::new)?,
            next_morning: at.maybe("next_morning_nrs", self.next_morning_nrs, PainScore::new)?,
            flare: self.flare.unwrap_or(false),
        })
    }
}

fn day(number: u32, path: impl Fn() -> String) -> Result<Day, DoorError> {
    let fault = || DoorError::at(ErrorCode::OutOfRange, path());
    if number > LAST_DAY {
        return Err(fault());
    }
    i32::try_from(number).map(Day::of).map_err(|_| fault())
}

/// The place of a lift in the list, for paths.
#[derive(Clone, Copy)]
struct At(usize);

impl At {
    fn path(self, key: &str) -> String {
        format!("lifts[{}].{key}", self.0)
    }

    fn maybe<N, T>(
        self,
        key: &str,
        number: Option<N>,
        make: fn(N) -> Result<T, OutOfRange>,
    ) -> Result<Option<T>, DoorError> {
        number
            .map(make)
            .transpose()
            .map_err(|_| DoorError::at(ErrorCode::OutOfRange, self.path(key)))
    }
}
