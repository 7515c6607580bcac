//! Step 2. Who may be advised: where we may not, others can.

use crate::advise::facts::{Facts, Standing};
use crate::body::{Condition, WarningSign};
use crate::reason::{Reason, ReasonId, Value};

/// Surgery counts as recent for three months. House rule after clinic examples (source `post_surgery_limits`).
const RECENT_SURGERY_WEEKS: f64 = 13.0;

/// Reasons not to advise at all; empty when advice may go on.
#[must_use]
pub fn check(facts: &Facts<'_>) -> Vec<Reason> {
    let mut reasons = Vec::new();
    if facts.task.living {
        reasons.push(Reason::of(ReasonId::LoadIsAlive));
    }
    if recent_surgery(facts) && !carries_limit(facts) {
        reasons.push(Reason::of(ReasonId::SurgeryNoLimit));
    }
    if facts.has(Condition::PregnancyComplicated) {
        reasons.push(Reason::of(ReasonId::PregnancyComplicated));
    }
    if facts.child() && !(facts.plan.is_some() && facts.standing == Standing::Valid) {
        reasons.push(Reason::of(ReasonId::ChildNoPlan));
    }
    if facts.plan.is_some() && facts.standing == Standing::TooOld {
        reasons.push(too_old(facts));
    }
    reasons
}

/// Whether back, hip, knee or belly were operated on lately.
#[must_use]
pub fn recent_surgery(facts: &Facts<'_>) -> bool {
    let weeks = facts.person.since_surgery.map(|weeks| weeks.value());
    let named_recent = [
        Condition::LumbarSurgeryRecent,
        Condition::KneeReplacementRecent,
    ]
    .iter()
    .any(|condition| facts.has(*condition));
    facts.person.signs.contains(&WarningSign::PostOpRecent)
        || weeks.is_some_and(|weeks| weeks < RECENT_SURGERY_WEEKS)
        || (named_recent && weeks.is_none())
}

/// Whether a valid plan carries a limit that can stand for the surgeon's.
fn carries_limit(facts: &Facts<'_>) -> bool {
    facts.standing == Standing::Valid && facts.plan_ceiling().is_some()
}

fn too_old(facts: &Facts<'_>) -> Reason {
    let overdue = facts.plan.and_then(|plan| match plan.validity {
        crate::plan::Validity::Expired { overdue } => overdue,
        crate::plan::Validity::Valid => None,
    });
    let reason = Reason::of(ReasonId::PlanTooOld);
    match overdue {
        Some(weeks) => reason.with("overdue", Value::Weeks(weeks)),
        None => reason,
    }
}
