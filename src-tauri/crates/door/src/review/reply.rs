//! The look back as it goes on the wire, numbers unrounded.

use lifting::review::{Counts, Enough, NotYet, Pain, Review, Variety, Week};
use serde::Serialize;
use std::collections::BTreeMap;

/// The reply of `review`.
#[derive(Debug, Serialize)]
pub(crate) struct ReviewReply {
    pain: Vec<PainReply>,
    weeks: Vec<WeekReply>,
    ways: BTreeMap<&'static str, u32>,
    evenness: Option<f64>,
    counts: CountsReply,
    next_morning_per_kg: FigureReply<SlopeReply>,
}

#[derive(Debug, Serialize)]
struct PainReply {
    kind: &'static str,
    days: usize,
    trend_per_week: FigureReply<SlopeReply>,
    change: FigureReply<ChangeReply>,
}

/// A figure, or what is missing for it.
#[derive(Debug, Serialize)]
#[serde(untagged)]
enum FigureReply<T> {
    Known(T),
    Days { have_days: u32, need_days: u32 },
    Alike { too_alike: bool },
}

#[derive(Debug, Serialize)]
struct SlopeReply {
    slope: f64,
    low: f64,
    high: f64,
    clear: bool,
}

#[derive(Debug, Serialize)]
struct ChangeReply {
    first_nrs: f64,
    last_nrs: f64,
    verdict: &'static str,
}

#[derive(Debug, Serialize)]
struct WeekReply {
    from_day: i32,
    lifted_kg: f64,
    heaviest_kg: Option<f64>,
    times: u32,
    unknown_mass: u32,
}

#[derive(Debug, Serialize)]
struct CountsReply {
    entries: u32,
    done: u32,
    left: u32,
    done_against: u32,
    done_unchanged: u32,
    done_without_aid: u32,
    other_way: u32,
    way_and_advised: u32,
    days: u32,
    flare_days: u32,
    no_pain_during: u32,
    no_next_morning: u32,
    no_mass: u32,
    no_way: u32,
}

impl ReviewReply {
    /// Everything a look back found.
    #[must_use]
    pub(crate) fn of(review: &Review) -> Self {
        let Variety { used, evenness } = &review.variety;
        Self {
            pain: review.pain.iter().map(PainReply::of).collect(),
            weeks: review.weeks.iter().map(WeekReply::of).collect(),
            ways: used.iter().map(|(way, count)| (way.id(), *count)).collect(),
            evenness: evenness.map(|evenness| evenness.value()),
            counts: CountsReply::of(&review.counts),
            next_morning_per_kg: FigureReply::of(&review.response, |response| SlopeReply {
                slope: response.slope.value(),
                low: response.low.value(),
                high: response.high.value(),
                clear: response.is_clear(),
            }),
        }
    }
}

impl<T> FigureReply<T> {
    fn of<F>(figure: &Enough<F>, known: impl Fn(&F) -> T) -> Self {
        match figure {
            Enough::Yes(figure) => Self::Known(known(figure)),
            Enough::NotYet(NotYet::TooAlike) => Self::Alike { too_alike: true },
            Enough::NotYet(NotYet::Days { have, need }) => Self::Days {
                have_days: *have,
                need_days: *need,
            },
        }
    }
}

impl PainReply {
    fn of(pain: &Pain) -> Self {
        Self {
            kind: pain.kind.id(),
            days: pain.days.len(),
            trend_per_week: FigureReply::of(&pain.trend, |trend| SlopeReply {
                slope: trend.slope.value(),
                low: trend.low.value(),
                high: trend.high.value(),
                clear: trend.is_clear(),
            }),
            change: FigureReply::of(&pain.change, |change| ChangeReply {
                first_nrs: change.first.value(),
                last_nrs: change.last.value(),
                verdict: change.verdict.id(),
            }),
        }
    }
}

impl WeekReply {
    fn of(week: &Week) -> Self {
        Self {
            from_day: week.from.number(),
            lifted_kg: week.lifted.value(),
            heaviest_kg: week.heaviest.map(|mass| mass.value()),
            times: week.times,
            unknown_mass: week.unknown,
        }
    }
}

impl CountsReply {
    const fn of(counts: &Counts) -> Self {
        Self {
            entries: counts.entries,
            done: counts.done,
            left: counts.left,
            done_against: counts.done_against,
            done_unchanged: counts.done_unchanged,
            done_without_aid: counts.done_without_aid,
            other_way: counts.other_way,
            way_and_advised: counts.way_and_advised,
            days: counts.days,
            flare_days: counts.flare_days,
            no_pain_during: counts.no_pain_during,
            no_next_morning: counts.no_next_morning,
            no_mass: counts.no_mass,
            no_way: counts.no_way,
        }
    }
}
