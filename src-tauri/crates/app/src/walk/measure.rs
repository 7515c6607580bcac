//! Numbers that are asked for: their units and ranges.

use super::answer::{GRAMS_PER_POUND, MILLIMETRES_PER_INCH, Number, NumberUnit};

/// Which number is asked for. Ranges say what a person could plausibly mean; they are not limits for
/// lifting. House rule, no source.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Measure {
    /// A mass: 0.1 to 200 kg, or 0.1 to 440 lb.
    Mass,
    /// How tall a person is: 100 to 230 cm, or 40 to 90 in.
    Stature,
    /// The mass of a person: 25 to 300 kg, or 56 to 660 lb.
    BodyMass,
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
            (Self::Stature, NumberUnit::Centimetres) => Some((100.0, 230.0, 1.0)),
            (Self::Stature, NumberUnit::Inches) => Some((40.0, 90.0, 0.5)),
            (Self::BodyMass, NumberUnit::Kilograms) => Some((25.0, 300.0, 1.0)),
            (Self::BodyMass, NumberUnit::Pounds) => Some((56.0, 660.0, 1.0)),
            (Self::PregnancyWeeks, NumberUnit::Weeks) => Some((1.0, 42.0, 1.0)),
            (Self::SurgeryWeeks, NumberUnit::Weeks) => Some((0.0, 520.0, 1.0)),
            _ => None,
        }
    }

    /// The unit offered to somebody who prefers this unit of mass.
    #[must_use]
    pub(crate) const fn unit(self, preferred: NumberUnit) -> NumberUnit {
        match self {
            Self::Mass | Self::BodyMass => preferred,
            Self::Stature => match preferred {
                NumberUnit::Pounds | NumberUnit::Inches => NumberUnit::Inches,
                _ => NumberUnit::Centimetres,
            },
            Self::PregnancyWeeks | Self::SurgeryWeeks => NumberUnit::Weeks,
        }
    }
}

/// A mass in grams as a number in the preferred unit, rounded to a tenth for pounds.
#[must_use]
pub(crate) fn grams_in(grams: u32, unit: NumberUnit) -> Number {
    let thousandths = match unit {
        NumberUnit::Pounds => tenths_of(f64::from(grams) / GRAMS_PER_POUND),
        _ => grams,
    };
    Number { thousandths, unit }
}

/// A length in millimetres as a number in centimetres or inches, rounded to a tenth for inches.
#[must_use]
pub(crate) fn millimetres_in(millimetres: u32, unit: NumberUnit) -> Number {
    let thousandths = match unit {
        NumberUnit::Inches => tenths_of(f64::from(millimetres) / MILLIMETRES_PER_INCH),
        _ => millimetres.saturating_mul(100),
    };
    Number { thousandths, unit }
}

/// A number to the tenth, in thousandths.
fn tenths_of(value: f64) -> u32 {
    let tenths = (value * 10.0).round().min(f64::from(u32::MAX / 100));
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "bounded just above, and made from whole numbers that are not negative"
    )]
    let tenths = tenths as u32;
    tenths * 100
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
    fn a_kept_stature_comes_back_in_the_unit_it_is_typed_in() {
        // 66 in are kept as 1676 mm, which is 65.98… in.
        assert_eq!(
            millimetres_in(1676, NumberUnit::Inches).value().to_string(),
            "66"
        );
        assert_eq!(
            millimetres_in(1675, NumberUnit::Centimetres)
                .value()
                .to_string(),
            "167.5"
        );
    }

    #[test]
    fn every_stature_and_mass_that_is_taken_is_one_the_judgement_knows() {
        use lifting::quantity::{BodyMass, Stature};
        for unit in [NumberUnit::Centimetres, NumberUnit::Inches] {
            let (low, high, _) = Measure::Stature.range(unit).unwrap();
            for typed in [low, high] {
                let number = Number::from_decimal(typed, unit).unwrap();
                let centimetres = f64::from(number.millimetres().unwrap()) / 10.0;
                assert!(Stature::new(centimetres).is_ok(), "{typed} {}", unit.id());
            }
        }
        for unit in [NumberUnit::Kilograms, NumberUnit::Pounds] {
            let (low, high, _) = Measure::BodyMass.range(unit).unwrap();
            for typed in [low, high] {
                let number = Number::from_decimal(typed, unit).unwrap();
                let kilograms = f64::from(number.grams().unwrap()) / 1000.0;
                assert!(BodyMass::new(kilograms).is_ok(), "{typed} {}", unit.id());
            }
        }
    }

    #[test]
    fn weeks_are_no_unit_of_mass_and_pounds_none_of_time() {
        assert_eq!(Measure::Mass.range(NumberUnit::Weeks), None);
        assert_eq!(Measure::SurgeryWeeks.range(NumberUnit::Pounds), None);
    }
}
