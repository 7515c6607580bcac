//! Step 3. The plan's limits. They only ever make it stricter; where a plan sets its own pain bands it may
//! relax a house rule, and the advice then says whose rule it is.

use super::who::recent_surgery;
use crate::advise::facts::{Facts, Rated, Standing};
use crate::body::Region;
use crate::plan::Plan;
use crate::quantity::{PainScore, Repetitions};
use crate::reason::{Reason, ReasonId, Value};
use crate::way::Way;

/// What the plan says about this task.
#[derive(Debug, Clone, Default)]
pub struct PlanCheck {
    /// Reasons against lifting at all.
    pub against: Vec<Reason>,
    /// What else there is to say of it.
    pub notes: Vec<Reason>,
}

/// Asks the plan about load and pain.
#[must_use]
pub fn check(facts: &Facts<'_>) -> PlanCheck {
    let mut found = PlanCheck::default();
    let Some(plan) = facts.plan else { return found };
    if let Some(max) = facts.plan_ceiling() {
        if facts.mass.is_none_or(|mass| mass > max) {
            let reason = Reason::of(ReasonId::OverPlanCeiling).with("max", Value::Mass(max));
            found.against.push(match facts.mass {
                Some(mass) => reason.with("mass", Value::Mass(mass)),
                None => reason,
            });
        }
        if recent_surgery(facts) {
            found.notes.push(Reason::of(ReasonId::SurgeonLimit));
        }
    }
    found.against.extend(how_often(facts, plan));
    if let Some(ceiling) = plan.pain_ceiling {
        for (region, rated) in rated_regions(facts) {
            if !rated.asked {
                // It may be the worst there is: over every ceiling that a score can pass.
                if PainScore::WORST > ceiling {
                    found.against.push(
                        Reason::of(ReasonId::PainNotAsked)
                            .with("region", Value::Region(region))
                            .with("max", Value::Pain(ceiling)),
                    );
                }
            } else if rated.score > ceiling {
                found.against.push(
                    Reason::of(ReasonId::OverPainCeiling)
                        .with("region", Value::Region(region))
                        .with("pain", Value::Pain(rated.score))
                        .with("max", Value::Pain(ceiling)),
                );
            }
        }
    }
    if facts.standing == Standing::Grace {
        found.notes.push(Reason::of(ReasonId::PlanExpired));
    } else {
        for region in plan.bands.keys() {
            found
                .notes
                .push(Reason::of(ReasonId::PlanSetsBands).with("region", Value::Region(*region)));
        }
    }
    found
}

/// What the plan says of how often: lifts in one go, goes in a day.
fn how_often(facts: &Facts<'_>, plan: &Plan) -> Vec<Reason> {
    let in_one_go = facts.times_a_bout().filter(|_| facts.over_times_a_bout());
    let in_one_go = in_one_go.map(|max| {
        let reason = Reason::of(ReasonId::OverPlanTimes).with("max", Value::Count(max));
        match facts.task.repetitions {
            Some(times) => reason.with("times", Value::Count(times)),
            None => reason,
        }
    });
    let done = facts.bouts_today;
    let in_a_day = plan.bouts_a_day.filter(|max| done >= max.count());
    let in_a_day = in_a_day.map(|max| {
        Reason::of(ReasonId::PlanBoutsDone)
            .with("max", Value::Count(max))
            .with("done", Value::Count(Repetitions::of(done)))
    });
    in_one_go.into_iter().chain(in_a_day).collect()
}

/// Whether the plan puts a way first. Only while it holds: past its review date that lapses, as relaxations do.
#[must_use]
pub fn prefers(facts: &Facts<'_>, way: Way) -> bool {
    facts.standing == Standing::Valid && facts.plan.is_some_and(|plan| plan.prefer.contains(&way))
}

/// Why the plan rules a way out, if it does. A list of allowed ways is exhaustive: what is not on it is ruled out,
/// picking up from a table too.
#[must_use]
pub fn rules_out(facts: &Facts<'_>, way: Way) -> Option<ReasonId> {
    let plan = facts.plan?;
    if plan.avoid.contains(&way) {
        return Some(ReasonId::PlanAvoids);
    }
    let listed = plan
        .allowed
        .as_ref()
        .is_none_or(|allowed| allowed.contains(&way));
    (!listed).then_some(ReasonId::PlanNotListed)
}

/// Regions the pain ceiling holds for: every rated one, and back and knees even when not asked.
fn rated_regions(facts: &Facts<'_>) -> impl Iterator<Item = (Region, Rated)> {
    [
        (Region::Back, facts.back, true),
        (Region::KneeLeft, facts.knee_left, true),
        (Region::KneeRight, facts.knee_right, true),
        (Region::HipLeft, facts.hip_left, false),
        (Region::HipRight, facts.hip_right, false),
        (Region::Shoulders, facts.shoulders, false),
    ]
    .into_iter()
    .filter(|(_, rated, even_unasked)| rated.asked || *even_unasked)
    .map(|(region, rated, _)| (region, rated))
}
