//! What next in the plan: one step up, hold, or one step down.
//!
//! The rule follows the pain-monitoring model (Thomeé 1997; Silbernagel 2007; source `pain_monitoring`,
//! studied on tendons and kneecaps, borrowed for backs) with its bands 0–3, 4–5 and above 5, and two good
//! sessions running before a step (a training rule). Numbers a plan sets win.

mod practice;

pub use practice::{Session, after_a_flare, good_in_a_row, history, in_a_flare, take};

use crate::body::{BackState, Person};
use crate::naming::named;
use crate::plan::{Plan, Validity};
use crate::quantity::{Kilograms, PainScore};
use crate::reason::{Reason, ReasonId, Value};
use crate::rules::warning_signs;

/// Pain during up to this lets a step up be offered (pain-monitoring model).
const GOOD: PainScore = PainScore::of(3);
/// Pain during above this asks for a step down, unless the plan says otherwise (pain-monitoring model).
const ACCEPTABLE: PainScore = PainScore::of(5);
/// Good sessions running before a step (two-for-two rule).
const SESSIONS: u32 = 2;
/// One step: the smaller of a tenth of the level and 1 kg, unless the plan says. House rule.
const STEP_SHARE: f64 = 0.1;
const STEP_MOST_KG: f64 = 1.0;

named!(
    /// How pain went over the week.
    Trend {
        /// It fell.
        Down = "down",
        /// About the same.
        Same = "same",
        /// It rose.
        Up = "up",
    }
);

named!(
    /// What is proposed.
    Progress {
        /// One step up.
        StepUp = "step_up",
        /// Stay at this level.
        Hold = "hold",
        /// One step down.
        StepDown = "step_down",
    }
);

/// The last sessions at this level. `None`: not known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct History {
    /// Sessions at this level.
    pub sessions_at_level: Option<u32>,
    /// The worst pain during any of them.
    pub worst_during: Option<PainScore>,
    /// Whether pain was back to usual by next morning.
    pub settled_next_morning: Option<bool>,
    /// How pain went over the week.
    pub week_trend: Option<Trend>,
    /// Whether today is a flare-up.
    pub flare_today: Option<bool>,
}

/// A proposal with its reasons.
#[derive(Debug, Clone, PartialEq)]
pub struct Proposal {
    /// What next.
    pub progress: Progress,
    /// Why.
    pub reasons: Vec<Reason>,
}

/// Proposes what next. Total; anything not known holds.
#[must_use]
pub fn propose(person: &Person, plan: Option<&Plan>, history: &History) -> Proposal {
    let down = reasons_to_step_down(person, plan, history);
    if !down.is_empty() {
        return Proposal {
            progress: Progress::StepDown,
            reasons: down,
        };
    }
    let hold = reasons_to_hold(person, plan, history);
    if !hold.is_empty() {
        return Proposal {
            progress: Progress::Hold,
            reasons: hold,
        };
    }
    Proposal {
        progress: Progress::StepUp,
        reasons: vec![Reason::of(ReasonId::TwoGoodSessions)],
    }
}

/// The size of one step. `None` when neither step nor level is known.
#[must_use]
pub fn step_size(plan: &Plan) -> Option<Kilograms> {
    plan.step.or_else(|| {
        plan.current
            .map(|level| Kilograms::clamped((level.value() * STEP_SHARE).min(STEP_MOST_KG)))
    })
}

/// Good sessions running that a step up needs.
#[must_use]
pub fn sessions_needed(plan: Option<&Plan>) -> u32 {
    let set = plan.and_then(|plan| plan.good_sessions);
    set.unwrap_or(SESSIONS).max(1)
}

/// The most pain during practice that does not ask for a step down.
fn most_during(plan: Option<&Plan>) -> PainScore {
    let set = |plan: &Plan| match (plan.back_over, plan.pain_ceiling) {
        (Some(one), Some(other)) => Some(one.min(other)),
        (one, other) => one.or(other),
    };
    plan.and_then(set).unwrap_or(ACCEPTABLE)
}

/// Whether pain during practice lets a step up be offered.
fn is_good(pain: PainScore, plan: Option<&Plan>) -> bool {
    match plan.and_then(|plan| plan.hold_from) {
        Some(from) => pain < from,
        None => pain <= GOOD,
    }
}

fn reasons_to_step_down(person: &Person, plan: Option<&Plan>, history: &History) -> Vec<Reason> {
    let mut reasons = Vec::new();
    if history.flare_today == Some(true) || person.back_state == Some(BackState::Flare) {
        reasons.push(Reason::of(ReasonId::FlareStepDown));
    }
    let most = most_during(plan);
    if let Some(pain) = history.worst_during.filter(|pain| *pain > most) {
        reasons.push(
            Reason::of(ReasonId::PainOverDuring)
                .with("pain", Value::Pain(pain))
                .with("max", Value::Pain(most)),
        );
    }
    if history.settled_next_morning == Some(false) {
        reasons.push(Reason::of(ReasonId::NotSettled));
    }
    if history.week_trend == Some(Trend::Up) {
        reasons.push(Reason::of(ReasonId::WeekRising));
    }
    reasons
}

fn reasons_to_hold(person: &Person, plan: Option<&Plan>, history: &History) -> Vec<Reason> {
    let mut reasons: Vec<Reason> = warning_signs::check(person)
        .map(|(_, reasons)| reasons)
        .unwrap_or_default();
    let known = [
        history.worst_during.is_some(),
        history.settled_next_morning.is_some(),
        history.week_trend.is_some(),
    ];
    if known.contains(&false) || history.sessions_at_level.is_none() {
        reasons.push(Reason::of(ReasonId::HistoryIncomplete));
    }
    if history
        .sessions_at_level
        .is_some_and(|sessions| sessions < sessions_needed(plan))
    {
        reasons.push(Reason::of(ReasonId::TooFewSessions));
    }
    if let Some(pain) = history.worst_during.filter(|pain| !is_good(*pain, plan)) {
        reasons.push(Reason::of(ReasonId::PainAcceptableDuring).with("pain", Value::Pain(pain)));
    }
    reasons.extend(plan_holds(plan));
    reasons
}

fn plan_holds(plan: Option<&Plan>) -> Vec<Reason> {
    let Some(plan) = plan else {
        return vec![Reason::of(ReasonId::NoLevelKnown)];
    };
    let mut reasons = Vec::new();
    if plan.validity != Validity::Valid {
        reasons.push(Reason::of(ReasonId::PlanExpired));
    }
    if plan.steps_locked {
        reasons.push(Reason::of(ReasonId::StepsLocked));
    }
    match (plan.current, step_size(plan)) {
        (Some(level), Some(step)) => {
            let strictest = plan.strictest_ceiling();
            if let Some(max) = strictest.filter(|max| level.value() + step.value() > max.value()) {
                reasons.push(Reason::of(ReasonId::AtCeiling).with("max", Value::Mass(max)));
            }
        }
        _ => reasons.push(Reason::of(ReasonId::NoLevelKnown)),
    }
    reasons
}
