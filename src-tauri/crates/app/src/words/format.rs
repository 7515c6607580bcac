//! Numbers and quantities in words: kilograms or pounds, centimetres or inches, metres or feet.

use super::{Arg, Language, Words};

/// Kilograms in one pound, exact: international yard and pound agreement, 1959.
pub const KILOGRAMS_PER_POUND: f64 = 0.453_592_37;
/// Centimetres in one inch, exact: same agreement.
const CENTIMETRES_PER_INCH: f64 = 2.54;
/// Metres in one foot, exact: same agreement.
const METRES_PER_FOOT: f64 = 0.3048;
/// Inches in one foot.
const INCHES_PER_FOOT: f64 = 12.0;
/// What rounding errors of unit conversion may add up to. Without it, 5 lb kept in kg could show as 4 lb.
const CONVERSION_SLACK: f64 = 1e-6;

/// Which units the reader uses.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Units {
    /// Kilograms, centimetres, metres.
    #[default]
    Kilograms,
    /// Pounds, inches, feet.
    Pounds,
}

impl Units {
    /// The wire id: `kg` or `lb`.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::Kilograms => "kg",
            Self::Pounds => "lb",
        }
    }

    /// The units with this id.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        match id {
            "kg" => Some(Self::Kilograms),
            "lb" => Some(Self::Pounds),
            _ => None,
        }
    }
}

/// Which way a quantity is rounded for showing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rounding {
    /// To the nearest: what something is.
    Nearest,
    /// Down: a limit must never look larger than it is.
    Down,
    /// Up: a height to raise something to must never look lower than it is.
    Up,
}

impl Rounding {
    fn apply(self, value: f64) -> f64 {
        match self {
            Self::Nearest => value.round(),
            Self::Down => (value + CONVERSION_SLACK).floor(),
            Self::Up => (value - CONVERSION_SLACK).ceil(),
        }
    }

    fn to_tenths(self, value: f64) -> f64 {
        self.apply(value * 10.0) / 10.0
    }
}

/// A number with at most one decimal, no trailing zero, and the decimal mark of the language.
/// What is not a number shows as a dash.
pub(super) fn number_text(number: f64, language: Language) -> String {
    if !number.is_finite() {
        return "–".to_owned();
    }
    let tenths = format!("{:.1}", Rounding::Nearest.to_tenths(number));
    let text = tenths.strip_suffix(".0").unwrap_or(&tenths);
    let text = if text == "-0" { "0" } else { text };
    text.replace('.', &language.decimal_mark().to_string())
}

impl Words {
    /// A number with at most one decimal, in the way of the language.
    #[must_use]
    pub fn number(&self, number: f64) -> String {
        number_text(number, self.language())
    }

    /// A mass given in kilograms: to 0.1 kg or 1 lb (0.1 lb below 1 lb).
    #[must_use]
    pub fn mass(&self, kilograms: f64, units: Units, rounding: Rounding) -> String {
        match units {
            Units::Kilograms => self.unit("unit-kilograms", rounding.to_tenths(kilograms)),
            Units::Pounds => {
                let pounds = kilograms / KILOGRAMS_PER_POUND;
                let small = pounds.abs() + CONVERSION_SLACK < 1.0;
                self.unit(
                    "unit-pounds",
                    if small {
                        rounding.to_tenths(pounds)
                    } else {
                        rounding.apply(pounds)
                    },
                )
            }
        }
    }

    /// A length given in centimetres: to 1 cm or 1 inch.
    #[must_use]
    pub fn length(&self, centimetres: f64, units: Units, rounding: Rounding) -> String {
        match units {
            Units::Kilograms => self.unit("unit-centimetres", rounding.apply(centimetres)),
            Units::Pounds => self.unit(
                "unit-inches",
                rounding.apply(centimetres / CENTIMETRES_PER_INCH),
            ),
        }
    }

    /// How tall somebody is, given in centimetres: to 1 cm, or in feet and whole inches.
    #[must_use]
    pub fn stature(&self, centimetres: f64, units: Units) -> String {
        match units {
            Units::Kilograms => self.length(centimetres, units, Rounding::Nearest),
            Units::Pounds => {
                let inches = (centimetres / CENTIMETRES_PER_INCH).round();
                let feet = (inches / INCHES_PER_FOOT).floor();
                let rest = inches - feet * INCHES_PER_FOOT;
                unbroken(&self.format(
                    "unit-feet-and-inches",
                    &[("feet", Arg::Number(feet)), ("inches", Arg::Number(rest))],
                ))
            }
        }
    }

    /// A walking distance given in metres: to 1 m or 1 foot (0.1 below 1).
    #[must_use]
    pub fn distance(&self, metres: f64, units: Units, rounding: Rounding) -> String {
        let (id, number) = match units {
            Units::Kilograms => ("unit-metres", metres),
            Units::Pounds => ("unit-feet", metres / METRES_PER_FOOT),
        };
        let small = number.abs() + CONVERSION_SLACK < 1.0;
        self.unit(
            id,
            if small {
                rounding.to_tenths(number)
            } else {
                rounding.apply(number)
            },
        )
    }

    /// A span of whole weeks.
    #[must_use]
    pub fn weeks(&self, weeks: f64) -> String {
        self.unit("unit-weeks", weeks.round())
    }

    /// How many times.
    #[must_use]
    pub fn times(&self, count: u32) -> String {
        self.unit("unit-times", f64::from(count))
    }

    fn unit(&self, id: &str, number: f64) -> String {
        unbroken(&self.format(id, &[("n", Arg::Number(number))]))
    }
}

/// The same text on one line: a number must not be parted from its unit.
fn unbroken(text: &str) -> String {
    text.replace(' ', "\u{a0}")
}
