//! The table of trade practice (common practice, no source), second half: the two ways for something
//! light, what a severe hip bars, and what is high enough to need no low way. Light is up to 2.3 kg (5 lb).

#![cfg(test)]

use judgement::example::{Example, a_box};
use lifting::advise::advice::Caution;
use lifting::body::{BackState, Balance, Kneeling, Region};
use lifting::reason::{ReasonId, Value};
use lifting::task::HeightWord;
use lifting::way::Way;

/// Fifty apples off the grass.
fn fifty_apples() -> Example {
    a_box(0.2).times(50).within_min(45.0)
}

mod free_bend {
    use super::*;

    #[test]
    fn suits_once_or_twice_with_a_trifle() {
        for times in [1, 2] {
            let answer = a_box(2.3).times(times).balance(Balance::Fair).ask();
            assert_eq!(answer.first(), Some(Way::FreeBend), "{times} times");
            assert!(answer.says(ReasonId::FreeBendLight));
        }
    }

    #[test]
    fn suits_severe_knees() {
        let answer = a_box(0.1).knees(8, 8).balance(Balance::Fair).ask();
        assert!(matches!(
            answer.first(),
            Some(Way::FreeBend | Way::HipHinge)
        ));
        assert!(answer.offers(Way::FreeBend));
    }

    #[test]
    fn not_with_a_severe_volatile_or_flaring_back_not_even_for_a_sock() {
        for (answer, because) in [
            (a_box(0.1).back(7).ask(), ReasonId::BackSevere),
            (
                a_box(0.1).back_state(BackState::Volatile).ask(),
                ReasonId::BackVolatile,
            ),
            (
                a_box(0.1).back_state(BackState::Flare).ask(),
                ReasonId::BackFlare,
            ),
        ] {
            assert!(!answer.offers(Way::FreeBend));
            assert_eq!(answer.why_not(Way::FreeBend), [because]);
        }
    }

    #[test]
    fn a_sore_back_prefers_a_way_that_keeps_it_long() {
        let answer = a_box(0.1).back(5).balance(Balance::Fair).ask();
        assert!(
            answer.offers(Way::FreeBend),
            "moderate does not rule it out"
        );
        assert_ne!(answer.first(), Some(Way::FreeBend));
    }

    #[test]
    fn not_for_anything_heavier() {
        let answer = a_box(2.301).ask();
        assert!(!answer.offers(Way::FreeBend));
        assert_eq!(answer.why_not(Way::FreeBend), [ReasonId::OverLight]);
    }

    #[test]
    fn not_a_third_time_however_long_between() {
        for answer in [
            a_box(0.1).times(3).ask(),
            a_box(0.1).times(3).within_min(600.0).ask(),
        ] {
            assert!(!answer.ways().contains(&Way::FreeBend));
            assert_eq!(answer.why_not(Way::FreeBend), [ReasonId::MoreThanTwice]);
        }
    }
}

mod golfers_lift {
    use super::*;

    #[test]
    fn suits_something_light_and_eases_knee_and_back() {
        assert!(a_box(2.3).ask().says(ReasonId::GolferLight));
        assert!(a_box(0.3).knees(8, 8).ask().offers(Way::GolfersLift));
        let flare = a_box(0.1).back(9).back_state(BackState::Flare).ask();
        assert!(flare.offers(Way::GolfersLift));
    }

    #[test]
    fn suits_long_runs_of_light_lifts() {
        let answer = fifty_apples().knees(8, 8).ask();
        assert!(matches!(
            answer.first(),
            Some(Way::GolfersLift | Way::HipHinge)
        ));
        assert!(answer.offers(Way::GolfersLift));
        assert!(answer.says(ReasonId::GolferLongRun));
    }

    #[test]
    fn always_with_a_hand_on_something() {
        for answer in [
            a_box(0.3).ask(),
            a_box(0.3).back(9).ask(),
            fifty_apples().ask(),
        ] {
            assert!(answer.offers(Way::GolfersLift));
            assert!(answer.warns(Caution::HoldSupport));
        }
    }

