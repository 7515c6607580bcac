//! What a plan makes of answers that were not given: an unknown level, and pain that was not asked.

#![cfg(test)]

use judgement::example::{a_box, kg, pain};
use lifting::advise::advice::Caution;
use lifting::body::Region;
use lifting::plan::Plan;
use lifting::reason::{ReasonId, Value};

#[test]
fn a_level_not_known_gives_no_heaviest_load() {
    let plan = Plan {
        max: Some(kg(10.0)),
        ..Plan::blank()
    };
    assert_eq!(a_box(6.0).plan(plan).ask().0.heaviest_today, None);
}

#[test]
fn a_pain_ceiling_holds_for_back_and_knees_that_were_not_asked() {
    let plan = Plan {
        pain_ceiling: Some(pain(6)),
        ..Plan::blank()
    };
    for not_asked in [
        a_box(6.0).person(|person| person.pain.back = None),
        a_box(6.0).person(|person| person.pain.knee_left = None),
        a_box(6.0).person(|person| person.pain.knee_right = None),
    ] {
        let answer = not_asked.plan(plan.clone()).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
    }
}

/// Not asked is over every ceiling that a score can pass, and the words do not make a number up.
#[test]
fn not_asked_is_over_a_high_pain_ceiling_too_and_is_called_not_asked() {
    for ceiling in [0, 6, 7, 8, 9] {
        let plan = Plan {
            pain_ceiling: Some(pain(ceiling)),
            ..Plan::blank()
        };
        let answer = a_box(6.0)
            .person(|person| person.pain.back = None)
            .plan(plan)
            .ask();
        assert_eq!(answer.outcome(), "do_not_lift", "{ceiling}");
        assert!(!answer.says(ReasonId::OverPainCeiling), "{ceiling}");
        assert!(!answer.warns(Caution::OverPainCeiling), "nobody said so");
        assert_eq!(
            answer.value(ReasonId::PainNotAsked, "region"),
            Some(Value::Region(Region::Back))
        );
        assert_eq!(answer.value(ReasonId::PainNotAsked, "pain"), None);
    }
}

/// With a ceiling of 10 every answer passes, so the missing one does too.
#[test]
fn a_ceiling_that_no_score_can_pass_asks_for_nothing() {
    let plan = Plan {
        pain_ceiling: Some(pain(10)),
        ..Plan::blank()
    };
    let answer = a_box(6.0)
        .person(|person| person.pain.back = None)
        .plan(plan)
        .ask();
    assert!(answer.lifts());
}
