//! How often and for how long: the two quantities of pace that the published methods share.

use crate::quantity::{Minutes, OutOfRange};

/// Minutes over which the equation averages the number of lifts (NIOSH 94-110, section 1.3.5).
const OBSERVED_MINUTES: f64 = 15.0;

/// A number of lifts each minute, 0 to 100. The range is a house rule: what a person could plausibly mean.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct PerMinute(f64);

impl PerMinute {
    /// Smallest value, in lifts each minute.
    pub const MIN: f64 = 0.0;
    /// Largest value, in lifts each minute.
    pub const MAX: f64 = 100.0;

    /// Takes a number of lifts each minute.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 100 or when not a number.
    pub fn new(value: f64) -> Result<Self, OutOfRange> {
        if (Self::MIN..=Self::MAX).contains(&value) {
            Ok(Self(value))
        } else {
            Err(OutOfRange {
                name: "lifts each minute",
                unit: "per min",
                min: Self::MIN,
                max: Self::MAX,
            })
        }
    }

    /// The nearest value inside the range, for results of our own arithmetic. Not for input.
    #[must_use]
    pub const fn clamped(value: f64) -> Self {
        Self(within(value, Self::MIN, Self::MAX))
    }

    /// The special adjustment for lifting that fills only a part of each 15 minutes: the number of lifts
    /// in the window, spread over the whole window (NIOSH 94-110, section 1.3.5).
    ///
    /// `lifting` above 15 minutes counts as 15: the window is then filled.
    #[must_use]
    pub fn averaged_over_window(while_lifting: Self, lifting: Minutes) -> Self {
        Self::clamped(while_lifting.0 * lifting.value().min(OBSERVED_MINUTES) / OBSERVED_MINUTES)
    }

    /// The number of lifts each minute.
    #[must_use]
    pub const fn value(self) -> f64 {
        self.0
    }
}

/// Hours within one day, 0 to 24.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Hours(f64);

impl Hours {
    /// Smallest value, in hours.
    pub const MIN: f64 = 0.0;
    /// Largest value, in hours.
    pub const MAX: f64 = 24.0;

    /// Takes a number of hours.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 24 or when not a number.
    pub fn new(value: f64) -> Result<Self, OutOfRange> {
        if (Self::MIN..=Self::MAX).contains(&value) {
            Ok(Self(value))
        } else {
            Err(OutOfRange {
                name: "time",
                unit: "h",
                min: Self::MIN,
                max: Self::MAX,
            })
        }
    }

    /// The nearest value inside the range, for results of our own arithmetic. Not for input.
    #[must_use]
    pub const fn clamped(value: f64) -> Self {
        Self(within(value, Self::MIN, Self::MAX))
    }

    /// The number of hours.
    #[must_use]
    pub const fn value(self) -> f64 {
        self.0
    }
}

/// The nearest value inside a range; what is not a number becomes the smallest.
const fn within(value: f64, min: f64, max: f64) -> f64 {
    if value > min {
        if value < max { value } else { max }
    } else {
        min
    }
}
