//! The table of trade practice (common practice, no source), row by row: what each way suits, and when not
//! to use it. The two ways for something light are in `trade_rules_light.rs`.
//!
//! Light is up to 2.3 kg (5 lb); a long run is more than 10 bends in an hour (house rule).

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

mod hinge {
    use super::*;

    #[test]
    fn suits_sore_knees_above_all_when_deep_knee_bend_hurts() {
        for (left, right) in [(5, 0), (0, 5), (6, 9), (8, 8)] {
            let answer = a_box(12.0).knees(left, right).kneels(Kneeling::No).ask();
            assert_eq!(answer.first(), Some(Way::HipHinge), "{left} {right}");
            assert!(answer.says(ReasonId::HingeEasesKnee));
        }
    }

    #[test]
    fn suits_the_most_weight() {
        assert!(a_box(10.0).ask().says(ReasonId::HingeMovesMost));
        assert!(
            !a_box(9.9).ask().says(ReasonId::HingeMovesMost),
            "10 kg is heavy, house rule"
        );
    }

    #[test]
    fn suits_long_runs_of_light_lifts() {
        let answer = fifty_apples().ask();
        assert!(answer.offers(Way::HipHinge));
        assert!(answer.says(ReasonId::HingeLongRun));
        let alone = fifty_apples().balance(Balance::Fair).ask();
        assert_eq!(alone.first(), Some(Way::HipHinge), "not on one leg");
    }

    #[test]
    fn serves_up_to_moderate_back_pain() {
        for back in 0..=6 {
            assert!(a_box(6.0).back(back).ask().offers(Way::HipHinge), "{back}");
        }
    }

    #[test]
    fn not_with_severe_back_pain() {
        for back in 7..=10 {
            let answer = a_box(6.0).back(back).ask();
            assert!(!answer.offers(Way::HipHinge));
            assert_eq!(answer.why_not(Way::HipHinge), [ReasonId::BackSevere]);
        }
    }

    #[test]
    fn not_with_a_back_that_catches_or_is_in_a_flare_whatever_the_number() {
        for back in [0, 3, 6] {
            let catches = a_box(6.0).back(back).back_state(BackState::Volatile).ask();
            assert_eq!(catches.why_not(Way::HipHinge), [ReasonId::BackVolatile]);
            let flare = a_box(6.0).back(back).back_state(BackState::Flare).ask();
            assert_eq!(flare.why_not(Way::HipHinge), [ReasonId::BackFlare]);
        }
    }
}

mod squat {
    use super::*;

    #[test]
    fn suits_a_severe_or_easily_provoked_back() {
        for answer in [
            a_box(6.0).back(8).ask(),
            a_box(6.0).back_state(BackState::Volatile).ask(),
            a_box(6.0).back_state(BackState::Flare).ask(),
        ] {
            assert_eq!(answer.first(), Some(Way::Squat));
            assert!(answer.says(ReasonId::SquatForBack));
        }
        assert!(!a_box(6.0).back(6).ask().says(ReasonId::SquatForBack));
    }

    #[test]
    fn suits_more_than_a_trifle_a_few_times() {
        let answer = a_box(6.0).times(2).ask();
        assert_eq!(answer.first(), Some(Way::Squat));
        assert!(answer.says(ReasonId::SquatFewLifts));
        assert!(!a_box(2.3).ask().says(ReasonId::SquatFewLifts), "a trifle");
        assert!(
            !a_box(6.0).times(11).ask().says(ReasonId::SquatFewLifts),
            "a long run"
        );
    }

    #[test]
    fn not_with_a_severe_knee_on_either_side() {
        for (left, right) in [(7, 0), (0, 7), (8, 8)] {
            let answer = a_box(6.0).knees(left, right).ask();
            assert!(!answer.offers(Way::Squat));
            assert!(answer.why_not(Way::Squat).contains(&ReasonId::KneeSevere));
        }
        assert!(a_box(6.0).knees(6, 6).ask().offers(Way::Squat));
    }

    #[test]
    fn is_not_put_first_when_a_knee_is_sore() {
        for answer in [a_box(6.0).knees(4, 0).ask(), a_box(6.0).knees(0, 4).ask()] {
            assert_ne!(answer.first(), Some(Way::Squat));
        }
        assert_eq!(
            a_box(6.0).knees(3, 3).ask().first(),
            Some(Way::Squat),
            "mild"
        );
    }

    #[test]
    fn never_first_in_a_long_run() {
        assert_ne!(fifty_apples().back(8).ask().first(), Some(Way::Squat));
        assert_ne!(a_box(6.0).times(11).ask().first(), Some(Way::Squat));
        assert_eq!(
            a_box(6.0).times(10).ask().first(),
            Some(Way::Squat),
            "not yet long"
        );
    }
}

