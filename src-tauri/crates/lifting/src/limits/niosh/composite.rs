//! The composite lifting index of a job made of several tasks (NIOSH 94-110, section 2.4).

use super::super::pace::PerMinute;
use super::duration::{Duration, duration};
use super::frequency::fm;
use super::single::{Point, index, points};
use super::task::LiftingTask;
use super::units::{Load, UnitSystem};

/// The composite lifting index and how it adds up.
#[derive(Debug, Clone, PartialEq)]
pub struct CompositeIndex {
    /// The index: the first task's STLI and every increment.
    pub index: f64,
    /// The category that holds for the whole job: the longest of its tasks.
    pub duration: Duration,
    /// The tasks, hardest first.
    pub shares: Vec<Share>,
}

/// What one task adds to the composite index.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Share {
    /// The task's place in the list given, from 0.
    pub task: usize,
    /// Its single-task lifting index with the job's duration.
    pub stli: f64,
    /// For the first, its STLI; for each other, its increment.
    pub adds: f64,
}

/// The composite lifting index of two or more tasks. `None` for fewer, or when any index in it is undefined.
///
/// Tasks are taken by falling STLI, equal ones in the order given. The FM of a task at the summed frequency is read
/// in its own height band and the job's duration; where two points are scored, the one that adds more counts.
#[must_use]
pub fn composite<S: UnitSystem>(tasks: &[LiftingTask<S>]) -> Option<CompositeIndex> {
    if tasks.len() < 2 {
        return None;
    }
    let duration = tasks
        .iter()
        .map(|task| duration(task.hours, task.recovery_hours))
        .max()?;
    let mut ranked = Vec::with_capacity(tasks.len());
    for (place, task) in tasks.iter().enumerate() {
        ranked.push((place, task, single_task_index(task, duration)?));
    }
    ranked.sort_by(|(_, _, a), (_, _, b)| b.total_cmp(a));

    let mut shares: Vec<Share> = Vec::with_capacity(tasks.len());
    let mut so_far = 0.0;
    for (place, task, stli) in ranked {
        let before = PerMinute::clamped(so_far);
        so_far += task.lifts_per_min.value();
        let adds = if shares.is_empty() {
            stli
        } else {
            increment(task, duration, before, PerMinute::clamped(so_far))?
        };
        shares.push(Share {
            task: place,
            stli,
            adds,
        });
    }
    Some(CompositeIndex {
        index: shares.iter().map(|share| share.adds).sum(),
        duration,
        shares,
    })
}

/// Average load over the smallest STRWL of the points scored, with the job's duration.
fn single_task_index<S: UnitSystem>(task: &LiftingTask<S>, duration: Duration) -> Option<f64> {
    largest(task, |point| {
        let strwl = Load::of(point.firwl.value() * fm(task.lifts_per_min, duration, point.band));
        index(task.load_avg, strwl)
    })
}

/// `FILI × (1/FM(F1+…+Fn) − 1/FM(F1+…+Fn−1))`.
fn increment<S: UnitSystem>(
    task: &LiftingTask<S>,
    duration: Duration,
    before: PerMinute,
    with: PerMinute,
) -> Option<f64> {
    largest(task, |point| {
        let slowdown = |frequency| {
            let fm = fm(frequency, duration, point.band);
            (fm > 0.0).then(|| 1.0 / fm)
        };
        Some(index(task.load_max, point.firwl)? * (slowdown(with)? - slowdown(before)?))
    })
}

/// The largest value over the points scored; undefined when it is undefined at any of them.
fn largest<S: UnitSystem>(
    task: &LiftingTask<S>,
    value: impl Fn(&Point<S>) -> Option<f64>,
) -> Option<f64> {
    let (origin, destination) = points(task);
    let at_origin = value(&origin)?;
    destination.map_or(Some(at_origin), |point| Some(at_origin.max(value(&point)?)))
}
