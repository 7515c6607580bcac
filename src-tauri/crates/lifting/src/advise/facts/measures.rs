//! Heights and reach, in words or measured; what was not said is taken on the careful side.

use crate::body::{Condition, Person};
use crate::limits::niosh::{Metric, estimated_reach};
use crate::quantity::Centimetres;
use crate::task::{Height, HeightWord, Reach, ReachWord, Task};

/// Stature to which heights in words belong. House rule.
const WORD_STATURE_CM: f64 = 165.0;

/// No height in words lies above the end of the equation (NIOSH 94-110: 175 cm); a measured one may.
const HIGHEST_WORD_CM: f64 = 175.0;

/// 5th percentile of women's stature (ANSUR II, Gordon et al. 2014: 1525 mm).
pub(super) const SHORT_STATURE_CM: f64 = 152.5;

/// 95th percentile of men's stature (ANSUR II, Gordon et al. 2014: 1870 mm).
pub(super) const TALL_STATURE_CM: f64 = 187.0;

/// Knuckle height as a fraction of stature, barefoot (computed from ANSUR II).
const KNUCKLE: f64 = 0.42;

/// Where it is put down when that was not said. House rule.
pub(super) const DEFAULT_END_CM: f64 = 75.0;

/// Extra reach from mid-pregnancy on. House rule after the published advice that reach grows.
const PREGNANCY_EXTRA_REACH_CM: f64 = 10.0;

/// Weeks of pregnancy from which the extra reach counts. House rule.
const MID_PREGNANCY_WEEKS: f64 = 20.0;

/// Knuckle height; where stature is not known, that of a tall man, so that "low" is said rather too often.
#[must_use]
pub fn knuckle_height(person: &Person) -> Centimetres {
    Centimetres::clamped(KNUCKLE * stature_cm(person, TALL_STATURE_CM))
}

pub(super) fn stature_cm(person: &Person, when_unknown: f64) -> f64 {
    person
        .stature
        .map_or(when_unknown, |stature| stature.value())
}

pub(super) fn height(person: &Person, height: Height) -> Centimetres {
    match height {
        Height::Measured(height) => height,
        Height::Word(word) => height_of_word(person, word),
    }
}

pub(super) fn height_of_word(person: &Person, word: HeightWord) -> Centimetres {
    let at_165 = match word {
        HeightWord::Floor => 0.0,
        HeightWord::Shin => 20.0,
        HeightWord::Knee => 45.0,
        HeightWord::Waist => 95.0,
        HeightWord::Chest => 125.0,
        HeightWord::Overhead => 175.0,
    };
    let scaled = at_165 * stature_cm(person, WORD_STATURE_CM) / WORD_STATURE_CM;
    Centimetres::clamped(scaled.min(HIGHEST_WORD_CM))
}

/// Reach as said; at least what the load's depth makes it (NIOSH 94-110, section 1.1: 20 cm + depth/2,
/// 25 cm + depth/2 from below 25 cm).
pub(super) fn reach(person: &Person, task: &Task, start: Centimetres) -> Centimetres {
    let from_depth = task
        .depth
        .map(|depth| estimated_reach::<Metric>(depth.into(), start.into()).value());
    let said = task.reach.map(|reach| match reach {
        Reach::Measured(reach) => reach.value(),
        Reach::Word(ReachWord::Close) => 30.0,
        Reach::Word(ReachWord::Medium) => 45.0,
        Reach::Word(ReachWord::Far) => 63.0,
    });
    let reach = match (said, from_depth) {
        (Some(said), Some(from_depth)) => said.max(from_depth),
        (Some(reach), None) | (None, Some(reach)) => reach,
        (None, None) => 63.0,
    };
    Centimetres::clamped(if longer_reach(person) {
        reach + PREGNANCY_EXTRA_REACH_CM
    } else {
        reach
    })
}

pub(super) fn pregnant(person: &Person) -> bool {
    person.conditions.contains(&Condition::Pregnant)
        || person.pregnancy.is_some_and(|weeks| weeks.value() > 0.0)
}

pub(super) fn longer_reach(person: &Person) -> bool {
    pregnant(person)
        && person
            .pregnancy
            .is_none_or(|weeks| weeks.value() >= MID_PREGNANCY_WEEKS)
}
