//! Pain over time: the day's worst reading, its trend and its change.

use super::change::{self, Change};
use super::robust::{self, Slope};
use super::{Day, Enough, KeptLift, NotYet};
use crate::naming::named;
use crate::quantity::{PainScore, PointsPerWeek};
use std::collections::BTreeMap;

/// Days with a reading that a trend needs, and days they must span. House rules.
const TREND_DAYS: u32 = 8;
const TREND_SPAN: i32 = 14;

const DAYS_A_WEEK: f64 = 7.0;

named!(
    /// When pain was asked for. The three are never mixed.
    PainKind {
        /// Before lifting, on that day.
        Before = "before",
        /// During or just after.
        During = "during",
        /// The next morning.
        NextMorning = "next_morning",
    }
);

/// One pain series.
#[derive(Debug, Clone, PartialEq)]
pub struct Pain {
    /// Which.
    pub kind: PainKind,
    /// The worst reading of each day, oldest first.
    pub days: Vec<(Day, PainScore)>,
    /// Where it is going.
    pub trend: Enough<Trend>,
    /// From the first readings to the last.
    pub change: Enough<Change>,
}

/// A robust slope with its 95 % interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trend {
    /// The middle of all slopes between two days.
    pub slope: PointsPerWeek,
    /// Lower end of the interval.
    pub low: PointsPerWeek,
    /// Upper end of the interval.
    pub high: PointsPerWeek,
}

impl Trend {
    /// Whether the whole interval lies on one side of "no change".
    #[must_use]
    pub fn is_clear(&self) -> bool {
        self.low.value() > 0.0 || self.high.value() < 0.0
    }
}

impl KeptLift {
    fn pain(&self, kind: PainKind) -> Option<PainScore> {
        match kind {
            PainKind::Before => self.before,
            PainKind::During => self.during,
            PainKind::NextMorning => self.next_morning,
        }
    }
}

pub(super) fn pain(kind: PainKind, lifts: &[&KeptLift]) -> Pain {
    let mut worst: BTreeMap<Day, PainScore> = BTreeMap::new();
    for lift in lifts {
        if let Some(score) = lift.pain(kind) {
            let day = worst.entry(lift.day).or_insert(score);
            *day = score.max(*day);
        }
    }
    let days: Vec<_> = worst.into_iter().collect();
    Pain {
        kind,
        trend: trend(&days),
        change: change::change(&days),
        days,
    }
}

fn trend(days: &[(Day, PainScore)]) -> Enough<Trend> {
    let have = u32::try_from(days.len()).unwrap_or(u32::MAX);
    let not_yet = Enough::NotYet(NotYet::Days {
        have,
        need: TREND_DAYS,
    });
    let (Some((first, _)), Some((last, _))) = (days.first(), days.last()) else {
        return not_yet;
    };
    if have < TREND_DAYS || last.days_since(*first) < TREND_SPAN {
        return not_yet;
    }
    let points: Vec<(f64, f64)> = days
        .iter()
        .map(|(day, score)| (f64::from(day.days_since(*first)), f64::from(score.value())))
        .collect();
    let weekly = |slope: f64| PointsPerWeek::of(slope * DAYS_A_WEEK);
    match robust::slope(&points) {
        Some(Slope { middle, low, high }) => Enough::Yes(Trend {
            slope: weekly(middle),
            low: weekly(low),
            high: weekly(high),
        }),
        None => Enough::NotYet(NotYet::TooAlike),
    }
}
