//! How near a load comes: between the feet, or only in front of feet and knees.
//!
//! Width is seen from the front and so lies outside the plane: the knee-gap rule below stands for it.

use super::skeleton::{LegPoints, Size};
use crate::naming::named;
use crate::quantity::Centimetres;

/// The gap that feet and knees can leave for a load, share of stature: about 34 cm at 170 cm. Estimate:
/// hip breadth and some.
const KNEE_GAP: f64 = 0.20;
/// Between the feet, hands come this near to the mid-ankles, share of stature: about 14 cm at 170 cm, over the
/// front of the feet. Estimate.
const NEAREST_BETWEEN: f64 = 0.085;
/// Beside a single standing foot, share of stature. Estimate.
const NEAREST_BESIDE: f64 = 0.06;
/// From the knee joint to the front of the knee, share of stature. Estimate.
const KNEE_FRONT: f64 = 0.03;
/// From L5/S1 to the belly, share of stature: waist depth 0.13 (ANSUR II) less what lies behind. Estimate.
const BELLY: f64 = 0.085;
/// Depth of a load that was not measured. House rule: a moving box.
const USUAL_DEPTH: Centimetres = Centimetres::clamped(30.0);
/// Width of a load that was not measured: taken as too wide to come between the feet. House rule, careful side.
const USUAL_WIDTH: Centimetres = Centimetres::clamped(45.0);

named!(
    /// Where the load is while it is gripped.
    Fit {
        /// Between the feet.
        BetweenFeet = "between_feet",
        /// In front of feet and knees.
        InFront = "in_front",
    }
);

/// The outline of a load as far as reach depends on it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outline {
    width_m: f64,
    depth_m: f64,
}

impl Outline {
    /// From width (side to side) and depth (front to back), as far as they are known.
    #[must_use]
    pub fn new(width: Option<Centimetres>, depth: Option<Centimetres>) -> Self {
        Self {
            width_m: width.unwrap_or(USUAL_WIDTH).value() / 100.0,
            depth_m: depth.unwrap_or(USUAL_DEPTH).value() / 100.0,
        }
    }

    /// Depth, front to back, m.
    #[must_use]
    pub const fn depth_m(&self) -> f64 {
        self.depth_m
    }

    /// Whether it passes between the knees.
    #[must_use]
    pub fn fit(&self, size: Size) -> Fit {
        if self.width_m <= size.length(KNEE_GAP) {
            Fit::BetweenFeet
        } else {
            Fit::InFront
        }
    }

    /// The nearest the hands come to the mid-ankles when the load is in front: its rear edge stops at toes or knee.
    pub(super) fn nearest_in_front(&self, size: Size, leg: &LegPoints) -> f64 {
        farther(leg.toe.x, leg.knee.x + size.length(KNEE_FRONT)) + self.depth_m / 2.0
    }

    /// The nearest the hands come to the knee on the ground: the front foot is set beside the load, whose rear edge
    /// stops at that knee.
    pub(super) fn nearest_before_kneeling(&self, size: Size) -> f64 {
        size.length(KNEE_FRONT) + self.depth_m / 2.0
    }

    /// The nearest the hands come when the load is held before the belly.
    pub(super) fn nearest_before_belly(&self, size: Size, l5s1_x: f64) -> f64 {
        l5s1_x + size.length(BELLY) + self.depth_m / 2.0
    }
}

/// The nearest the hands come to the mid-ankles when the load stands between the feet, m.
pub(super) fn nearest_between(size: Size) -> f64 {
    size.length(NEAREST_BETWEEN)
}

/// The nearest the hand comes to the ankle of a single standing foot, m.
pub(super) fn nearest_beside(size: Size) -> f64 {
    size.length(NEAREST_BESIDE)
}

/// How softly one distance gives way to another, m.
const SOFTLY_M: f64 = 0.01;

/// The farther of two distances, m, without the kink where they are equal: the solver would stall on it. At most
/// half a centimetre more than the farther one.
pub(super) fn farther(one: f64, other: f64) -> f64 {
    f64::midpoint(one, other) + (one - other).hypot(SOFTLY_M) / 2.0
}
