//! The two unit systems of the equation, each with its own printed constants, and quantities tagged by system.

use crate::naming::named;
use crate::quantity::{Centimetres, Kilograms, OutOfRange};
use std::fmt::Debug;
use std::marker::PhantomData;

named!(
    /// Which set of printed constants holds.
    Units {
        /// Centimetres and kilograms.
        Metric = "metric",
        /// Inches and pounds.
        Us = "us",
    }
);

mod sealed {
    /// Keeps the list of unit systems closed: the manual prints two.
    pub trait Sealed {}
    impl Sealed for super::Metric {}
    impl Sealed for super::Us {}
}

/// One of the two printed sets of constants (NIOSH 94-110, sections 1.1 and 1.3, tables 1 to 5).
///
/// Neither is converted from the other: 51 lb is 23.1 kg, 10 in is 25.4 cm, 25 in is 63.5 cm.
pub trait UnitSystem:
    sealed::Sealed + Debug + Clone + Copy + PartialEq + PartialOrd + 'static
{
    /// The system's name on the wire.
    const UNITS: Units;
    /// Symbol of the unit of length.
    const LENGTH_UNIT: &'static str;
    /// Symbol of the unit of load.
    const LOAD_UNIT: &'static str;
    /// Longest length taken as input. House rule: what a person could plausibly mean.
    const LENGTH_MAX: f64;
    /// Largest load taken as input. House rule: what a person could plausibly mean.
    const LOAD_MAX: f64;
    /// LC, the load constant.
    const LOAD_CONSTANT: f64;
    /// Smallest H; also the numerator of HM.
    const H_MIN: f64;
    /// Largest H.
    const H_MAX: f64;
    /// V at which VM is 1, knuckle height. Also where the V bands of FM and CM part.
    const V_BEST: f64;
    /// Loss of VM for each unit of length away from the best height.
    const V_SLOPE: f64;
    /// Largest V.
    const V_MAX: f64;
    /// The constant over D in DM.
    const D_NUMERATOR: f64;
    /// Smallest D.
    const D_MIN: f64;
    /// Largest D.
    const D_MAX: f64;
    /// Estimate of H from the load's depth: what is added to half the depth.
    const ESTIMATE_BASE: f64;
    /// The same below [`UnitSystem::ESTIMATE_LOW_BELOW`].
    const ESTIMATE_BASE_LOW: f64;
    /// Height of the hands below which the longer estimate holds.
    const ESTIMATE_LOW_BELOW: f64;
}

/// Centimetres and kilograms.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Metric {}

/// Inches and pounds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Us {}

impl UnitSystem for Metric {
    const UNITS: Units = Units::Metric;
    const LENGTH_UNIT: &'static str = "cm";
    const LOAD_UNIT: &'static str = "kg";
    const LENGTH_MAX: f64 = Centimetres::MAX;
    const LOAD_MAX: f64 = Kilograms::MAX;
    const LOAD_CONSTANT: f64 = 23.0;
    const H_MIN: f64 = 25.0;
    const H_MAX: f64 = 63.0;
    const V_BEST: f64 = 75.0;
    const V_SLOPE: f64 = 0.003;
    const V_MAX: f64 = 175.0;
    const D_NUMERATOR: f64 = 4.5;
    const D_MIN: f64 = 25.0;
    const D_MAX: f64 = 175.0;
    const ESTIMATE_BASE: f64 = 20.0;
    const ESTIMATE_BASE_LOW: f64 = 25.0;
    const ESTIMATE_LOW_BELOW: f64 = 25.0;
}

impl UnitSystem for Us {
    const UNITS: Units = Units::Us;
    const LENGTH_UNIT: &'static str = "in";
    const LOAD_UNIT: &'static str = "lb";
    const LENGTH_MAX: f64 = 120.0;
    const LOAD_MAX: f64 = 2200.0;
    const LOAD_CONSTANT: f64 = 51.0;
    const H_MIN: f64 = 10.0;
    const H_MAX: f64 = 25.0;
    const V_BEST: f64 = 30.0;
    const V_SLOPE: f64 = 0.0075;
    const V_MAX: f64 = 70.0;
    const D_NUMERATOR: f64 = 1.8;
    const D_MIN: f64 = 10.0;
    const D_MAX: f64 = 70.0;
    const ESTIMATE_BASE: f64 = 8.0;
    const ESTIMATE_BASE_LOW: f64 = 10.0;
    const ESTIMATE_LOW_BELOW: f64 = 10.0;
}

macro_rules! tagged {
    ($(#[$doc:meta])* $name:ident, $label:literal, $unit:ident, $max:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name<S: UnitSystem>(f64, PhantomData<S>);

        impl<S: UnitSystem> $name<S> {
            /// Takes a number in this system's unit.
            ///
            /// # Errors
            /// [`OutOfRange`] below 0, above the system's largest value, or when not a number.
            pub fn new(value: f64) -> Result<Self, OutOfRange> {
                if (0.0..=S::$max).contains(&value) {
                    Ok(Self::of(value))
                } else {
                    Err(OutOfRange { name: $label, unit: S::$unit, min: 0.0, max: S::$max })
                }
            }

            /// The number in this system's unit.
            #[must_use]
            pub const fn value(self) -> f64 {
                self.0
            }

            /// A result of our own arithmetic on values already in range.
            pub(super) const fn of(value: f64) -> Self {
                Self(value, PhantomData)
            }

            /// The smaller of two.
            #[must_use]
            pub fn at_most(self, other: Self) -> Self {
                if other.0 < self.0 { other } else { self }
            }
        }
    };
}

tagged!(
    /// A length in the unit of its system: cm 0 to 300, or in 0 to 120.
    Length, "length", LENGTH_UNIT, LENGTH_MAX
);
tagged!(
    /// A load in the unit of its system: kg 0 to 1000, or lb 0 to 2200.
    Load, "load", LOAD_UNIT, LOAD_MAX
);

impl From<Centimetres> for Length<Metric> {
    fn from(length: Centimetres) -> Self {
        Self::of(length.value())
    }
}

impl From<Kilograms> for Load<Metric> {
    fn from(mass: Kilograms) -> Self {
        Self::of(mass.value())
    }
}

impl From<Load<Metric>> for Kilograms {
    fn from(load: Load<Metric>) -> Self {
        Self::clamped(load.value())
    }
}

impl From<Length<Metric>> for Centimetres {
    fn from(length: Length<Metric>) -> Self {
        Self::clamped(length.value())
    }
}
