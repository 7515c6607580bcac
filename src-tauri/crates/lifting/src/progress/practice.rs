//! From single sessions of practice to what the rule asks about, and from its proposal to the next level.

use super::{History, Progress, Trend, is_good, most_during, sessions_needed, step_size};
use crate::plan::Plan;
use crate::quantity::{Kilograms, PainScore};
use crate::review::change::verdict;
use crate::review::robust::median;
use crate::review::{Day, Verdict};
use std::collections::BTreeMap;

/// Days that count as the week, today among them.
const WEEK_DAYS: i32 = 7;

/// Practice on one day. Several on one day are one session, told apart or together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Session {
    /// When.
    pub day: Day,
    /// Whether it was at the level that holds now.
    pub at_level: bool,
    /// Worst pain during it. `None`: not told.
    pub during: Option<PainScore>,
    /// Whether it was settled by the next morning, as the plan has it. `None`: not told, or not asked yet.
    pub settled: Option<bool>,
}

/// What the rule asks about: the last sessions at this level, as many as a step up needs, and the week.
///
/// With something not told, the worst pain counts only if it asks for a step down by itself; else it is not known.
/// The week: median pain of the later half of its sessions against the earlier half (house rule), by what matters to
/// people (`ostelo_2008`).
#[must_use]
pub fn history(sessions: &[Session], plan: &Plan, today: Day, flare_today: bool) -> History {
    let days = by_day(sessions, today);
    let here: Vec<&Days> = days.values().filter(|day| day.at_level).collect();
    let need = usize::try_from(sessions_needed(Some(plan))).unwrap_or(usize::MAX);
    let last: Vec<&Days> = here.iter().rev().take(need).copied().collect();
    History {
        sessions_at_level: Some(u32::try_from(here.len()).unwrap_or(u32::MAX)),
        worst_during: worst(&last, plan),
        settled_next_morning: settled(&last),
        week_trend: trend(&days, today),
        flare_today: Some(flare_today),
    }
}

/// How many of the last sessions at this level were good, without one between that was not.
#[must_use]
pub fn good_in_a_row(sessions: &[Session], plan: &Plan, today: Day) -> u32 {
    let days = by_day(sessions, today);
    let here = days.values().rev().filter(|day| day.at_level);
    let good = here.take_while(|day| {
        let pain = day.worst.filter(|_| !day.untold);
        pain.is_some_and(|pain| is_good(pain, Some(plan))) && day.settled == Some(true)
    });
    u32::try_from(good.count()).unwrap_or(u32::MAX)
}

/// The level after a proposal was taken. Never above the strictest ceiling of the plan, never below nothing.
#[must_use]
pub fn take(plan: &Plan, level: Kilograms, progress: Progress) -> Kilograms {
    let at_level = Plan {
        current: Some(level),
        ..plan.clone()
    };
    let step = step_size(&at_level).map_or(0.0, Kilograms::value);
    let next = match progress {
        Progress::StepUp => level.value() + step,
        Progress::Hold => level.value(),
        Progress::StepDown => level.value() - step,
    };
    let next = Kilograms::clamped(next);
    plan.strictest_ceiling()
        .map_or(next, |ceiling| next.at_most(ceiling))
}

/// The level in a flare-up: half of it, or one step down where that is less. Within the strictest ceiling.
///
/// Common teaching is "half of the load, or the last easy level" (from memory, no source); the smaller of the two here
/// is a house rule.
#[must_use]
pub fn in_a_flare(plan: &Plan, level: Kilograms) -> Kilograms {
    let half = Kilograms::clamped(level.value() / 2.0);
    half.at_most(take(plan, level, Progress::StepDown))
}

/// The level that a step up leads to on the way back from a flare-up: one step below the level `before` it, or one step
/// up from now where that is more. Within the strictest ceiling. House rule.
#[must_use]
pub fn after_a_flare(plan: &Plan, level: Kilograms, before: Kilograms) -> Kilograms {
    let nearly_back = take(plan, before, Progress::StepDown);
    nearly_back.at_least(take(plan, level, Progress::StepUp))
}

/// The sessions of one day together.
#[derive(Debug, Clone, Copy)]
struct Days {
    at_level: bool,
    worst: Option<PainScore>,
    untold: bool,
    settled: Option<bool>,
}

fn by_day(sessions: &[Session], today: Day) -> BTreeMap<Day, Days> {
    let mut days: BTreeMap<Day, Days> = BTreeMap::new();
    for session in sessions.iter().filter(|session| session.day <= today) {
        let day = days.entry(session.day).or_insert(Days {
            at_level: false,
            worst: None,
            untold: false,
            settled: session.settled,
        });
        day.at_level |= session.at_level;
        day.worst = day.worst.max(session.during);
        day.untold |= session.during.is_none();
        day.settled = both(day.settled, session.settled);
    }
    days
}

/// No outweighs not known, not known outweighs yes.
const fn both(one: Option<bool>, other: Option<bool>) -> Option<bool> {
    match (one, other) {
        (Some(false), _) | (_, Some(false)) => Some(false),
        (None, _) | (_, None) => None,
        (Some(true), Some(true)) => Some(true),
    }
}

fn worst(days: &[&Days], plan: &Plan) -> Option<PainScore> {
    let worst = days.iter().filter_map(|day| day.worst).max();
    let untold = days.iter().any(|day| day.untold);
    worst.filter(|pain| !untold || *pain > most_during(Some(plan)))
}

fn settled(days: &[&Days]) -> Option<bool> {
    days.iter()
        .map(|day| day.settled)
        .reduce(both)
        .unwrap_or_default()
}

fn trend(days: &BTreeMap<Day, Days>, today: Day) -> Option<Trend> {
    let since = today.days_before(WEEK_DAYS - 1);
    let week: Vec<f64> = days
        .range(since..=today)
        .filter_map(|(_, day)| day.worst)
        .map(|pain| f64::from(pain.value()))
        .collect();
    let half = week.len() / 2;
    let first = median(week.get(..half)?)?;
    let last = median(week.get(week.len() - half..)?)?;
    Some(match verdict(first, last) {
        Verdict::Less => Trend::Down,
        Verdict::Same => Trend::Same,
        Verdict::More => Trend::Up,
    })
}
