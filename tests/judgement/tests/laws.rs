//! The laws, for any request: with plans, conditions, signs, helpers, and every answer left out somewhere.

#![cfg(test)]

use judgement::{any, laws};
use lifting::advise::advice::Advice;
use lifting::advise::change::Change;
use lifting::advise::{Request, advise, judge};
use lifting::body::Region;
use lifting::progress::{Progress, propose};
use lifting::quantity::{Centimetres, Kilograms, PainScore, Repetitions};
use lifting::task::{LoadMass, Reach};
use proptest::prelude::*;

fn harder_never_more(kinder: &Request, harder: &Request) -> Result<(), TestCaseError> {
    let (kinder_says, harder_says) = (judge(kinder), judge(harder));
    prop_assert!(
        harder_says.outcome.permissiveness() <= kinder_says.outcome.permissiveness(),
        "{kinder_says:#?}\n{harder_says:#?}"
    );
    heaviest_never_more(&kinder_says, &harder_says)
}

fn heaviest_never_more(kinder: &Advice, harder: &Advice) -> Result<(), TestCaseError> {
    if let Some(now) = harder.heaviest_today {
        let before = kinder.heaviest_today;
        prop_assert!(
            before.is_some_and(|before| now <= before),
            "{before:?} then {now:?}"
        );
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(20_000))]

    #[test]
    fn every_request_gets_one_advice_that_keeps_the_laws(request in any::request()) {
        let advice = judge(&request);
        let broken = laws::broken(&request, &advice);
        prop_assert!(broken.is_empty(), "{broken:#?}\n{advice:#?}");
        prop_assert_eq!(advice, judge(&request), "same input, same advice");
    }

    #[test]
    fn more_pain_is_never_more_permissive(request in any::request(), region in 0usize..6, more in 1u8..=10) {
        let mut harder = request.clone();
        let pain = &mut harder.person.pain;
        let asked = match Region::ALL[region] {
            Region::Back => &mut pain.back,
            Region::KneeLeft => &mut pain.knee_left,
            Region::KneeRight => &mut pain.knee_right,
            Region::HipLeft => &mut pain.hip_left,
            Region::HipRight => &mut pain.hip_right,
            Region::Shoulders => &mut pain.shoulders,
        };
        if let Some(score) = asked {
            *score = PainScore::of(score.value() + more);
            harder_never_more(&request, &harder)?;
        }
    }

    #[test]
    fn more_mass_is_never_more_permissive(request in any::request(), more in 0.0..50.0f64) {
        let mut harder = request.clone();
        let add = |mass: Kilograms| Kilograms::clamped(mass.value() + more);
        harder.task.mass = match request.task.mass {
            LoadMass::Known(mass) => LoadMass::Known(add(mass)),
            LoadMass::Untested { low, high } => LoadMass::Untested { low: low.map(add), high: high.map(add) },
        };
        harder_never_more(&request, &harder)?;
    }

    #[test]
    fn farther_is_never_more_permissive(request in any::request(), near in 0.0..80.0f64, more in 0.0..40.0f64) {
        let mut kinder = request.clone();
        let mut harder = request;
        kinder.task.reach = Some(Reach::Measured(Centimetres::clamped(near)));
        harder.task.reach = Some(Reach::Measured(Centimetres::clamped(near + more)));
        harder_never_more(&kinder, &harder)?;
    }

    #[test]
    fn more_often_is_never_more_permissive(request in any::request(), times in 1u32..200, more in 1u32..200) {
        let mut kinder = request.clone();
        let mut harder = request;
        kinder.task.repetitions = Some(Repetitions::of(times));
        harder.task.repetitions = Some(Repetitions::of(times + more));
        harder_never_more(&kinder, &harder)?;
    }

    #[test]
    fn more_goes_today_are_never_more_permissive(request in any::request(), more in 1u32..8) {
        let mut harder = request.clone();
        harder.bouts_today += more;
        harder_never_more(&request, &harder)?;
    }

    #[test]
    fn a_plan_without_bands_is_never_more_permissive_than_none(request in any::request()) {
        let mut without = request.clone();
        without.plan = None;
        let (with, without) = (judge(&request), judge(&without));
        let relaxed = without.outcome.permissiveness() == 0; // a surgeon's limit or a child's plan opens the door
        prop_assert!(relaxed || with.outcome.permissiveness() <= without.outcome.permissiveness());
    }

    #[test]
    fn progress_keeps_to_plan_and_pain(person in any::person(), plan in any::plan(), history in any::history(), more in 0u8..=10) {
        let proposal = propose(&person, Some(&plan), &history);
        prop_assert!(!proposal.reasons.is_empty());
        if proposal.progress == Progress::StepUp {
            let level = plan.current.map(Kilograms::value);
            let step = lifting::progress::step_size(&plan).map(Kilograms::value);
            prop_assert!(level.is_some() && !plan.steps_locked);
            let within = |max: &Kilograms| level.zip(step).is_some_and(|(level, step)| level + step <= max.value());
            prop_assert!(plan.max.iter().chain(plan.max_by_height.values()).all(within));
            prop_assert!(history.flare_today != Some(true), "a flare never steps up");
        }
        let mut worse = history;
        worse.worst_during = history.worst_during.map(|pain| PainScore::of(pain.value() + more));
        let rank = |progress: Progress| match progress { Progress::StepUp => 2, Progress::Hold => 1, Progress::StepDown => 0 };
        prop_assert!(rank(propose(&person, Some(&plan), &worse).progress) <= rank(proposal.progress));
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1_000))]

    #[test]
    fn the_model_orders_and_explains_and_decides_nothing(request in any::request()) {
        let (with, by_rules) = (advise(&request), judge(&request));
        let sorted = |advice: &Advice| {
            let mut ways = advice.outcome.ways();
            ways.sort();
            ways
        };
        prop_assert_eq!(with.outcome.id(), by_rules.outcome.id());
        prop_assert_eq!(sorted(&with), sorted(&by_rules));
        let by_rules_changes = by_rules.outcome.changes();
        prop_assert_eq!(with.outcome.changes().len(), by_rules_changes.len());
        for change in with.outcome.changes() {
            let plain = Change::of(change.steps.clone(), change.ways.clone());
            prop_assert!(by_rules_changes.contains(&plain), "{plain:?}");
        }
        prop_assert_eq!(with.heaviest_today, by_rules.heaviest_today);
        let broken = laws::broken(&request, &with);
        prop_assert!(broken.is_empty(), "{broken:#?}\n{with:#?}");
        for loads in &with.loads {
            prop_assert!(loads.compression.value().is_finite() && loads.energy.value() >= 0.0);
        }
    }
}
