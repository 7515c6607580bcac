//! How often and for how long; what was not said is taken on the careful side.

use crate::quantity::Repetitions;
use crate::task::Task;

/// Bends a minute when the span is not known and there are more than two. House rule.
const RATE_UNKNOWN_SPAN: f64 = 6.0;

/// The observation window of the equation, minutes (NIOSH 94-110, section 1.3).
const WINDOW_MIN: f64 = 15.0;

pub(super) fn per_minute(task: &Task, repetitions: Repetitions) -> f64 {
    let count = f64::from(repetitions.count());
    match task.span {
        Some(span) if task.repetitions.is_some() => count / span.value().max(WINDOW_MIN),
        Some(_) => RATE_UNKNOWN_SPAN,
        None if repetitions.count() <= 2 => 0.0,
        None => RATE_UNKNOWN_SPAN,
    }
}

pub(super) fn hours(task: &Task, repetitions: Repetitions) -> f64 {
    match task.span {
        Some(span) => span.value() / 60.0,
        None if repetitions.count() <= 2 => 0.0,
        None => (f64::from(repetitions.count()) / RATE_UNKNOWN_SPAN / 60.0).min(24.0),
    }
}
