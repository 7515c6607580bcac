//! What was lifted each week: mass times repetitions.

use super::{Day, KeptLift};
use crate::quantity::Kilograms;
use std::collections::BTreeMap;

const DAYS_A_WEEK: i32 = 7;
/// Weeks that are told, so that one wrong date cannot ask for millions of them: a hundred years.
const MOST_WEEKS: i32 = 5_200;

/// Mass times repetitions, summed, in kg.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct KilogramsLifted(f64);

impl KilogramsLifted {
    /// The number in kg.
    #[must_use]
    pub const fn value(self) -> f64 {
        self.0
    }
}

/// One week: seven days that end on the day looked back from, or a multiple of seven days before it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Week {
    /// Its first day.
    pub from: Day,
    /// Mass times repetitions of what was done and whose mass is known.
    pub lifted: KilogramsLifted,
    /// The heaviest of them.
    pub heaviest: Option<Kilograms>,
    /// Times something was lifted, mass known or not.
    pub times: u32,
    /// Lifts whose mass is not known.
    pub unknown: u32,
}

pub(super) fn weeks(lifts: &[&KeptLift], until: Day) -> Vec<Week> {
    let mut by_week: BTreeMap<i32, Week> = BTreeMap::new();
    let done = lifts.iter().filter(|lift| lift.decision.is_done());
    for lift in done {
        let ago = until.days_since(lift.day).div_euclid(DAYS_A_WEEK);
        if ago < MOST_WEEKS {
            add(
                by_week.entry(ago).or_insert_with(|| empty(until, ago)),
                lift,
            );
        }
    }
    let Some(oldest) = by_week.keys().next_back().copied() else {
        return Vec::new();
    };
    (0..=oldest)
        .rev()
        .map(|ago| by_week.remove(&ago).unwrap_or_else(|| empty(until, ago)))
        .collect()
}

fn empty(until: Day, ago: i32) -> Week {
    Week {
        from: until.days_before(ago * DAYS_A_WEEK + DAYS_A_WEEK - 1),
        lifted: KilogramsLifted::default(),
        heaviest: None,
        times: 0,
        unknown: 0,
    }
}

fn add(week: &mut Week, lift: &KeptLift) {
    week.times = week.times.saturating_add(lift.times.count());
    match lift.mass {
        Some(mass) => {
            week.lifted.0 += mass.value() * f64::from(lift.times.count());
            week.heaviest = Some(
                week.heaviest
                    .map_or(mass, |heaviest| heaviest.at_least(mass)),
            );
        }
        None => week.unknown = week.unknown.saturating_add(1),
    }
}
