//! What is said with every outcome besides its reasons: cautions, most serious first, and other ways to get it
//! done, in the order in which they are offered.

#![cfg(test)]

use judgement::example::{Example, a_box, kg, pain};
use lifting::advise::advice::{Alternative, Caution};
use lifting::body::{BackState, Balance, Condition, Kneeling, WarningSign};
use lifting::plan::Plan;
use lifting::quantity::Degrees;
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
