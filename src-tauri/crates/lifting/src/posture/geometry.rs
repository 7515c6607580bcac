//! Points and directions in the plane in which a lift is seen from the side: x forward, z up, metres.

use std::ops::{Add, Mul, Sub};

/// A point or a displacement in metres: x forward of the mid-ankles, z above the floor.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Point {
    /// Forward, m.
    pub x: f64,
    /// Up, m.
    pub z: f64,
}

impl Point {
    /// A point.
    #[must_use]
    pub const fn new(x: f64, z: f64) -> Self {
        Self { x, z }
    }

    /// The unit direction that leans forward from straight up by this angle in radians.
    #[must_use]
    pub fn up_leaning(angle: f64) -> Self {
        Self {
            x: angle.sin(),
            z: angle.cos(),
        }
    }

    /// The unit direction that swings forward from straight down by this angle in radians.
    #[must_use]
    pub fn down_swung(angle: f64) -> Self {
        Self {
            x: angle.sin(),
            z: -angle.cos(),
        }
    }

    /// The point a share of the way to another.
    #[must_use]
    pub fn towards(self, other: Self, share: f64) -> Self {
        self + (other - self) * share
    }

    /// The distance to another point, m.
    #[must_use]
    pub fn distance(self, other: Self) -> f64 {
        (self.x - other.x).hypot(self.z - other.z)
    }

    /// The direction to another point, anticlockwise from forward, degrees.
    #[must_use]
    pub fn direction_deg(self, other: Self) -> f64 {
        (other.z - self.z).atan2(other.x - self.x).to_degrees()
    }
}

impl Add for Point {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            x: self.x + other.x,
            z: self.z + other.z,
        }
    }
}

impl Sub for Point {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self {
            x: self.x - other.x,
            z: self.z - other.z,
        }
    }
}

impl Mul<f64> for Point {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self {
            x: self.x * factor,
            z: self.z * factor,
        }
    }
}
