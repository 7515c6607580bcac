//! Numbers that are asked for: their units and ranges.

use super::answer::{GRAMS_PER_POUND, Number, NumberUnit};

/// Which number is asked for. Ranges say what a person could plausibly mean; they are not limits for
/// lifting. House rule, no source.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Measure {
    /// A mass: 0.1 to 200 kg, or 0.1 to 440 lb.
    Mass,
    /// Weeks of pregnancy: 1 to 42.
    PregnancyWeeks,
    /// Weeks since surgery: 0 to 520.
    SurgeryWeeks,
}

impl Measure {
    /// Smallest and largest number taken, and the step offered, in this unit. `None`: not a unit of this measure.
    #[must_use]
    pub(crate) const fn range(self, unit: NumberUnit) -> Option<(f64, f64, f64)> {
        match (self, unit) {
            (Self::Mass, NumberUnit::Kilograms) => Some((0.1, 200.0, 0.1)),
            (Self::Mass, NumberUnit::Pounds) => Some((0.1, 440.0, 0.1)),
            (Self::PregnancyWeeks, NumberUnit::Weeks) => Some((1.0, 42.0, 1.0)),
            (Self::SurgeryWeeks, NumberUnit::Weeks) => Some((0.0, 520.0, 1.0)),
            _ => None,
        }
    }

    /// The unit offered to somebody who prefers this unit of mass.
    #[must_use]
    pub(crate) const fn unit(self, preferred: NumberUnit) -> NumberUnit {
        match self {
            Self::Mass => preferred,
            Self::PregnancyWeeks | Self::SurgeryWeeks => NumberUnit::Weeks,
        }
    }
}

/// A mass in grams as a number in the preferred unit, rounded to a tenth for pounds.
#[must_use]
pub(crate) fn grams_in(grams: u32, unit: NumberUnit) -> Number {
    let thousandths = match unit {
        NumberUnit::Pounds => {
            let tenths = (f64::from(grams) / GRAMS_PER_POUND * 10.0).round();
            #[allow(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "at most 9.5e7"
            )]
            let tenths = tenths as u32;
            tenths * 100
        }
        NumberUnit::Kilograms | NumberUnit::Weeks => grams,
    };
    Number { thousandths, unit }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_kept_mass_is_offered_in_the_preferred_unit() {
        assert_eq!(
            grams_in(7_300, NumberUnit::Kilograms).value().to_string(),
            "7.3"
        );
        // 7.3 kg = 16.09… lb, to the tenth at which pounds are typed.
        assert_eq!(
            grams_in(7_300, NumberUnit::Pounds).value().to_string(),
            "16.1"
        );
    }

    #[test]
    fn weeks_are_no_unit_of_mass_and_pounds_none_of_time() {
        assert_eq!(Measure::Mass.range(NumberUnit::Weeks), None);
        assert_eq!(Measure::SurgeryWeeks.range(NumberUnit::Pounds), None);
    }
}
