//! Net energy of one lift or lowering by the prediction equations.

use crate::body::Sex;
use crate::quantity::{BodyMass, Centimetres, Kilocalories, Kilograms};
use crate::way::Way;

/// Hip height of the equations, m: below it the body bends, above it the arms lift.
const HIP_M: f64 = 0.81;

/// Who lifts what from where to where.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stroke {
    /// Mass of the person.
    pub person: BodyMass,
    /// `None`: as for women.
    pub sex: Option<Sex>,
    /// Mass of the load.
    pub load: Kilograms,
    /// Height of the hands at the start.
    pub start: Centimetres,
    /// Height of the hands at the end.
    pub end: Centimetres,
}

/// Net energy of one stroke, lifting or lowering, kcal; never below zero.
///
/// The half-kneel has no equation of its own: the squat's is taken (estimate). Lowering above hip height has
/// none either and is taken as costing what lifting the arms alone does.
#[must_use]
pub fn per_lift(way: Way, stroke: &Stroke) -> Kilocalories {
    let (start, end) = (stroke.start.value() / 100.0, stroke.end.value() / 100.0);
    let (low, high) = (start.min(end), start.max(end));
    let bend_to = high.min(HIP_M);
    let below = if low < HIP_M {
        bending(way, stroke, low, bend_to, end >= start)
    } else {
        0.0
    };
    let above = if high > HIP_M {
        arms(stroke, low.max(HIP_M), high)
    } else {
        0.0
    };
    Kilocalories::of((0.01 * (below + above)).max(0.0))
}

fn bending(way: Way, stroke: &Stroke, low: f64, high: f64, lifting: bool) -> f64 {
    let body = stroke.person.value() * (HIP_M - low);
    let moved = stroke.load.value() * (high - low);
    let male = male(stroke);
    match (way, lifting) {
        (Way::HipHinge | Way::FreeBend | Way::Upright, true) => {
            0.325 * body + (1.41 + 0.76 * male) * moved
        }
        (Way::Squat | Way::HalfKneelingLunge, true) => 0.514 * body + (2.19 + 0.62 * male) * moved,
        (Way::GolfersLift, true) => 0.352 * body + 3.03 * moved,
        (Way::Squat | Way::HalfKneelingLunge, false) => 0.511 * body + 0.701 * moved,
        (Way::HipHinge | Way::FreeBend | Way::GolfersLift | Way::Upright, false) => {
            0.268 * body + 0.675 * moved + 5.22 * male * (HIP_M - low)
        }
    }
}

fn arms(stroke: &Stroke, low: f64, high: f64) -> f64 {
    0.062 * stroke.person.value() * (high - HIP_M)
        + (3.19 - 0.52 * male(stroke)) * stroke.load.value() * (high - low)
}

fn male(stroke: &Stroke) -> f64 {
    if stroke.sex == Some(Sex::Male) {
        1.0
    } else {
        0.0
    }
}

/// Energy of standing bent between lifts, kcal a minute for each kilogram of the person (same source).
pub const STANDING_BENT_PER_KG: f64 = 0.028;
