//! A mass that nobody has tested. It is judged at its upper bound: over a limit there it is never a plain lift, and
//! its mass is found out first. It is not for today only where even the lower end stands against it. Knowing less
//! never helps.
//!
//! From the floor, close, once, fair grip the printed equation allows 12.418 kg; three times that are 37.254 kg.

#![cfg(test)]

use judgement::any;
use judgement::example::{a_box, kg};
use lifting::advise::change::ChangeStep;
use lifting::advise::{Request, judge};
use lifting::plan::Plan;
use lifting::quantity::Kilograms;
use lifting::reason::{ReasonId, Value};
use lifting::task::LoadMass;
use proptest::prelude::*;

mod over_three_times_the_limit {
    use super::*;

    #[test]
    fn at_the_upper_end_only_the_mass_is_found_out_first() {
        let answer = a_box(0.0).guessed(3.0, 40.0).ask();
        assert_eq!(answer.outcome(), "lift_with_change");
        let up_to = ChangeStep::FindMass {
            go_on_up_to: kg(12.4),
        };
        assert_eq!(answer.change("find_mass"), Some(up_to));
        assert!(answer.says(ReasonId::MassUnknown));
        assert!(!answer.says(ReasonId::IndexOverThree));
        let Some(Value::Ratio(index)) = answer.value(ReasonId::IndexOverOne, "index") else {
            panic!("judged at its upper bound");
        };
        assert!((index - 40.0 / 12.418).abs() < 1e-3);
    }

    #[test]
    fn at_the_lower_end_too_it_is_not_for_today() {
        for high in [Some(kg(60.0)), None] {
            let answer = a_box(0.0)
                .task(|task| {
                    task.mass = LoadMass::Untested {
                        low: Some(kg(37.3)),
                        high,
                    };
                })
                .ask();
            assert_eq!(answer.outcome(), "do_not_lift");
            assert!(answer.says(ReasonId::IndexOverThree));
        }
        let just_below = a_box(0.0).guessed(37.2, 60.0).in_parts().ask();
        assert!(!just_below.says(ReasonId::IndexOverThree));
    }

    #[test]
    fn no_idea_and_a_wide_guess_are_answered_alike() {
        let (no_idea, wide) = (
            a_box(0.0).no_idea_of_the_mass().ask(),
            a_box(0.0).guessed(0.0, 300.0).ask(),
        );
        assert_eq!(no_idea.outcome(), wide.outcome());
        assert_eq!(no_idea.change("find_mass"), wide.change("find_mass"));
    }
}

/// The plan outranks published figures: its ceiling is asked at the upper bound.
#[test]
fn over_a_ceiling_at_the_upper_end_is_not_for_today_guessed_or_not() {
    let plan = Plan {
        max: Some(kg(7.0)),
        ..Plan::blank()
    };
    let up_to = ChangeStep::FindMass {
        go_on_up_to: kg(7.0),
    };
    for example in [
        a_box(0.0).guessed(3.0, 9.0),
        a_box(0.0).guessed(3.0, 40.0),
        a_box(0.0).no_idea_of_the_mass(),
    ] {
        let answer = example.plan(plan.clone()).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert_eq!(answer.change("find_mass"), Some(up_to));
    }
}

fn permissiveness(request: &Request, mass: LoadMass) -> u8 {
    let mut asked = request.clone();
    asked.task.mass = mass;
    judge(&asked).outcome.permissiveness()
}

fn mass() -> impl Strategy<Value = f64> {
    prop_oneof![0.0..3.0f64, 0.0..30.0f64, 0.0..200.0f64]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(3_000))]

    #[test]
    fn a_guess_that_reaches_higher_is_never_more_permissive(
        request in any::request(), low in prop::option::of(mass()), wide in mass(), more in mass(),
    ) {
        let from = low.unwrap_or(0.0);
        let guess = |high: Option<f64>| LoadMass::Untested { low: low.map(kg), high: high.map(kg) };
        let narrow = permissiveness(&request, guess(Some(from + wide)));
        let wider = permissiveness(&request, guess(Some(from + wide + more)));
        let no_upper_end = permissiveness(&request, guess(None));
        prop_assert!(wider <= narrow, "{narrow} then {wider}");
        prop_assert!(no_upper_end <= wider, "{wider} then {no_upper_end}");
    }

    #[test]
    fn a_guess_is_never_more_permissive_than_the_lightest_it_can_be(
        request in any::request(), low in prop::option::of(mass()), wide in prop::option::of(mass()),
    ) {
        let from = low.unwrap_or(0.0);
        let guess = LoadMass::Untested { low: low.map(kg), high: wide.map(|wide| kg(from + wide)) };
        let known = permissiveness(&request, LoadMass::Known(kg(from)));
        prop_assert!(permissiveness(&request, guess) <= known);
    }

    #[test]
    fn a_guess_is_a_plain_lift_only_where_its_upper_end_would_be(
        request in any::request(), low in mass(), wide in mass(),
    ) {
        let high = kg(low + wide);
        let guess = LoadMass::Untested { low: Some(kg(low)), high: Some(high) };
        let known = permissiveness(&request, LoadMass::Known(high));
        prop_assert!(permissiveness(&request, guess) < 3 || known == 3);
        let none = LoadMass::Untested { low: Some(kg(low)), high: None };
        prop_assert!(permissiveness(&request, none) < 3, "no upper end is never a plain lift");
    }

    #[test]
    fn a_heavier_lower_end_is_never_more_permissive(
        request in any::request(), low in mass(), more in mass(), wide in mass(),
    ) {
        let high = Some(kg(low + more + wide));
        let guess = |low: f64| LoadMass::Untested { low: Some(kg(low)), high };
        let (lighter, heavier) = (permissiveness(&request, guess(low)), permissiveness(&request, guess(low + more)));
        prop_assert!(heavier <= lighter);
        let nothing: Option<Kilograms> = None;
        let no_lower_end = permissiveness(&request, LoadMass::Untested { low: nothing, high });
        prop_assert!(lighter <= no_lower_end);
    }
}
