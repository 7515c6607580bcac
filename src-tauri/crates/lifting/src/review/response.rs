//! The day's heaviest load against the pain of the next morning: an observation, not a limit.
//!
//! A person who feels worse may lift less, and other things happen on heavy days: the slope is no cause.

use super::robust::{self, Slope};
use super::{Day, Enough, KeptLift, NotYet};
use crate::quantity::{Kilograms, PainScore, PointsPerKilogram};
use std::collections::{BTreeMap, BTreeSet};

/// Days with both a load and a next morning that are needed. House rule.
const DAYS: u32 = 10;
/// Different loads among them. House rule.
const LOADS: usize = 3;

/// A robust slope with its 95 % interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Response {
    /// Points of next-morning pain more for each kg more.
    pub slope: PointsPerKilogram,
    /// Lower end of the interval.
    pub low: PointsPerKilogram,
    /// Upper end of the interval.
    pub high: PointsPerKilogram,
    /// Days it rests on.
    pub days: u32,
}

impl Response {
    /// Whether the whole interval lies on one side of "no link".
    #[must_use]
    pub fn is_clear(&self) -> bool {
        self.low.value() > 0.0 || self.high.value() < 0.0
    }
}

pub(super) fn response(lifts: &[&KeptLift]) -> Enough<Response> {
    let mut by_day: BTreeMap<Day, (Option<Kilograms>, Option<PainScore>)> = BTreeMap::new();
    for lift in lifts.iter().filter(|lift| lift.decision.is_done()) {
        let (mass, pain) = by_day.entry(lift.day).or_default();
        *mass = match (*mass, lift.mass) {
            (Some(one), Some(other)) => Some(one.at_least(other)),
            (one, other) => one.or(other),
        };
        *pain = (*pain).max(lift.next_morning);
    }
    let points: Vec<(f64, f64)> = by_day
        .values()
        .filter_map(|(mass, pain)| {
            Some((mass.as_ref()?.value(), f64::from(pain.as_ref()?.value())))
        })
        .collect();
    let days = u32::try_from(points.len()).unwrap_or(u32::MAX);
    let loads: BTreeSet<u64> = points.iter().map(|(mass, _)| mass.to_bits()).collect();
    if days < DAYS || loads.len() < LOADS {
        return Enough::NotYet(NotYet::Days {
            have: days,
            need: DAYS,
        });
    }
    match robust::slope(&points) {
        Some(Slope { middle, low, high }) => Enough::Yes(Response {
            slope: PointsPerKilogram::of(middle),
            low: PointsPerKilogram::of(low),
            high: PointsPerKilogram::of(high),
            days,
        }),
        None => Enough::NotYet(NotYet::TooAlike),
    }
}
