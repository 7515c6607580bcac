//! An advice as it is kept: ids and whole figures, no sentences.

use crate::card::RULE_VERSION;
use crate::convert::figures;
use lifting::advise::advice::{Advice, RuledOut};
use lifting::advise::change::{Change, ChangeStep};
use lifting::limits::niosh::TaskLimit;
use lifting::reason::{Authority, Reason, Sure};
use lifting::way::Way;
use record::Arg;

/// An advice as it is kept.
#[must_use]
pub(crate) fn to_record(advice: &Advice) -> record::Advice {
    record::Advice {
        outcome: outcome(advice),
        urgency: urgency(advice),
        ways: advice.outcome.ways().into_iter().map(way).collect(),
        ruled_out: advice.ruled_out.iter().map(ruled_out).collect(),
        cautions: advice
            .cautions
            .iter()
            .map(|caution| caution.id().to_owned())
            .collect(),
        changes: advice.outcome.changes().iter().map(change).collect(),
        alternatives: advice
            .alternatives
            .iter()
            .map(|other| other.id().to_owned())
            .collect(),
        reasons: advice.reasons.iter().map(reason).collect(),
        heaviest_g: advice
            .heaviest_today
            .map(|mass| figures::thousandths(mass.value())),
        limit: advice.limit.as_ref().map(limit),
        rule_version: RULE_VERSION.to_owned(),
    }
}

/// A way as it is kept.
#[must_use]
pub(crate) const fn way(way: Way) -> record::Way {
    match way {
        Way::Upright => record::Way::Upright,
        Way::HipHinge => record::Way::Hinge,
        Way::Squat => record::Way::Squat,
        Way::HalfKneelingLunge => record::Way::Lunge,
        Way::FreeBend => record::Way::FreeBend,
        Way::GolfersLift => record::Way::Golfer,
    }
}

const fn outcome(advice: &Advice) -> record::Outcome {
    use lifting::advise::advice::Outcome;
    match advice.outcome {
        Outcome::Lift { .. } => record::Outcome::Lift,
        Outcome::LiftWithChange { .. } => record::Outcome::LiftWithChange,
        Outcome::DoNotLift { .. } => record::Outcome::DoNotLift,
        Outcome::SeekCare { .. } => record::Outcome::SeekCare,
        Outcome::Refuse => record::Outcome::Refuse,
    }
}

const fn urgency(advice: &Advice) -> record::Urgency {
    use lifting::advise::advice::Urgency;
    match advice.outcome.urgency() {
        Urgency::None => record::Urgency::None,
        Urgency::Routine => record::Urgency::Routine,
        Urgency::SameDay => record::Urgency::SameDay,
        Urgency::Emergency => record::Urgency::Emergency,
    }
}

fn ruled_out(ruled_out: &RuledOut) -> record::RuledOut {
    record::RuledOut {
        way: way(ruled_out.way),
        because: ruled_out
            .because
            .iter()
            .map(|id| id.id().to_owned())
            .collect(),
    }
}

/// A change of one step has that step's kind; one of several is `together`.
fn change(change: &Change) -> record::Change {
    let ways = change.ways.iter().map(way).collect();
    match change.steps.as_slice() {
        [step] => record::Change {
            kind: step.id().to_owned(),
            args: step_figures(step),
            ways,
            steps: Vec::new(),
        },
        steps => record::Change {
            kind: figures::TOGETHER.to_owned(),
            args: Vec::new(),
            ways,
            steps: steps
                .iter()
                .map(|step| record::ChangeStep {
                    kind: step.id().to_owned(),
                    args: step_figures(step),
                })
                .collect(),
        },
    }
}

fn step_figures(step: &ChangeStep) -> Vec<Arg> {
    let one = |name: &str, value: u32| vec![figures::whole(name, value)];
    match *step {
        ChangeStep::FindMass { go_on_up_to } => {
            one("go_on_up_to_g", figures::thousandths(go_on_up_to.value()))
        }
        ChangeStep::BringCloser { to }
        | ChangeStep::RaiseStart { to }
        | ChangeStep::RaiseEnd { to }
        | ChangeStep::LowerEnd { to } => one("to_mm", figures::tenths(to.value())),
        ChangeStep::BetterGrip | ChangeStep::TurnFeet => Vec::new(),
        ChangeStep::Split { parts, each, lifts } => {
            let lifts = lifts.map(|lifts| figures::whole("to_times", lifts.count()));
            let mut kept = vec![
                figures::whole("parts", parts),
                figures::whole("each_g", figures::thousandths(each.value())),
            ];
            kept.extend(lifts);
            kept
        }
        ChangeStep::Lighten { to } => one("to_g", figures::thousandths(to.value())),
        ChangeStep::ShortenBout { to } => one("to_times", to.count()),
        ChangeStep::CarryInStages { to } => one("to_mm", figures::thousandths(to.value())),
        ChangeStep::SecondPerson { judged_at } | ChangeStep::ThreePeople { judged_at } => {
            one("judged_at_g", figures::thousandths(judged_at.value()))
        }
    }
}

fn reason(reason: &Reason) -> record::Reason {
    record::Reason {
        id: reason.id.id().to_owned(),
        step: reason.id.step(),
        authority: match reason.id.authority() {
            Authority::Law => record::Authority::Law,
            Authority::Emergency => record::Authority::Emergency,
            Authority::Plan => record::Authority::Plan,
            Authority::Today => record::Authority::Today,
            Authority::Practice => record::Authority::Practice,
        },
        sure: match reason.id.sure() {
            Sure::Published => record::Sure::Published,
            Sure::House => record::Sure::House,
            Sure::Estimate => record::Sure::Estimate,
        },
        source: reason.id.source().to_owned(),
        args: reason
            .values
            .iter()
            .map(|(name, value)| figures::from_value(name, value))
            .collect(),
    }
}

fn limit(limit: &TaskLimit) -> record::TaskLimit {
    record::TaskLimit {
        recommended_g: figures::thousandths(limit.governing_rwl().value()),
        index_thousandths: limit.governing_index().map(figures::thousandths),
    }
}