    #[test]
    fn not_with_unsteady_balance() {
        for balance in [Balance::Fair, Balance::Poor] {
            let answer = a_box(0.3).balance(balance).ask();
            assert!(!answer.offers(Way::GolfersLift));
            assert_eq!(answer.why_not(Way::GolfersLift), [ReasonId::BalanceNotGood]);
            assert!(answer.warns(Caution::NoSingleLeg));
        }
        let fell = a_box(0.3)
            .person(|person| person.fell_last_year = Some(true))
            .ask();
        assert_eq!(fell.why_not(Way::GolfersLift), [ReasonId::FellLastYear]);
    }

    #[test]
    fn not_when_it_takes_two_hands() {
        let answer = a_box(0.3).task(|task| task.two_hands = Some(true)).ask();
        assert_eq!(answer.why_not(Way::GolfersLift), [ReasonId::NeedsTwoHands]);
        let one_hand = a_box(0.3)
            .hard_to_hold()
            .task(|task| task.two_hands = Some(false))
            .ask();
        assert!(one_hand.offers(Way::GolfersLift), "an answer wins");
    }

    #[test]
    fn not_over_a_trifle() {
        let answer = a_box(2.301).ask();
        assert!(!answer.offers(Way::GolfersLift));
        assert_eq!(answer.why_not(Way::GolfersLift), [ReasonId::OverLight]);
    }

    #[test]
    fn stands_on_the_leg_whose_hip_does_not_hurt() {
        let on = |left, right| a_box(0.3).hips(left, right).ask();
        let stand_on = |region| Some(Value::Region(region));
        assert_eq!(
            on(7, 0).value(ReasonId::StandOn, "region"),
            stand_on(Region::HipRight)
        );
        assert_eq!(
            on(0, 7).value(ReasonId::StandOn, "region"),
            stand_on(Region::HipLeft)
        );
        assert_eq!(on(6, 0).value(ReasonId::StandOn, "region"), None);
        assert_eq!(
            on(7, 7).why_not(Way::GolfersLift),
            [ReasonId::NoHipToStandOn]
        );
    }
}

mod severe_hip {
    use super::*;

    #[test]
    fn deep_hip_folds_are_not_put_first() {
        for (left, right) in [(7, 0), (0, 7)] {
            let light = a_box(0.1).hips(left, right).balance(Balance::Fair).ask();
            assert!(!matches!(
                light.first(),
                Some(Way::HipHinge | Way::FreeBend)
            ));
            let heavy = a_box(12.0).hips(left, right).ask();
            assert_ne!(heavy.first(), Some(Way::HipHinge));
            assert!(heavy.offers(Way::HipHinge), "not first, and not ruled out");
            assert!(heavy.says(ReasonId::HipSevere));
        }
    }

    #[test]
    fn only_deep_hip_folds_left_means_not_as_it_stands() {
        let answer = a_box(6.0).hips(8, 0).knees(8, 8).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert!(answer.says(ReasonId::OnlySecondBestLeft));
        assert!(
            answer.says(ReasonId::HipSevere),
            "and why they do not come first"
        );
    }
}

mod upright {
    use super::*;

    #[test]
    fn at_the_waist_no_low_way_is_needed_and_their_rules_do_not_apply() {
        let answer = a_box(6.0)
            .from(HeightWord::Waist)
            .back(9)
            .back_state(BackState::Flare)
            .knees(9, 9)
            .hips(9, 9)
            .kneels(Kneeling::No)
            .times(50)
            .within_min(60.0)
            .ask();
        assert_eq!(answer.ways(), [Way::Upright]);
        assert!(answer.says(ReasonId::NoLowWayNeeded));
    }

    #[test]
    fn what_is_put_down_low_needs_a_low_way() {
        let answer = a_box(6.0).from(HeightWord::Waist).to_cm(20.0).ask();
        assert!(!answer.ways().is_empty());
        assert!(!answer.offers(Way::Upright));
    }
}
