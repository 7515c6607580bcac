//! Step 7, and what is said with every outcome: reasons in order of the steps, what the equation does not
//! cover, cautions, other ways to get it done, and how soon somebody should hear of it.

#![cfg(test)]

use judgement::example::{Example, a_box, kg, pain};
use lifting::advise::advice::{Alternative, Caution, Urgency};
use lifting::body::{BackState, Balance, Condition, Kneeling, WarningSign};
use lifting::plan::Plan;
use lifting::quantity::Degrees;
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

mod cautions {
    use super::*;

    #[test]
    fn most_serious_first() {
        for example in examples() {
            assert!(example.ask().0.cautions.is_sorted());
        }
    }

    #[test]
    fn keep_close_with_every_lift() {
        for example in [
            a_box(0.1),
            a_box(6.0),
            a_box(14.0),
            a_box(6.0).from(HeightWord::Waist),
        ] {
            assert!(example.ask().warns(Caution::KeepClose));
        }
    }

    #[test]
    fn no_twist_with_a_sore_back_or_a_twisted_task() {
        assert!(!a_box(6.0).back(3).ask().warns(Caution::NoTwist));
        assert!(a_box(6.0).back(4).ask().warns(Caution::NoTwist));
        let twisted = a_box(6.0).task(|task| task.twist = Some(Degrees::clamped(20.0)));
        assert!(twisted.ask().warns(Caution::NoTwist));
        let straight = a_box(6.0).task(|task| task.twist = Some(Degrees::clamped(0.0)));
        assert!(!straight.ask().warns(Caution::NoTwist));
    }

    #[test]
    fn an_aid_or_help_first_when_it_hurts_a_lot_or_is_hard_to_hold() {
        let aid = |example: Example| example.ask().warns(Caution::AidOrHelpFirst);
        assert!(!aid(a_box(6.0).back(6).knees(6, 6).hips(6, 6)));
        assert!(aid(a_box(6.0).back(7)));
        assert!(aid(a_box(6.0).knees(7, 0)));
        assert!(aid(a_box(6.0).knees(0, 7)));
        assert!(aid(a_box(6.0).hips(7, 0)));
        assert!(aid(a_box(6.0).hips(0, 7)));
        assert!(aid(a_box(6.0).back_state(BackState::Volatile)));
        assert!(aid(a_box(6.0).hard_to_hold()));
        assert!(!aid(a_box(2.0).hard_to_hold()), "a pillow");
    }

    #[test]
    fn no_single_leg_and_a_hand_on_something_when_balance_is_not_good() {
        let fair = a_box(6.0).balance(Balance::Fair).ask();
        assert!(fair.warns(Caution::NoSingleLeg) && !fair.warns(Caution::HoldSupport));
        let poor = a_box(6.0).balance(Balance::Poor).ask();
        assert!(poor.warns(Caution::NoSingleLeg) && poor.warns(Caution::HoldSupport));
        let waist = a_box(6.0)
            .from(HeightWord::Waist)
            .balance(Balance::Fair)
            .ask();
        assert!(!waist.warns(Caution::NoSingleLeg), "nobody would");
        assert!(!a_box(6.0).ask().warns(Caution::NoSingleLeg));
        assert!(!a_box(6.0).ask().warns(Caution::HoldSupport));
    }

    #[test]
    fn two_manage_two_thirds_when_somebody_is_there() {
        assert!(
            a_box(6.0)
                .helper(Some(20.0))
                .ask()
                .warns(Caution::TeamTwoThirds)
        );
        assert!(
            !a_box(2.0)
                .helper(Some(20.0))
                .ask()
                .warns(Caution::TeamTwoThirds)
        );
        assert!(!a_box(6.0).ask().warns(Caution::TeamTwoThirds));
    }

    #[test]
    fn nothing_is_over_a_ceiling_that_is_kept_or_not_set() {
        let kept = Plan {
            pain_ceiling: Some(pain(5)),
            ..max(7.0)
        };
        for answer in [a_box(6.0).ask(), a_box(6.0).back(4).plan(kept).ask()] {
            assert!(!answer.warns(Caution::OverPlanCeiling));
            assert!(!answer.warns(Caution::OverPainCeiling));
        }
    }

    #[test]
    fn a_mass_nobody_knows_is_tested_first() {
        assert!(!a_box(6.0).ask().warns(Caution::WeightUnknownTest));
    }
}

mod alternatives {
    use super::*;

    #[test]
    fn stand_in_the_order_in_which_they_are_offered() {
        for example in examples() {
            assert!(example.ask().0.alternatives.is_sorted());
        }
    }

    #[test]
    fn whenever_it_is_not_a_plain_lift() {
        for example in examples() {
            let answer = example.ask();
            if !answer.lifts() {
                assert!(
                    answer.suggests(Alternative::LeaveIt),
                    "{}",
                    answer.outcome()
                );
            }
        }
    }

    #[test]
    fn none_with_an_ordinary_lift() {
        assert!(a_box(6.0).ask().0.alternatives.is_empty());
    }

    #[test]
    fn with_a_lift_that_asks_for_an_aid_or_goes_on_and_on() {
        let heavy = a_box(9.0).ask();
        assert!(heavy.lifts() && heavy.suggests(Alternative::Trolley));
        let run = a_box(0.2).times(50).ask();
        assert!(run.lifts() && run.suggests(Alternative::SpreadOverDays));
    }

    #[test]
    fn for_something_light_a_grabber_or_a_long_handle() {
        let light = a_box(0.2).times(50).ask();
        assert!(light.suggests(Alternative::Reacher) && light.suggests(Alternative::LongToolOrSit));
        assert!(!light.suggests(Alternative::Trolley) && !light.suggests(Alternative::SplitLoad));
        let waist = a_box(0.2).from(HeightWord::Waist).times(50).ask();
        assert!(!waist.suggests(Alternative::Reacher) && !waist.suggests(Alternative::RaiseStart));
    }

    #[test]
    fn for_something_heavy_wheels_sliding_or_parts() {
        let heavy = a_box(14.0).ask();
        for other in [
            Alternative::SlideOrRoll,
            Alternative::Trolley,
            Alternative::SplitLoad,
            Alternative::RaiseStart,
        ] {
            assert!(heavy.suggests(other), "{}", other.id());
        }
        assert!(!heavy.suggests(Alternative::Reacher));
        assert!(!heavy.suggests(Alternative::SpreadOverDays));
        let whole = a_box(14.0).task(|task| task.divisible = Some(false)).ask();
        assert!(!whole.suggests(Alternative::SplitLoad));
    }

    #[test]
    fn what_stands_high_already_is_not_raised() {
        let down = a_box(14.0).from(HeightWord::Waist).to_cm(0.0).ask();
        assert!(!down.suggests(Alternative::RaiseStart));
    }

    #[test]
    fn two_together_when_somebody_is_there() {
        assert!(
            a_box(14.0)
                .helper(Some(20.0))
                .ask()
                .suggests(Alternative::TwoPerson)
        );
        assert!(!a_box(14.0).ask().suggests(Alternative::TwoPerson));
        assert!(
            !a_box(2.0)
                .hard_to_hold()
                .times(50)
                .helper(Some(20.0))
                .ask()
                .suggests(Alternative::TwoPerson)
        );
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
