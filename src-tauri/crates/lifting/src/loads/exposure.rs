//! A day's sum of modelled loads on the low back, beside the same person's own usual days.
//!
//! A comparison only: how this day was beside those days, by the same model and the same body. It is no limit, says
//! nothing of injury, and decides nothing. House rules, source `posture_model`; see `docs/method/loads.md`.

use super::summary::WayLoads;
use crate::quantity::{NewtonMetres, Newtons, Repetitions};

/// Fewer days than this say nothing about what is usual. House rule.
pub const ENOUGH_DAYS: usize = 5;

/// Something lifted, as often as it was, with its largest modelled loads on L5/S1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Handled {
    /// Largest compression of one lift, N.
    pub compression: Newtons,
    /// Largest extensor moment of one lift, N·m.
    pub moment: NewtonMetres,
    /// How many times.
    pub times: Repetitions,
}

impl Handled {
    /// What the model found for a way, as often as it was done.
    #[must_use]
    pub const fn of(loads: &WayLoads, times: Repetitions) -> Self {
        Self {
            compression: loads.compression,
            moment: loads.moment_l5s1,
            times,
        }
    }
}

/// A day's sums: the largest load of each lift, once for each time. Never negative.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct DaySum {
    /// Of compression, N times lifts.
    compression: f64,
    /// Of the extensor moment, N·m times lifts.
    moment: f64,
}

impl DaySum {
    /// Sums a day. A load that is not a number, or below 0, counts as 0.
    #[must_use]
    pub fn of(lifts: &[Handled]) -> Self {
        let sum = |load: fn(&Handled) -> f64| {
            lifts
                .iter()
                .map(|lift| load(lift).max(0.0) * f64::from(lift.times.count()))
                .sum()
        };
        Self {
            compression: sum(|lift| lift.compression.value()),
            moment: sum(|lift| lift.moment.value()),
        }
    }

    fn lifted(&self) -> bool {
        self.compression > 0.0 && self.moment > 0.0
    }
}

/// A day as a share of the own usual one: 1 is as usual, 2 twice as much.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BesideUsual {
    /// By compression.
    pub compression: f64,
    /// By moment.
    pub moment: f64,
}

/// Compares a day with the median of the own usual days. Days without a lift are no usual days; `None` when fewer
/// than [`ENOUGH_DAYS`] are left.
#[must_use]
pub fn beside_usual(day: &DaySum, usual: &[DaySum]) -> Option<BesideUsual> {
    let days: Vec<&DaySum> = usual.iter().filter(|day| day.lifted()).collect();
    if days.len() < ENOUGH_DAYS {
        return None;
    }
    let middle = |load: fn(&DaySum) -> f64| median(days.iter().map(|day| load(day)).collect());
    Some(BesideUsual {
        compression: day.compression / middle(|day| day.compression)?,
        moment: day.moment / middle(|day| day.moment)?,
    })
}

/// The middle value, or halfway between the two in the middle.
fn median(mut values: Vec<f64>) -> Option<f64> {
    values.sort_by(f64::total_cmp);
    let upper = values.get(values.len() / 2)?;
    let lower = values.get(values.len().checked_sub(1)? / 2)?;
    Some(f64::midpoint(*lower, *upper))
}
