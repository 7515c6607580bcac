//! The judgement, step by step. [`advise`] is the one entry.
//!
//! 1. warning signs · 2. who may be advised · 3. the plan · 4. the task against published limits ·
//! 5. each way · 6. ranking · 7. outcome, then the search for changes and the heaviest load for today.
//!
//! Every step may end it; all reasons met so far are kept.

pub mod advice;
mod assess;
pub mod change;
mod eased;
pub mod facts;
mod heaviest;
mod modelled;
mod ranking;
pub mod request;
mod search;

pub use request::{RecentUse, Request};

use crate::loads::summary::{self, WayLoads};
use crate::reason::{Reason, ReasonId};
use crate::rules::{alternatives, cautions, conditions, warning_signs, who};
use crate::way::Way;
use advice::{Advice, Caution, HowSoon, Outcome, RuledOut};
use assess::{Assessment, assess, assess_with};
use facts::Facts;

/// Judges one request. Total: every request gets exactly one advice, with a reason and a next step.
///
/// Modelled joint loads order ways that are equal by trade rules, and changes that are equally little trouble, and
/// explain; they never change the outcome, which ways and changes are offered, or the heaviest load.
#[must_use]
pub fn advise(request: &Request) -> Advice {
    let mut advice = judge_with(request, summary::of);
    eased::tell(request, &mut advice);
    advice
}

/// The same judgement by rules alone, without postures: the same outcome, ways and changes, some of them perhaps
/// in another order, and no loads. A hundred times faster, for sweeps.
#[must_use]
pub fn judge(request: &Request) -> Advice {
    judge_with(request, |_, _| Vec::new())
}

