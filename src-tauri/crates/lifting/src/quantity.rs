//! Quantities with a name, a unit and a range: a number from outside becomes one of these or an error.
//!
//! The ranges are what a person could plausibly mean, not limits for lifting. House rule, no source.

use thiserror::Error;

/// A number that does not fit its quantity. The text names the quantity and its range, never the value.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
#[error("{name} must be a number from {min} to {max} {unit}")]
pub struct OutOfRange {
    /// The quantity's name for people.
    pub name: &'static str,
    /// The unit's symbol, empty for a plain count.
    pub unit: &'static str,
    /// Smallest value taken.
    pub min: f64,
    /// Largest value taken.
    pub max: f64,
}

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $label:literal, $unit:literal, $min:literal ..= $max:literal) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            #[doc = concat!("Smallest value, in ", $unit, ".")]
            pub const MIN: f64 = $min;
            #[doc = concat!("Largest value, in ", $unit, ".")]
            pub const MAX: f64 = $max;

            #[doc = concat!("Takes a number in ", $unit, ".")]
            ///
            /// # Errors
            /// [`OutOfRange`](crate::quantity::OutOfRange) when the number is outside the range or not a number.
            pub fn new(value: f64) -> Result<Self, $crate::quantity::OutOfRange> {
                if (Self::MIN..=Self::MAX).contains(&value) {
                    Ok(Self(value))
                } else {
                    Err($crate::quantity::OutOfRange { name: $label, unit: $unit, min: Self::MIN, max: Self::MAX })
                }
            }

            /// The nearest value inside the range, for results of our own arithmetic. Not for input.
            #[must_use]
            pub const fn clamped(value: f64) -> Self {
                Self(if value > Self::MIN { if value < Self::MAX { value } else { Self::MAX } } else { Self::MIN })
            }

            #[doc = concat!("The number in ", $unit, ".")]
            #[must_use]
            pub const fn value(self) -> f64 {
                self.0
            }

            /// The smaller of two.
            #[must_use]
            pub fn at_most(self, other: Self) -> Self {
                if other.0 < self.0 { other } else { self }
            }

            /// The larger of two.
            #[must_use]
            pub fn at_least(self, other: Self) -> Self {
                if other.0 > self.0 { other } else { self }
            }
        }
    };
}

pub(crate) use quantity;

quantity!(
    /// A mass.
    Kilograms, "mass", "kg", 0.0 ..= 1000.0
);
quantity!(
    /// A length of task geometry: height, reach, width, depth.
    Centimetres, "length", "cm", 0.0 ..= 300.0
);
quantity!(
    /// An angle of twist.
    Degrees, "angle", "deg", 0.0 ..= 180.0
);
quantity!(
    /// A walking distance.
    Metres, "distance", "m", 0.0 ..= 10000.0
);
quantity!(
    /// A span of time within one day.
    Minutes, "time", "min", 0.0 ..= 1440.0
);
quantity!(
    /// A stature.
    Stature, "height", "cm", 100.0 ..= 230.0
);
quantity!(
    /// The mass of a person.
    BodyMass, "body mass", "kg", 25.0 ..= 300.0
);
quantity!(
    /// A span of time in weeks.
    Weeks, "time", "weeks", 0.0 ..= 5200.0
);

macro_rules! result {
    ($(#[$doc:meta])* $name:ident, $unit:literal) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            #[doc = concat!("A result in ", $unit, ".")]
            #[must_use]
            pub const fn of(value: f64) -> Self {
                Self(value)
            }

            #[doc = concat!("The number in ", $unit, ".")]
            #[must_use]
            pub const fn value(self) -> f64 {
                self.0
            }
        }
    };
}

result!(
    /// A force; only ever a result of our own computation.
    Newtons, "N"
);
result!(
    /// A moment; only ever a result of our own computation.
    NewtonMetres, "N·m"
);
result!(
    /// Energy of the body; only ever a result of our own computation.
    Kilocalories, "kcal"
);
result!(
    /// Mechanical work; only ever a result of our own computation.
    Joules, "J"
);

result!(
    /// A middle of several pain scores, which may lie between two; only ever a result of our own computation.
    PainPoints, "points"
);
result!(
    /// How fast pain changes; only ever a result of our own computation.
    PointsPerWeek, "points a week"
);
result!(
    /// How much more pain goes with a heavier load; only ever a result of our own computation.
    PointsPerKilogram, "points a kilogram"
);

/// Pain on the numeric rating scale: a whole number, 0 none to 10 worst imaginable.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct PainScore(u8);

impl PainScore {
    /// No pain.
    pub const NONE: Self = Self(0);
    /// The worst pain imaginable.
    pub const WORST: Self = Self(10);

    /// Takes a whole number from 0 to 10.
    ///
    /// # Errors
    /// [`OutOfRange`] above 10.
    pub fn new(score: u8) -> Result<Self, OutOfRange> {
        if score <= 10 {
            Ok(Self(score))
        } else {
            Err(OutOfRange {
                name: "pain",
                unit: "",
                min: 0.0,
                max: 10.0,
            })
        }
    }

    /// A score known at compile time; anything above 10 counts as 10.
    #[must_use]
    pub const fn of(score: u8) -> Self {
        Self(if score > 10 { 10 } else { score })
    }

    /// The number.
    #[must_use]
    pub const fn value(self) -> u8 {
        self.0
    }
}

/// How many times something is lifted in one bout.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Repetitions(u32);

impl Repetitions {
    /// Once.
    pub const ONCE: Self = Self(1);

    /// Takes a count from 1 to 10000.
    ///
    /// # Errors
    /// [`OutOfRange`] for 0 or more than 10000.
    pub fn new(count: u32) -> Result<Self, OutOfRange> {
        if (1..=10_000).contains(&count) {
            Ok(Self(count))
        } else {
            Err(OutOfRange {
                name: "number of lifts",
                unit: "",
                min: 1.0,
                max: 10_000.0,
            })
        }
    }

    /// A count known to be right; 0 counts as 1.
    #[must_use]
    pub const fn of(count: u32) -> Self {
        Self(if count == 0 { 1 } else { count })
    }

    /// This many times as many, 10000 at most.
    #[must_use]
    pub const fn times(self, parts: u32) -> Self {
        let many = self.0.saturating_mul(parts);
        Self::of(if many > 10_000 { 10_000 } else { many })
    }

    /// The count.
    #[must_use]
    pub const fn count(self) -> u32 {
        self.0
    }
}
