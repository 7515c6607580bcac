//! The frequency multiplier FM: the printed table, and linear between its rows.

use super::super::pace::PerMinute;
use super::duration::Duration;
use super::units::{Length, UnitSystem};
use crate::naming::named;

named!(
    /// The two height bands of the table, parted at knuckle height.
    VerticalBand {
        /// Hands below 75 cm or 30 in.
        Below = "below",
        /// Hands at or above it.
        AtOrAbove = "at_or_above",
    }
);

impl VerticalBand {
    /// The band of a height of the hands.
    #[must_use]
    pub fn of<S: UnitSystem>(v: Length<S>) -> Self {
        if v.value() < S::V_BEST {
            Self::Below
        } else {
            Self::AtOrAbove
        }
    }
}

/// One row of the table: each pair is below, then at or above, knuckle height.
struct Row {
    per_minute: f64,
    short: (f64, f64),
    moderate: (f64, f64),
    long: (f64, f64),
}

const fn row(per_minute: f64, short: (f64, f64), moderate: (f64, f64), long: (f64, f64)) -> Row {
    Row {
        per_minute,
        short,
        moderate,
        long,
    }
}

/// NIOSH 94-110, table 5, by lifts each minute.
const TABLE: [Row; 17] = [
    row(0.2, (1.00, 1.00), (0.95, 0.95), (0.85, 0.85)),
    row(0.5, (0.97, 0.97), (0.92, 0.92), (0.81, 0.81)),
    row(1.0, (0.94, 0.94), (0.88, 0.88), (0.75, 0.75)),
    row(2.0, (0.91, 0.91), (0.84, 0.84), (0.65, 0.65)),
    row(3.0, (0.88, 0.88), (0.79, 0.79), (0.55, 0.55)),
    row(4.0, (0.84, 0.84), (0.72, 0.72), (0.45, 0.45)),
    row(5.0, (0.80, 0.80), (0.60, 0.60), (0.35, 0.35)),
    row(6.0, (0.75, 0.75), (0.50, 0.50), (0.27, 0.27)),
    row(7.0, (0.70, 0.70), (0.42, 0.42), (0.22, 0.22)),
    row(8.0, (0.60, 0.60), (0.35, 0.35), (0.18, 0.18)),
    row(9.0, (0.52, 0.52), (0.30, 0.30), (0.00, 0.15)),
    row(10.0, (0.45, 0.45), (0.26, 0.26), (0.00, 0.13)),
    row(11.0, (0.41, 0.41), (0.00, 0.23), (0.00, 0.00)),
    row(12.0, (0.37, 0.37), (0.00, 0.21), (0.00, 0.00)),
    row(13.0, (0.00, 0.34), (0.00, 0.00), (0.00, 0.00)),
    row(14.0, (0.00, 0.31), (0.00, 0.00), (0.00, 0.00)),
    row(15.0, (0.00, 0.28), (0.00, 0.00), (0.00, 0.00)),
];

/// Below this many lifts each minute the short column holds whatever the shift (NIOSH 94-110, section 1.3.5).
const INFREQUENT: f64 = 0.1;

impl Row {
    fn cell(&self, duration: Duration, band: VerticalBand) -> f64 {
        let (below, at_or_above) = match duration {
            Duration::Short => self.short,
            Duration::Moderate => self.moderate,
            Duration::Long => self.long,
            Duration::OverEightHours => (0.0, 0.0),
        };
        match band {
            VerticalBand::Below => below,
            VerticalBand::AtOrAbove => at_or_above,
        }
    }
}

/// The frequency multiplier.
///
/// Up to 0.2 lifts a minute the first row holds; below 0.1 its short column, whatever the shift. Above 15 a minute,
/// and for more than 8 hours of lifting, it is 0. Between rows it is linear: our choice, the manual prints none.
#[must_use]
pub fn fm(frequency: PerMinute, duration: Duration, band: VerticalBand) -> f64 {
    let f = frequency.value();
    let duration = if f < INFREQUENT {
        Duration::Short
    } else {
        duration
    };
    let cell = |row: &Row| row.cell(duration, band);
    let [first, rest @ ..] = &TABLE;
    if f <= first.per_minute {
        return cell(first);
    }
    let mut low = first;
    for high in rest {
        if f <= high.per_minute {
            let part = (f - low.per_minute) / (high.per_minute - low.per_minute);
            // `max`: rounding must not take it below the next row.
            return (cell(low) + part * (cell(high) - cell(low))).max(cell(high));
        }
        low = high;
    }
    0.0
}