fn judge_with(request: &Request, model: impl Fn(&Facts<'_>, &[Way]) -> Vec<WayLoads>) -> Advice {
    let facts = Facts::of(request, &request.task);
    if let Some((how_soon, reasons)) = warning_signs::check(&request.person) {
        return without_a_lift(&facts, Outcome::SeekCare { how_soon }, reasons);
    }
    let refusals = who::check(&facts);
    if !refusals.is_empty() {
        return without_a_lift(&facts, Outcome::Refuse, refusals);
    }
    let mut assessment = assess(request, &facts);
    let offered: Vec<Way> = assessment
        .lift_once_changed()
        .map(|ways| ways.iter().collect())
        .unwrap_or_default();
    let loads = model(&facts, &offered);
    if !loads.is_empty() {
        assessment = assess_with(request, &facts, |way| {
            modelled::ratio_and_energy(&facts, &loads, way)
        });
    }
    let mut reasons = assessment.reasons.clone();
    let outcome = outcome(request, &facts, &assessment, &mut reasons);
    what_the_ways_say(&facts, &assessment, &outcome, &mut reasons);
    reasons.extend(modelled::reasons(&facts, &outcome, &loads));
    reasons.sort_by_key(|reason| (reason.id.step(), reason.id.authority()));
    let cautions = cautions::of(&facts, &outcome, &reasons, assessment.over_guide);
    let cautious = cautions.contains(&Caution::AidOrHelpFirst);
    Advice {
        alternatives: alternatives::of(&facts, &outcome, &reasons, cautious),
        ruled_out: ruled_out(&assessment),
        heaviest_today: heaviest::today(request),
        limit: Some(assessment.limit),
        loads: if outcome.ways().is_empty() {
            Vec::new()
        } else {
            loads
        },
        outcome,
        cautions,
        reasons,
    }
}

fn without_a_lift(facts: &Facts<'_>, outcome: Outcome, mut reasons: Vec<Reason>) -> Advice {
    reasons.sort_by_key(|reason| reason.id.authority());
    Advice {
        ruled_out: Vec::new(),
        cautions: cautions::of(facts, &outcome, &reasons, false),
        alternatives: alternatives::of(facts, &outcome, &reasons, true),
        heaviest_today: None,
        limit: None,
        loads: Vec::new(),
        outcome,
        reasons,
    }
}

fn outcome(
    request: &Request,
    facts: &Facts<'_>,
    assessment: &Assessment,
    reasons: &mut Vec<Reason>,
) -> Outcome {
    if let Some(ways) = assessment.lift() {
        return Outcome::Lift { ways: ways.clone() };
    }
    let changes = search::changes(request, facts, assessment);
    if let Some(ways) = assessment
        .lift_once_changed()
        .filter(|_| !changes.is_empty())
    {
        return Outcome::LiftWithChange {
            ways: ways.clone(),
            changes,
        };
    }
    if assessment.against.is_empty() && assessment.ways.is_none() {
        reasons.push(match assessment.second_best {
            true => second_best_because(assessment),
            false => Reason::of(ReasonId::NoWayLeft),
        });
    }
    if changes.is_empty() {
        reasons.push(Reason::of(ReasonId::NoChangeFound));
    }
    let tell_clinician = reasons
        .iter()
        .any(|reason| matches!(reason.id, ReasonId::OverPainCeiling | ReasonId::PlanExpired));
    Outcome::DoNotLift {
        changes,
        tell_clinician,
    }
}

/// That only ways are left which may not come first, and what holds all of them back, where it is one thing.
fn second_best_because(assessment: &Assessment) -> Reason {
    let reason = Reason::of(ReasonId::OnlySecondBestLeft);
    let mut usable = assessment.verdicts.iter().filter(|way| way.usable());
    let all_by = |id| {
        usable.clone().all(|verdict| {
            let mut why = verdict.not_first.iter();
            why.all(|reason| reason.id == id)
        })
    };
    let what = [
        (ReasonId::LongRun, "long_run"),
        (ReasonId::HipSevere, "hip"),
    ]
    .into_iter()
    .find(|(id, _)| all_by(*id));
    match (usable.next(), what) {
        (Some(_), Some((_, what))) => reason.with("what", crate::reason::Value::Id(what)),
        _ => reason,
    }
}

/// Reasons that belong to the ways offered, to conditions, and to what was not asked.
fn what_the_ways_say(
    facts: &Facts<'_>,
    assessment: &Assessment,
    outcome: &Outcome,
    reasons: &mut Vec<Reason>,
) {
    let offered = outcome.ways();
    for verdict in &assessment.verdicts {
        if offered.contains(&verdict.way) {
            reasons.extend(verdict.suits.iter().map(|(_, id)| Reason::of(*id)));
            reasons.extend(verdict.notes.iter().cloned());
            reasons.extend(verdict.not_first.iter().cloned());
        } else {
            reasons.extend(verdict.barred.iter().cloned());
            if assessment.second_best && verdict.usable() {
                reasons.extend(verdict.not_first.iter().cloned());
            }
        }
    }
    reasons.extend(
        conditions::rows(facts)
            .filter_map(|row| row.reason)
            .map(Reason::of),
    );
    reasons.extend(assessment.yielded.iter().cloned());
    if !facts.upright() && (!facts.hip_left.asked || !facts.hip_right.asked) {
        reasons.push(Reason::of(ReasonId::HipNotAsked));
    }
    if !facts.shoulders.asked {
        reasons.push(Reason::of(ReasonId::ShoulderNotAsked));
    }
    for what in not_covered(&offered) {
        reasons.push(Reason::of(ReasonId::NotCovered).with("what", crate::reason::Value::Id(what)));
    }
    // One entry an id and value, whichever way it was met on.
    let mut seen: Vec<Reason> = Vec::new();
    reasons.retain(|reason| {
        let new = !seen.contains(reason);
        if new {
            seen.push(reason.clone());
        }
        new
    });
}

/// What the equation does not cover of the ways offered; for these the two-handed standing figure is shown.
fn not_covered(offered: &[Way]) -> Vec<&'static str> {
    let mut what = Vec::new();
    if offered.contains(&Way::HalfKneelingLunge) {
        what.push("kneeling");
    }
    if offered.contains(&Way::GolfersLift) {
        what.push("one_hand");
    }
    what
}

fn ruled_out(assessment: &Assessment) -> Vec<RuledOut> {
    assessment
        .verdicts
        .iter()
        .filter(|verdict| !verdict.usable())
        .map(|verdict| {
            let mut because: Vec<ReasonId> =
                verdict.barred.iter().map(|reason| reason.id).collect();
            because.dedup();
            RuledOut {
                way: verdict.way,
                because,
            }
        })
        .collect()
}

/// Whether the advice is about care rather than lifting, and how soon.
#[must_use]
pub fn care_needed(request: &Request) -> Option<HowSoon> {
    warning_signs::check(&request.person).map(|(how_soon, _)| how_soon)
}
