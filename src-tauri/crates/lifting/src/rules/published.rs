//! Puts the task of a request to the published methods.

use crate::advise::facts::Facts;
use crate::limits::hse::{self, GuideTask, GuideWeight};
use crate::limits::niosh::{self, LiftingTask, TaskLimit};
use crate::limits::{Hours, PerMinute};
use crate::quantity::{Degrees, Kilograms};

/// The equation's limit. Where it is put down is scored when that was said: on the careful side, since it
/// is not asked how exactly it has to be placed. With no idea of the mass every index is undefined.
#[must_use]
pub fn task_limit(facts: &Facts<'_>) -> TaskLimit {
    let load = facts.mass.unwrap_or(Kilograms::clamped(0.0)).into();
    let twist = twist(facts);
    let mut limit = niosh::task_limit(&LiftingTask {
        h: facts.reach.into(),
        v_origin: facts.start.into(),
        v_destination: facts.end.into(),
        a_origin: twist,
        a_destination: twist,
        h_destination: None,
        control_at_destination: facts.task.end.is_some(),
        lifts_per_min: PerMinute::clamped(facts.per_minute),
        hours: Hours::clamped(facts.hours),
        recovery_hours: None,
        coupling: facts.coupling,
        load_avg: load,
        load_max: load,
    });
    if facts.mass.is_none() {
        limit.origin.lifting_index = None;
        if let Some(destination) = limit.destination.as_mut() {
            destination.lifting_index = None;
        }
        limit.frequency_independent.fili = None;
        limit.stli = None;
    }
    limit
}

/// The guideline weight used as a first screen.
#[must_use]
pub fn guide_weight(facts: &Facts<'_>) -> GuideWeight {
    hse::guide_weight(&GuideTask {
        sex: facts.person.sex,
        stature: facts.person.stature,
        start: facts.start,
        end: facts.end,
        reach: facts.reach,
        twist: twist(facts),
        per_minute: PerMinute::clamped(facts.per_minute),
    })
}

fn twist(facts: &Facts<'_>) -> Degrees {
    facts.task.twist.unwrap_or(Degrees::clamped(0.0))
}
