//! Step 4. The task itself against published limits for healthy adults, and what else speaks against it.

use super::published;
use crate::advise::facts::{Facts, LIGHT};
use crate::body::{Balance, Condition};
use crate::limits::hse::CARRY_WITHOUT_REST;
use crate::limits::niosh::TaskLimit;
use crate::quantity::Kilograms;
use crate::reason::{Reason, ReasonId, Value};
use crate::task::LoadMass;

/// From here arms are nearly straight. House rule; the equation ends at 63 cm.
const FAR_REACH_CM: f64 = 60.0;
/// From this index on the task is not for today as it stands. House rule; the manual (NIOSH 94-110,
/// section 1.4) calls an index over 3 a high risk for many workers.
const INDEX_TOO_HIGH: f64 = 3.0;

/// What speaks against the task, and what there is to say of it.
#[derive(Debug, Clone)]
pub struct TaskCheck {
    /// The published limit for this task.
    pub limit: TaskLimit,
    /// Reasons not to lift it as it stands, whatever is done about the ways.
    pub against: Vec<Reason>,
    /// Reasons to change it first.
    pub change_first: Vec<Reason>,
    /// What else there is to say.
    pub notes: Vec<Reason>,
    /// Over the guideline weight used as a first screen.
    pub over_guide: bool,
}

/// Asks the published limits and the house rules about the task.
#[must_use]
pub fn check(facts: &Facts<'_>) -> TaskCheck {
    let mut found = TaskCheck {
        limit: published::task_limit(facts),
        against: Vec::new(),
        change_first: Vec::new(),
        notes: Vec::new(),
        over_guide: false,
    };
    index(facts, &mut found);
    guide_weight(facts, &mut found);
    load_and_reach(facts, &mut found);
    high(facts, &mut found);
    pregnancy(facts, &mut found);
    hernia(facts, &mut found);
    found
}

/// The index at the mass judged by. Where nobody has tested the mass, only its lower end can put the task out of
/// question: the upper end asks for the mass to be found out first.
fn index(facts: &Facts<'_>, found: &mut TaskCheck) {
    for multiplier in &found.limit.outside {
        found
            .against
            .push(Reason::of(ReasonId::OutsideEquation).with("what", Value::Id(multiplier.id())));
    }
    let limit = Kilograms::from(found.limit.governing_rwl());
    let said = |id, index| {
        Reason::of(id)
            .with("index", Value::Ratio(index))
            .with("limit", Value::Mass(limit))
    };
    let at_least = at_least(facts, limit).filter(|index| *index >= INDEX_TOO_HIGH);
    if let Some(index) = at_least {
        found.against.push(said(ReasonId::IndexOverThree, index));
    } else if let Some(index) = found.limit.governing_index() {
        if index > 1.0 {
            found.change_first.push(said(ReasonId::IndexOverOne, index));
        } else {
            found.notes.push(said(ReasonId::IndexWithinOne, index));
        }
    }
}

/// The lifting index that is certain: at the known mass, or at the lower end of a guess.
fn at_least(facts: &Facts<'_>, limit: Kilograms) -> Option<f64> {
    let mass = match facts.task.mass {
        LoadMass::Known(mass) => mass,
        LoadMass::Untested { low, .. } => low?,
    };
    (limit.value() > 0.0).then(|| mass.value() / limit.value())
}

fn guide_weight(facts: &Facts<'_>, found: &mut TaskCheck) {
    let guide = published::guide_weight(facts).weight;
    if facts.mass.is_none_or(|mass| mass > guide) {
        found.over_guide = true;
        found
            .notes
            .push(Reason::of(ReasonId::OverGuideWeight).with("guide", Value::Mass(guide)));
    }
}

fn load_and_reach(facts: &Facts<'_>, found: &mut TaskCheck) {
    if facts.light() {
        return;
    }
    if !facts.tested {
        let reason = Reason::of(ReasonId::MassUnknown);
        found.change_first.push(match facts.mass {
            Some(high) => reason.with("high", Value::Mass(high)),
            None => reason,
        });
    }
    if facts.bulky {
        found.change_first.push(Reason::of(ReasonId::Bulky));
    }
    if facts.reach.value() >= FAR_REACH_CM {
        found
            .change_first
            .push(Reason::of(ReasonId::FarReach).with("reach", Value::Length(facts.reach)));
    }
    let carried = facts.carried();
    if carried > CARRY_WITHOUT_REST {
        found
            .change_first
            .push(Reason::of(ReasonId::LongCarry).with("distance", Value::Distance(carried)));
    }
}

fn high(facts: &Facts<'_>, found: &mut TaskCheck) {
    if !facts.above_shoulder() {
        return;
    }
    if facts.balance == Balance::Poor {
        found.against.push(Reason::of(ReasonId::HighAndUnsteady));
    }
    if facts.shoulders.severe() && facts.mass.is_none_or(|mass| mass > LIGHT) {
        found.against.push(Reason::of(ReasonId::HighAndShoulder));
    }
}

fn pregnancy(facts: &Facts<'_>, found: &mut TaskCheck) {
    if !facts.has(Condition::Pregnant) {
        return;
    }
    if facts.below_mid_shin() || facts.above_shoulder() {
        found
            .against
            .push(Reason::of(ReasonId::PregnancyLowOrOverhead));
    }
    if facts.longer_reach() {
        found.notes.push(Reason::of(ReasonId::PregnancyReach));
    }
}

fn hernia(facts: &Facts<'_>, found: &mut TaskCheck) {
    if !facts.has(Condition::Hernia) {
        return;
    }
    if facts.mass.is_none()
        || found
            .limit
            .governing_index()
            .is_none_or(|index| index > 1.0)
    {
        found.against.push(Reason::of(ReasonId::HerniaHeavy));
    } else {
        found.notes.push(Reason::of(match facts.light() {
            true => ReasonId::HerniaLight,
            false => ReasonId::HerniaAid,
        }));
    }
}
