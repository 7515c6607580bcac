//! Step 7, and what is said with every outcome: reasons in order of the steps, what the equation does not
//! cover, and how soon somebody should hear of it. Cautions and alternatives have a file of their own.

#![cfg(test)]

use judgement::example::{Example, a_box, kg, pain};
use lifting::advise::advice::{Caution, Urgency};
use lifting::body::{BackState, Balance, Condition, Kneeling, WarningSign};
use lifting::plan::Plan;
use lifting::reason::{ReasonId, Value};
use lifting::task::HeightWord;
use lifting::way::Way;

fn max(mass: f64) -> Plan {
    Plan {
        max: Some(kg(mass)),
        ..Plan::blank()
    }
}

/// One for each outcome and many a reason.
fn examples() -> Vec<Example> {
    vec![
        a_box(6.0),
        a_box(0.1).back(9).back_state(BackState::Flare),
        a_box(12.0)
            .knees(8, 5)
            .hips(8, 2)
            .balance(Balance::Poor)
            .plan(max(15.0)),
        a_box(14.0)
            .hard_to_hold()
            .carried_m(20.0)
            .has(Condition::HipOsteoarthritis),
        a_box(40.0).in_parts().back(8).plan(max(7.0)),
        a_box(3.0)
            .from(HeightWord::Overhead)
            .balance(Balance::Poor)
            .shoulders(9),
        a_box(6.0).has(Condition::Pregnant).kneels(Kneeling::No),
        a_box(0.0)
            .no_idea_of_the_mass()
            .times(30)
            .recently(Way::HipHinge, 9),
        a_box(1.0).sign(WarningSign::PostOpRecent),
        a_box(1.0)
            .sign(WarningSign::SaddleNumb)
            .sign(WarningSign::NightPain),
    ]
}

mod reasons {
    use super::*;

    #[test]
    fn stand_in_order_of_the_steps_and_within_a_step_by_authority() {
        for example in examples() {
            let reasons = example.ask().0.reasons;
            let order: Vec<_> = reasons
                .iter()
                .map(|reason| (reason.id.step(), reason.id.authority()))
                .collect();
            assert!(order.is_sorted(), "{order:?}");
            assert!(!reasons.is_empty());
        }
    }

    #[test]
    fn are_told_once() {
        for example in examples() {
            let reasons = example.ask().0.reasons;
            for (at, reason) in reasons.iter().enumerate() {
                assert!(!reasons[..at].contains(reason), "{}", reason.id.id());
            }
        }
    }

    #[test]
    fn every_way_ruled_out_is_explained_among_them() {
        for example in examples() {
            let answer = example.ask();
            for out in &answer.0.ruled_out {
                assert!(
                    out.because.iter().all(|id| answer.says(*id)),
                    "{}",
                    out.way.id()
                );
            }
        }
    }

    #[test]
    fn no_way_left_is_told() {
        let answer = a_box(6.0).back(8).knees(8, 8).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert!(answer.says(ReasonId::NoWayLeft));
        assert!(!answer.says(ReasonId::OnlySecondBestLeft));
    }

    /// Why the ways that are left may not come first: a long run, or a severe hip, which says nothing of a number.
    #[test]
    fn ways_left_that_may_not_come_first_say_why() {
        let plan = |ways: &[Way]| Plan {
            allowed: Some(ways.iter().copied().collect()),
            ..Plan::blank()
        };
        let why = |example: Example| example.ask().value(ReasonId::OnlySecondBestLeft, "what");
        let run = a_box(1.0).times(40).plan(plan(&[Way::Squat]));
        assert_eq!(why(run), Some(Value::Id("long_run")));
        let hip = a_box(6.0).hips(8, 0).plan(plan(&[Way::HipHinge]));
        assert_eq!(why(hip), Some(Value::Id("hip")));
        let both = a_box(1.0)
            .hips(8, 0)
            .times(40)
            .plan(plan(&[Way::HipHinge, Way::Squat]));
        assert_eq!(why(both), None);
    }

    #[test]
    fn of_a_way_that_is_not_offered_none_speaks_for_it() {
        let answer = a_box(6.0).back(8).ask();
        assert!(!answer.says(ReasonId::HingeMovesMost));
        assert!(!answer.says(ReasonId::GolferLight));
    }

    #[test]
    fn hips_are_not_asked_after_where_they_do_not_matter() {
        let no_hips = |example: Example| {
            example.person(|person| {
                person.pain.hip_left = None;
                person.pain.hip_right = None;
            })
        };
        assert!(
            !no_hips(a_box(6.0).from(HeightWord::Waist))
                .ask()
                .says(ReasonId::HipNotAsked)
        );
    }
}

