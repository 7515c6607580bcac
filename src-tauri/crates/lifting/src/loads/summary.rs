//! One line for each way: what it costs back, hips, knees and breath. It ranks and explains, and never decides.

use super::lift::{Lift, lift};
use super::spine::LeverArm;
use super::statics::Joint;
use crate::advise::facts::{Band, Facts, Rated};
use crate::body::Region;
use crate::energy::predicted::{Stroke, per_lift};
use crate::quantity::{BodyMass, Kilocalories, Kilograms, NewtonMetres, Newtons};
use crate::way::Way;

/// Compression at L5/S1 used as a yardstick, N (NIOSH 1981 action limit; source `niosh_1981`).
pub const ACTION_LIMIT_N: f64 = 3400.0;
/// Shear at the low back used as a yardstick, N (Gallagher & Marras 2012, up to 100 a day; source `gallagher_2012`).
const SHEAR_LIMIT_N: f64 = 1000.0;
/// Extensor moment of a knee used as a yardstick, N·m for each kilogram of the person. House rule, for ranking only.
const KNEE_PER_KG: f64 = 2.0;
/// The same for a hip. House rule, for ranking only.
const HIP_PER_KG: f64 = 2.5;
/// Mass of somebody whose mass is not known, for the yardsticks (50th percentile woman, ANSUR II). House rule.
const USUAL_MASS_KG: f64 = 66.8;

/// What one way costs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WayLoads {
    /// The way.
    pub way: Way,
    /// Largest extensor moment at L5/S1 along the way.
    pub moment_l5s1: NewtonMetres,
    /// Compression there.
    pub compression: Newtons,
    /// Shear there.
    pub shear: Newtons,
    /// Left knee, extensor positive.
    pub knee_left: NewtonMetres,
    /// Right knee.
    pub knee_right: NewtonMetres,
    /// Left hip.
    pub hip_left: NewtonMetres,
    /// Right hip.
    pub hip_right: NewtonMetres,
    /// Energy of one lift.
    pub energy: Kilocalories,
}

/// What each of these ways costs; ways without a posture are left out.
#[must_use]
pub fn of(facts: &Facts<'_>, ways: &[Way]) -> Vec<WayLoads> {
    ways.iter()
        .filter_map(|way| Some(of_lift(facts, &lift(*way, facts, LeverArm::USUAL).ok()?)))
        .collect()
}

/// What one solved way costs.
#[must_use]
pub fn of_lift(facts: &Facts<'_>, lift: &Lift) -> WayLoads {
    let leg = |joint| NewtonMetres::of(lift.leg_moment(joint));
    WayLoads {
        way: lift.lowest.way,
        moment_l5s1: NewtonMetres::of(lift.peak.moment_nm),
        compression: Newtons::of(lift.disc_at_peak.compression_n),
        shear: Newtons::of(lift.disc_at_peak.shear_n),
        knee_left: leg(Joint::KneeLeft),
        knee_right: leg(Joint::KneeRight),
        hip_left: leg(Joint::HipLeft),
        hip_right: leg(Joint::HipRight),
        energy: energy(facts, lift.lowest.way),
    }
}

fn energy(facts: &Facts<'_>, way: Way) -> Kilocalories {
    per_lift(
        way,
        &Stroke {
            person: facts
                .person
                .mass
                .unwrap_or(BodyMass::clamped(USUAL_MASS_KG)),
            sex: facts.person.sex,
            load: facts.mass.unwrap_or(Kilograms::clamped(0.0)),
            start: facts.start,
            end: facts.end,
        },
    )
}

/// The worst ratio of load to yardstick over the regions that hurt, each yardstick shaded by today's pain.
/// For ranking only; never shown as a limit.
#[must_use]
pub fn worst_ratio(facts: &Facts<'_>, loads: &WayLoads) -> f64 {
    let ratios = Ratios::of(facts, loads);
    [
        (facts.back, ratios.back),
        (facts.knee_left, ratios.knee_left),
        (facts.knee_right, ratios.knee_right),
        (facts.hip_left, ratios.hip_left),
        (facts.hip_right, ratios.hip_right),
    ]
    .into_iter()
    .map(|(rated, ratio)| ratio / shade(rated))
    .fold(0.0, f64::max)
}

/// How much a way asks of a region, for drawing. House rule: under half of the yardstick, and under the whole.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Asks {
    /// Little.
    Little,
    /// Some.
    Some,
    /// Much.
    Much,
}

impl Asks {
    /// The stable id.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::Little => "little",
            Self::Some => "some",
            Self::Much => "much",
        }
    }

    fn of(ratio: f64) -> Self {
        if ratio < 0.5 {
            Self::Little
        } else if ratio < 1.0 {
            Self::Some
        } else {
            Self::Much
        }
    }
}

/// What a way asks of each region, by yardsticks for healthy people, whatever hurts today.
#[must_use]
pub fn asks(facts: &Facts<'_>, loads: &WayLoads) -> Vec<(Region, Asks)> {
    let ratios = Ratios::of(facts, loads);
    vec![
        (Region::Back, Asks::of(ratios.back)),
        (Region::KneeLeft, Asks::of(ratios.knee_left)),
        (Region::KneeRight, Asks::of(ratios.knee_right)),
        (Region::HipLeft, Asks::of(ratios.hip_left)),
        (Region::HipRight, Asks::of(ratios.hip_right)),
    ]
}

/// Ratios of load to yardstick.
struct Ratios {
    back: f64,
    knee_left: f64,
    knee_right: f64,
    hip_left: f64,
    hip_right: f64,
}

impl Ratios {
    fn of(facts: &Facts<'_>, loads: &WayLoads) -> Self {
        let mass = facts.person.mass.map_or(USUAL_MASS_KG, BodyMass::value);
        let knee = |moment: NewtonMetres| moment.value().abs() / (KNEE_PER_KG * mass);
        let hip = |moment: NewtonMetres| moment.value().abs() / (HIP_PER_KG * mass);
        Self {
            back: (loads.compression.value() / ACTION_LIMIT_N)
                .max(loads.shear.value().abs() / SHEAR_LIMIT_N),
            knee_left: knee(loads.knee_left),
            knee_right: knee(loads.knee_right),
            hip_left: hip(loads.hip_left),
            hip_right: hip(loads.hip_right),
        }
    }
}

/// How much of a yardstick is left to a region that hurts. House rule, for ranking only.
fn shade(rated: Rated) -> f64 {
    match rated.band {
        Band::None => 1.0,
        Band::Mild => 0.8,
        Band::Moderate => 0.5,
        Band::Severe => 0.25,
    }
}
