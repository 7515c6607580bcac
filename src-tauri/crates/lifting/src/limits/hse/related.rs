//! Figures of the same guidance for carrying, pushing, sitting and lifting together.

use crate::body::Sex;
use crate::quantity::{Kilograms, Metres};

/// Longest carry without a rest for which the lifting figures hold: about 10 m, load against the body, hands not
/// below the knuckles (L23; INDG143).
pub const CARRY_WITHOUT_REST: Metres = Metres::clamped(10.0);
/// Longest push or pull without a rest: about 20 m (L23; INDG143).
pub const PUSH_WITHOUT_REST: Metres = Metres::clamped(20.0);
/// Guideline weight sitting, women: hands in front of the trunk and close (L23; INDG143).
pub const SEATED_WOMEN: Kilograms = Kilograms::clamped(3.0);
/// Guideline weight sitting, men (L23; INDG143).
pub const SEATED_MEN: Kilograms = Kilograms::clamped(5.0);
/// What two people manage of the sum of what each manages: about two thirds (L23).
pub const TEAM_OF_TWO: f64 = 2.0 / 3.0;
/// What three people manage of the sum: about half (L23).
pub const TEAM_OF_THREE: f64 = 0.5;

/// Guideline forces for pushing and pulling, in kilograms of force, hands between knuckle and shoulder height.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PushForces {
    /// To start or stop the load.
    pub start_kgf: f64,
    /// To keep it moving.
    pub keep_kgf: f64,
}

/// Guideline forces for pushing and pulling (L23; INDG143, table 2). `None`: women's figures.
#[must_use]
pub fn push_forces(sex: Option<Sex>) -> PushForces {
    match sex.unwrap_or(Sex::Female) {
        Sex::Female => PushForces {
            start_kgf: 15.0,
            keep_kgf: 7.0,
        },
        Sex::Male => PushForces {
            start_kgf: 20.0,
            keep_kgf: 10.0,
        },
    }
}

/// What a team manages together, from what each member manages alone. One person manages the own figure; for nobody
/// and for more than three the guidance gives no factor.
#[must_use]
pub fn team_guide(each: &[Kilograms]) -> Option<Kilograms> {
    let factor = match each.len() {
        1 => 1.0,
        2 => TEAM_OF_TWO,
        3 => TEAM_OF_THREE,
        _ => return None,
    };
    Some(Kilograms::clamped(
        factor * each.iter().map(|own| own.value()).sum::<f64>(),
    ))
}