mod not_covered {
    use super::*;

    fn told(example: &Example) -> Vec<Value> {
        let answer = example.ask();
        assert!(answer.0.limit.is_some(), "the standing figure is shown");
        let of = answer
            .0
            .reasons
            .iter()
            .filter(|reason| reason.id == ReasonId::NotCovered);
        of.flat_map(|reason| reason.values.iter().map(|(_, value)| *value))
            .collect()
    }

    #[test]
    fn kneeling_and_one_hand_are_not_covered_by_the_equation() {
        assert_eq!(
            told(&a_box(0.1)),
            [Value::Id("kneeling"), Value::Id("one_hand")]
        );
        assert_eq!(told(&a_box(6.0)), [Value::Id("kneeling")]);
        assert_eq!(
            told(&a_box(0.1).kneels(Kneeling::No)),
            [Value::Id("one_hand")]
        );
    }

    #[test]
    fn two_hands_standing_are_covered() {
        assert!(told(&a_box(6.0).kneels(Kneeling::No)).is_empty());
        assert!(told(&a_box(6.0).from(HeightWord::Waist)).is_empty());
    }

    /// From the floor, close, once, fair grip the standing figure is 12.418 kg.
    #[test]
    fn kneeling_is_never_allowed_more_than_standing() {
        let plan = Plan {
            allowed: Some([Way::HalfKneelingLunge].into()),
            ..Plan::blank()
        };
        assert!(a_box(12.4).plan(plan.clone()).ask().lifts());
        assert!(!a_box(12.5).plan(plan).ask().lifts());
    }
}

mod outcome {
    use super::*;

    #[test]
    fn only_a_lift_or_a_lift_once_changed_offers_ways() {
        for example in examples() {
            let answer = example.ask();
            let offers = matches!(answer.outcome(), "lift" | "lift_with_change");
            assert_eq!(offers, !answer.ways().is_empty(), "{}", answer.outcome());
            assert_eq!(
                answer.outcome() == "lift_with_change",
                offers && !answer.changes().is_empty()
            );
        }
    }

    #[test]
    fn over_a_ceiling_with_ways_left_does_not_say_that_none_is() {
        let answer = a_box(12.0).hips(8, 0).plan(max(7.0)).ask();
        assert!(answer.says(ReasonId::OverPlanCeiling));
        for id in [
            ReasonId::NoWayLeft,
            ReasonId::OnlySecondBestLeft,
            ReasonId::HipSevere,
        ] {
            assert!(!answer.says(id), "{}", id.id());
        }
    }

    #[test]
    fn they_are_ordered_from_no_advice_to_a_plain_lift() {
        let ordered = [
            (a_box(1.0).sign(WarningSign::NightPain), "seek_care", 0),
            (a_box(1.0).sign(WarningSign::PostOpRecent), "refuse", 0),
            (a_box(12.0).plan(max(7.0)), "do_not_lift", 1),
            (a_box(13.0), "lift_with_change", 2),
            (a_box(6.0), "lift", 3),
        ];
        for (example, outcome, permissiveness) in ordered {
            let answer = example.ask();
            assert_eq!(answer.outcome(), outcome);
            assert_eq!(answer.0.outcome.permissiveness(), permissiveness);
        }
    }

    #[test]
    fn nobody_has_to_be_told_of_an_ordinary_answer() {
        for example in [a_box(6.0), a_box(14.0), a_box(40.0).in_parts()] {
            assert_eq!(example.ask().0.outcome.urgency(), Urgency::None);
        }
    }

    #[test]
    fn a_flare_with_no_pain_is_judged_as_severe_and_never_refused() {
        let answer = a_box(6.0).back(0).back_state(BackState::Flare).ask();
        assert!(answer.lifts());
        assert!(!answer.offers(Way::HipHinge) && !answer.offers(Way::FreeBend));
        assert!(answer.warns(Caution::AidOrHelpFirst));
    }

    #[test]
    fn the_same_question_gets_the_same_answer() {
        for example in examples() {
            assert_eq!(example.ask(), example.ask());
        }
    }

    #[test]
    fn a_plan_alone_may_leave_no_way_and_then_it_says_so() {
        let plan = Plan {
            pain_ceiling: Some(pain(4)),
            allowed: Some([Way::FreeBend].into()),
            ..Plan::blank()
        };
        let answer = a_box(6.0).plan(plan).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert!(answer.says(ReasonId::NoWayLeft) && answer.says(ReasonId::PlanNotListed));
    }
}
