//! For any request: an answer left out gives the outcome and the ways of its careful value, and the guideline
//! weights alone never change either.

#![cfg(test)]

use judgement::any;
use lifting::advise::advice::Advice;
use lifting::advise::{Request, judge};
use lifting::body::{BackState, Balance, Kneeling, Person, Sex};
use lifting::quantity::{Kilograms, PainScore};
use lifting::way::Way;
use proptest::prelude::*;

/// What is advised, without the reasons for it.
fn core(advice: &Advice) -> (&'static str, Vec<Way>, Vec<Way>, Option<Kilograms>) {
    let changed = advice
        .outcome
        .changes()
        .iter()
        .flat_map(|change| change.ways.iter());
    (
        advice.outcome.id(),
        advice.outcome.ways(),
        changed.collect(),
        advice.heaviest_today,
    )
}

fn alike(
    request: &Request,
    left_out: impl Fn(&mut Person),
    careful: impl Fn(&mut Person),
) -> Result<(), TestCaseError> {
    let (mut one, mut other) = (request.clone(), request.clone());
    left_out(&mut one.person);
    careful(&mut other.person);
    prop_assert_eq!(core(&judge(&one)), core(&judge(&other)));
    Ok(())
}

/// Any request without a plan's pain ceiling, which is not about bands.
fn any_request() -> impl Strategy<Value = Request> {
    any::request().prop_map(|mut request| {
        if let Some(plan) = request.plan.as_mut() {
            plan.pain_ceiling = None;
        }
        request
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn back_pain_left_out_is_severe(request in any_request()) {
        alike(&request, |person| person.pain.back = None, |person| {
            person.back_state = person.back_state.or(Some(BackState::Volatile));
            person.pain.back = Some(PainScore::of(7));
        })?;
    }

    #[test]
    fn a_knee_left_out_is_severe(request in any_request()) {
        let severe = Some(PainScore::of(7));
        alike(&request, |person| person.pain.knee_left = None, |person| person.pain.knee_left = severe)?;
        alike(&request, |person| person.pain.knee_right = None, |person| person.pain.knee_right = severe)?;
    }

    #[test]
    fn hips_and_shoulders_left_out_do_not_limit(request in any_request()) {
        let none = Some(PainScore::NONE);
        alike(&request, |person| person.pain.hip_left = None, |person| person.pain.hip_left = none)?;
        alike(&request, |person| person.pain.hip_right = None, |person| person.pain.hip_right = none)?;
        alike(&request, |person| person.pain.shoulders = None, |person| person.pain.shoulders = none)?;
    }

    #[test]
    fn balance_left_out_is_poor_and_kneeling_left_out_is_no(request in any_request()) {
        alike(&request, |person| person.balance = None, |person| person.balance = Some(Balance::Poor))?;
        alike(&request, |person| person.can_kneel = None, |person| person.can_kneel = Some(Kneeling::No))?;
    }

    #[test]
    fn the_guideline_weights_alone_change_nothing_that_is_advised(request in any::request()) {
        alike(&request, |person| person.sex = Some(Sex::Female), |person| person.sex = Some(Sex::Male))?;
        alike(&request, |person| person.sex = None, |person| person.sex = Some(Sex::Female))?;
    }
}
