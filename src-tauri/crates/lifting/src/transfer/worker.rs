//! The worker's own body today: what it lets the hands do. House rules on the same bands as for a thing.

use super::limit::LoweredBy;
use crate::advise::facts::{Band, Facts, Standing};
use crate::body::{Balance, Condition};
use crate::plan::Plan;
use crate::quantity::Kilograms;
use crate::reason::{Reason, ReasonId, Value};
use crate::rules;

/// The worker as judged.
#[derive(Debug, Clone, PartialEq)]
pub struct Worker {
    /// Why the worker may bear no part of a person today; empty when they may.
    pub bears_nothing: Vec<Reason>,
    /// What of the worker's body lowers the limit.
    pub lowers: Vec<LoweredBy>,
    /// The lowest ceiling of the worker's own plan.
    pub own_ceiling: Option<Kilograms>,
    /// The worker's plan is past its review date.
    pub plan_expired: bool,
}

impl Worker {
    /// Judges the worker.
    #[must_use]
    pub fn of(facts: &Facts<'_>) -> Self {
        let mut lowers = Vec::new();
        // Also when this worker bears nothing, so that more pain never raises what the others may take.
        if facts.back.band >= Band::Moderate || facts.back_provoked() {
            lowers.push(LoweredBy::OwnBack);
        }
        if facts.worse_knee().severe() || facts.hip_left.severe() || facts.hip_right.severe() {
            lowers.push(LoweredBy::OwnLegs);
        }
        if facts.has(Condition::Osteoporosis) || facts.has(Condition::PastSpineFracture) {
            lowers.push(LoweredBy::OwnBones);
        }
        if facts.has(Condition::Pregnant) {
            lowers.push(LoweredBy::OwnPregnancy);
        }
        Self {
            bears_nothing: bears_nothing(facts),
            lowers,
            own_ceiling: facts.plan.and_then(lowest_ceiling),
            plan_expired: facts.plan.is_some() && facts.standing == Standing::Grace,
        }
    }

    /// Whether the body says anything at all.
    #[must_use]
    pub fn limits(&self) -> bool {
        !self.bears_nothing.is_empty() || !self.lowers.is_empty() || self.own_ceiling.is_some()
    }
}

fn bears_nothing(facts: &Facts<'_>) -> Vec<Reason> {
    let mut found = Vec::new();
    let mut say = |what| {
        found.push(Reason::of(ReasonId::WorkerBearsNothing).with("what", Value::Id(what)));
    };
    if facts.back_provoked() {
        say(if facts.back.asked {
            "back"
        } else {
            "back_not_asked"
        });
    }
    if facts.shoulders.severe() {
        say("shoulders");
    }
    if facts.balance == Balance::Poor {
        say(match facts.person.balance {
            Some(_) => "balance",
            None => "balance_not_asked",
        });
    }
    if facts.has(Condition::Hernia) {
        say("hernia");
    }
    found.extend(over_pain_ceiling(facts));
    found
}

fn over_pain_ceiling(facts: &Facts<'_>) -> Vec<Reason> {
    rules::plan::check(facts)
        .against
        .into_iter()
        .filter(|reason| reason.id == ReasonId::OverPainCeiling)
        .collect()
}

fn lowest_ceiling(plan: &Plan) -> Option<Kilograms> {
    plan.max_by_height
        .values()
        .copied()
        .chain(plan.max)
        .reduce(Kilograms::at_most)
}
