//! The five multipliers that come from geometry and grip. Each is 1 at best and 0 beyond its cut-off.
//! Unrounded: the manual's tables print two decimals.

use super::units::{Length, UnitSystem};
use crate::quantity::Degrees;
use crate::task::Coupling;

/// Loss of AM for each degree of twist (NIOSH 94-110, section 1.3.4).
const A_SLOPE: f64 = 0.0032;
/// Largest twist covered, in degrees (NIOSH 94-110, section 1.3.4).
const A_MAX_DEG: f64 = 135.0;
/// The part of DM that does not depend on D (NIOSH 94-110, section 1.3.3).
const D_BASE: f64 = 0.82;
/// CM for a fair grip below knuckle height (NIOSH 94-110, table 7).
const FAIR_BELOW: f64 = 0.95;
/// CM for a poor grip at any height (NIOSH 94-110, table 7).
const POOR: f64 = 0.90;

/// Horizontal multiplier, `25/H` (cm) or `10/H` (in); 1 up to 25 cm or 10 in, 0 beyond 63 cm or 25 in.
#[must_use]
pub fn hm<S: UnitSystem>(h: Length<S>) -> f64 {
    let h = h.value();
    if h > S::H_MAX {
        0.0
    } else if h <= S::H_MIN {
        1.0
    } else {
        S::H_MIN / h
    }
}

/// Vertical multiplier, `1 − 0.003·|V − 75|` (cm) or `1 − 0.0075·|V − 30|` (in); 0 above 175 cm or 70 in.
#[must_use]
pub fn vm<S: UnitSystem>(v: Length<S>) -> f64 {
    let v = v.value();
    if v > S::V_MAX {
        0.0
    } else {
        1.0 - S::V_SLOPE * (v - S::V_BEST).abs()
    }
}

/// Distance multiplier, `0.82 + 4.5/D` (cm) or `0.82 + 1.8/D` (in), where D is the difference of the two heights;
/// 1 up to 25 cm or 10 in, 0 beyond 175 cm or 70 in. Lifting and lowering count alike.
#[must_use]
pub fn dm<S: UnitSystem>(v_origin: Length<S>, v_destination: Length<S>) -> f64 {
    let d = (v_destination.value() - v_origin.value()).abs();
    if d > S::D_MAX {
        0.0
    } else if d <= S::D_MIN {
        1.0
    } else {
        D_BASE + S::D_NUMERATOR / d
    }
}

/// Asymmetry multiplier, `1 − 0.0032·A`; 0 beyond 135 degrees.
#[must_use]
pub fn am(a: Degrees) -> f64 {
    let a = a.value();
    if a > A_MAX_DEG {
        0.0
    } else {
        1.0 - A_SLOPE * a
    }
}

/// Coupling multiplier: good 1; fair 0.95 below knuckle height (75 cm, 30 in), else 1; poor 0.90.
#[must_use]
pub fn cm<S: UnitSystem>(coupling: Coupling, v: Length<S>) -> f64 {
    match coupling {
        Coupling::Good => 1.0,
        Coupling::Fair => {
            if v.value() < S::V_BEST {
                FAIR_BELOW
            } else {
                1.0
            }
        }
        Coupling::Poor => POOR,
    }
}