mod half_kneeling_lunge {
    use super::*;

    #[test]
    fn suits_a_mass_that_is_not_known() {
        let answer = a_box(0.0).guessed(7.0, 20.0).ask();
        assert_eq!(answer.first(), Some(Way::HalfKneelingLunge));
        assert!(answer.says(ReasonId::LungeToTest));
        assert!(!a_box(12.0).ask().says(ReasonId::LungeToTest), "known");
    }

    #[test]
    fn suits_what_is_awkward_to_get_arms_round() {
        let answer = a_box(6.0).hard_to_hold().ask();
        assert_eq!(answer.first(), Some(Way::HalfKneelingLunge));
        assert!(answer.says(ReasonId::LungeToHug));
        assert!(!a_box(6.0).ask().says(ReasonId::LungeToHug), "easy to hold");
    }

    #[test]
    fn with_heavy_loads_both_trade_and_studies_are_told() {
        let answer = a_box(12.0).ask();
        assert!(answer.offers(Way::HalfKneelingLunge));
        assert!(answer.says(ReasonId::LungeStudiesDiffer));
        assert!(answer.warns(Caution::AidOrHelpFirst), "aid or help first");
    }

    #[test]
    fn suits_a_severe_back() {
        let answer = a_box(6.0).back(8).ask();
        assert!(answer.offers(Way::HalfKneelingLunge));
        assert!(answer.says(ReasonId::LungeForBack));
        let sore_knee_too = a_box(6.0).back(8).knees(0, 8).ask();
        assert_eq!(sore_knee_too.first(), Some(Way::HalfKneelingLunge));
    }

    #[test]
    fn never_first_in_a_long_run() {
        let answer = fifty_apples().back(8).balance(Balance::Fair).ask();
        assert_ne!(answer.first(), Some(Way::HalfKneelingLunge));
    }

    #[test]
    fn not_when_kneeling_is_impossible_or_ruled_out() {
        let cannot = a_box(6.0).kneels(Kneeling::No).ask();
        assert!(!cannot.offers(Way::HalfKneelingLunge));
        assert_eq!(
            cannot.why_not(Way::HalfKneelingLunge),
            [ReasonId::CannotKneel]
        );
        let one_side = a_box(6.0).kneels(Kneeling::OneSide).ask();
        assert!(one_side.offers(Way::HalfKneelingLunge));
    }

    #[test]
    fn not_on_two_severe_knees() {
        let answer = a_box(6.0).knees(7, 7).ask();
        assert_eq!(
            answer.why_not(Way::HalfKneelingLunge),
            [ReasonId::NoKneeToKneelOn]
        );
    }

    /// "On one side" does not say which: with one severe knee it could be that one.
    #[test]
    fn not_when_the_only_side_that_kneels_may_be_the_severe_one() {
        for (left, right) in [(8, 0), (0, 8), (9, 6)] {
            let answer = a_box(6.0)
                .knees(left, right)
                .kneels(Kneeling::OneSide)
                .ask();
            assert!(!answer.offers(Way::HalfKneelingLunge));
            assert_eq!(
                answer.why_not(Way::HalfKneelingLunge),
                [ReasonId::KneelSideNotKnown]
            );
        }
        let not_asked = a_box(6.0)
            .kneels(Kneeling::OneSide)
            .person(|person| person.pain.knee_left = None)
            .ask();
        assert!(!not_asked.offers(Way::HalfKneelingLunge));
    }

    #[test]
    fn names_no_knee_where_only_one_side_kneels() {
        let answer = a_box(6.0).knees(2, 5).kneels(Kneeling::OneSide).ask();
        assert!(answer.offers(Way::HalfKneelingLunge));
        assert!(!answer.says(ReasonId::KneelOn), "the person knows the side");
    }

    #[test]
    fn kneels_on_the_better_knee() {
        let on = |left, right| {
            a_box(6.0)
                .knees(left, right)
                .ask()
                .value(ReasonId::KneelOn, "region")
        };
        assert_eq!(on(8, 0), Some(Value::Region(Region::KneeRight)));
        assert_eq!(on(0, 8), Some(Value::Region(Region::KneeLeft)));
        assert_eq!(on(2, 5), Some(Value::Region(Region::KneeLeft)));
        assert_eq!(on(3, 3), None, "either");
    }

    #[test]
    fn not_for_what_is_too_high_for_somebody_kneeling() {
        let knee_height = a_box(6.0).from(HeightWord::Knee).ask();
        assert!(knee_height.offers(Way::HalfKneelingLunge));
        let higher = a_box(6.0).from_cm(60.0).ask();
        assert_eq!(
            higher.why_not(Way::HalfKneelingLunge),
            [ReasonId::TooHighToKneel]
        );
    }
}
