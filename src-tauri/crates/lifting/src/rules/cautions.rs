//! What to heed, for each outcome. The list of [`Caution`] is in order of seriousness.

use super::who;
use crate::advise::advice::{Caution, Outcome};
use crate::advise::facts::{Band, Facts, Standing};
use crate::body::{BackState, Balance, Condition, WarningSign};
use crate::reason::{Reason, ReasonId};
use crate::rules::warning_signs;
use crate::way::Way;
use std::collections::BTreeSet;

/// Pain from which a person is asked whether it can wait or be shared. House rule.
const ASK_WHETHER_IT_CAN_WAIT: u8 = 7;

/// Cautions for an advice, most serious first.
#[must_use]
pub fn of(
    facts: &Facts<'_>,
    outcome: &Outcome,
    reasons: &[Reason],
    over_guide: bool,
) -> Vec<Caution> {
    let mut cautions = BTreeSet::new();
    let said = |id| reasons.iter().any(|reason| reason.id == id);
    for sign in &facts.person.signs {
        use crate::advise::advice::HowSoon;
        match warning_signs::how_soon(*sign, facts.person) {
            Some(HowSoon::Emergency) => cautions.insert(Caution::EmergencyNow),
            Some(HowSoon::SameDay) => cautions.insert(Caution::SameDayAdvice),
            None => cautions.insert(Caution::SurgeonLimitFirst),
        };
    }
    if matches!(outcome, Outcome::SeekCare { .. }) {
        cautions.remove(&Caution::SurgeonLimitFirst);
        return cautions.into_iter().collect();
    }
    if who::recent_surgery(facts) || facts.person.signs.contains(&WarningSign::PostOpRecent) {
        cautions.insert(Caution::SurgeonLimitFirst);
    }
    if facts.child() {
        cautions.insert(Caution::AdultAndClinician);
    }
    if facts.plan.is_some() && facts.standing != Standing::Valid {
        cautions.insert(Caution::PlanExpired);
    }
    if [
        ReasonId::OverPlanCeiling,
        ReasonId::OverPlanTimes,
        ReasonId::PlanBoutsDone,
    ]
    .into_iter()
    .any(said)
    {
        cautions.insert(Caution::OverPlanCeiling);
    }
    if said(ReasonId::OverPainCeiling) {
        cautions.insert(Caution::OverPainCeiling);
    }
    if facts.has(Condition::Pregnant) {
        cautions.insert(Caution::PregnancyNoFloorOverhead);
    }
    if !matches!(outcome, Outcome::Refuse) {
        for_the_lift(facts, outcome, over_guide, &mut cautions);
    }
    cautions.into_iter().collect()
}

fn for_the_lift(
    facts: &Facts<'_>,
    outcome: &Outcome,
    over_guide: bool,
    cautions: &mut BTreeSet<Caution>,
) {
    let ways: BTreeSet<Way> = outcome
        .ways()
        .into_iter()
        .chain(
            outcome
                .changes()
                .iter()
                .flat_map(|change| change.ways.iter().collect::<Vec<_>>()),
        )
        .collect();
    let worst = [
        facts.back,
        facts.knee_left,
        facts.knee_right,
        facts.hip_left,
        facts.hip_right,
    ]
    .iter()
    .map(|rated| rated.score.value())
    .max()
    .unwrap_or(0);
    if !facts.light() && !facts.tested {
        cautions.insert(Caution::WeightUnknownTest);
    }
    if over_guide
        || worst >= ASK_WHETHER_IT_CAN_WAIT
        || facts.back_state != BackState::Steady
        || (facts.bulky && !facts.light())
    {
        cautions.insert(Caution::AidOrHelpFirst);
    }
    if facts.has(Condition::Hernia) && !facts.light() {
        cautions.insert(Caution::AidOrHelpFirst);
    }
    if facts.has(Condition::Osteoporosis) || facts.has(Condition::PastSpineFracture) {
        cautions.insert(Caution::NoLoadedRounding);
    }
    if facts.balance != Balance::Good && !facts.upright() {
        cautions.insert(Caution::NoSingleLeg);
    }
    if facts.balance == Balance::Poor || ways.contains(&Way::GolfersLift) {
        cautions.insert(Caution::HoldSupport);
    }
    cautions.insert(Caution::KeepClose);
    if facts.task.twist.is_some_and(|twist| twist.value() > 0.0)
        || facts.back.band >= Band::Moderate
    {
        cautions.insert(Caution::NoTwist);
    }
    if facts.long_run() {
        cautions.insert(Caution::PaceAndMix);
    }
    if !facts.task.helpers.is_empty() && !facts.light() {
        cautions.insert(Caution::TeamTwoThirds);
    }
}
