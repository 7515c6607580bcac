//! What is not asked is never zero and never "no": each answer left out, and what it is taken as. House
//! rules unless a source is named. Answers in words are in `words_and_measures.rs`.

#![cfg(test)]

use judgement::example::{Example, a_box, kg};
use lifting::advise::advice::{Alternative, Caution};
use lifting::advise::change::ChangeStep;
use lifting::body::{Balance, Condition, Kneeling, Region, Sex};
use lifting::quantity::Repetitions;
use lifting::reason::{ReasonId, Value};
use lifting::task::HeightWord;
use lifting::way::Way;
use serde_json::{Value as Json, json};

fn door(command: &Json) -> Json {
    serde_json::from_str(&door::answer(&command.to_string()).unwrap()).unwrap()
}

#[test]
fn warning_signs_not_asked_is_an_error_and_no_advice() {
    let command = json!({"do": "advise", "task": "object", "person": {"back_nrs": 0}, "object": {"mass_kg": 1}});
    let reply = door(&command);
    assert_eq!(reply["error"]["code"], json!("answer_needed"));
    assert_eq!(reply["error"]["field"], json!("person.flags"));
    assert_eq!(reply.get("ok"), None);
}

#[test]
fn only_the_signs_have_to_be_answered() {
    let command = json!({"do": "advise", "task": "object", "person": {"flags": []}, "object": {}});
    let outcome = &door(&command)["ok"]["outcome"];
    assert!(
        ["lift_with_change", "do_not_lift"]
            .map(Json::from)
            .contains(outcome)
    );
}

mod back {
    use super::*;

    fn not_asked(kilograms: f64) -> Example {
        a_box(kilograms).person(|person| {
            person.pain.back = None;
            person.back_state = None;
        })
    }

    #[test]
    fn pain_not_asked_is_severe() {
        for way in [Way::HipHinge, Way::FreeBend] {
            let answer = not_asked(0.1).ask();
            assert!(!answer.offers(way));
            let because = answer.why_not(way);
            assert_eq!(because.first(), Some(&ReasonId::BackNotAsked));
            assert!(!because.contains(&ReasonId::BackVolatile), "nobody said so");
        }
        assert_eq!(not_asked(6.0).ask().first(), Some(Way::Squat));
        assert!(not_asked(6.0).ask().warns(Caution::AidOrHelpFirst));
    }

    #[test]
    fn pain_not_asked_is_severe_even_when_it_is_said_to_be_steady() {
        let answer = a_box(6.0).person(|person| person.pain.back = None).ask();
        assert_eq!(answer.why_not(Way::HipHinge), [ReasonId::BackNotAsked]);
    }

    #[test]
    fn behaviour_not_asked_is_volatile_from_pain_4_on() {
        let with = |score| {
            a_box(6.0)
                .back(score)
                .person(|person| person.back_state = None)
                .ask()
        };
        assert!(with(3).offers(Way::HipHinge), "steady");
        assert!(!with(4).offers(Way::HipHinge), "volatile");
    }

    #[test]
    fn behaviour_not_asked_is_called_not_asked() {
        let answer = a_box(6.0)
            .back(5)
            .person(|person| person.back_state = None)
            .ask();
        assert_eq!(answer.why_not(Way::HipHinge), [ReasonId::BackStateNotAsked]);
        assert!(!answer.says(ReasonId::BackVolatile), "nobody said so");
    }
}

mod knees {
    use super::*;

    #[test]
    fn a_knee_not_asked_is_severe() {
        let left = a_box(6.0)
            .person(|person| person.pain.knee_left = None)
            .ask();
        assert_eq!(left.why_not(Way::Squat), [ReasonId::KneeNotAsked]);
        assert_eq!(
            left.value(ReasonId::KneelOn, "region"),
            Some(Value::Region(Region::KneeRight))
        );
        let right = a_box(6.0)
            .person(|person| person.pain.knee_right = None)
            .ask();
        assert_eq!(right.why_not(Way::Squat), [ReasonId::KneeNotAsked]);
        assert_eq!(
            right.value(ReasonId::KneelOn, "region"),
            Some(Value::Region(Region::KneeLeft))
        );
    }

    #[test]
    fn two_knees_not_asked_is_no_knee_to_kneel_on() {
        let answer = a_box(6.0)
            .person(|person| {
                person.pain.knee_left = None;
                person.pain.knee_right = None;
            })
            .ask();
        assert_eq!(
            answer.why_not(Way::HalfKneelingLunge),
            [ReasonId::NoKneeToKneelOn]
        );
    }
}

mod hips_and_shoulders {
    use super::*;

    #[test]
    fn a_hip_not_asked_does_not_limit_and_that_is_said() {
        let both = a_box(0.1).ask();
        for answer in [
            a_box(0.1)
                .person(|person| person.pain.hip_left = None)
                .ask(),
            a_box(0.1)
                .person(|person| person.pain.hip_right = None)
                .ask(),
        ] {
            assert_eq!(answer.ways(), both.ways());
            assert!(answer.says(ReasonId::HipNotAsked));
        }
        assert!(!both.says(ReasonId::HipNotAsked));
    }

    #[test]
    fn shoulders_not_asked_do_not_limit_and_that_is_said() {
        let high = a_box(6.0).from(HeightWord::Overhead);
        let asked = high.ask();
        let answer = high.person(|person| person.pain.shoulders = None).ask();
        assert_eq!(answer.outcome(), asked.outcome());
        assert!(answer.says(ReasonId::ShoulderNotAsked));
        assert!(!asked.says(ReasonId::ShoulderNotAsked));
    }
}

mod balance_and_kneeling {
    use super::*;

    #[test]
    fn balance_not_asked_is_poor() {
        let answer = a_box(0.1).person(|person| person.balance = None).ask();
        assert_eq!(
            answer.why_not(Way::GolfersLift),
            [ReasonId::BalanceNotAsked]
        );
        assert!(answer.warns(Caution::NoSingleLeg));
        assert!(answer.warns(Caution::HoldSupport));
        let high = a_box(1.0).from(HeightWord::Overhead);
        let answer = high.person(|person| person.balance = None).ask();
        assert!(
            answer.says(ReasonId::HighAndUnsteady),
            "as with poor balance"
        );
    }

    #[test]
    fn a_fall_in_the_last_year_lowers_good_to_fair_and_not_further() {
        let fell = |balance| {
            a_box(0.1)
                .from(HeightWord::Overhead)
                .balance(balance)
                .person(|person| person.fell_last_year = Some(true))
                .ask()
        };
        assert!(!fell(Balance::Good).says(ReasonId::HighAndUnsteady), "fair");
        assert!(
            !fell(Balance::Fair).says(ReasonId::HighAndUnsteady),
            "fair stays fair"
        );
        assert!(fell(Balance::Poor).says(ReasonId::HighAndUnsteady));
    }

    #[test]
    fn a_fall_not_asked_changes_nothing() {
        let answer = a_box(0.1)
            .person(|person| person.fell_last_year = None)
            .ask();
        assert!(answer.offers(Way::GolfersLift));
    }

    #[test]
    fn kneeling_not_asked_is_no() {
        let answer = a_box(6.0).person(|person| person.can_kneel = None).ask();
        assert_eq!(
            answer.why_not(Way::HalfKneelingLunge),
            [ReasonId::KneelNotAsked]
        );
        assert!(!answer.offers(Way::HalfKneelingLunge));
    }
}

mod who {
    use super::*;

    #[test]
    fn conditions_not_asked_are_none_known() {
        let person = json!({"flags": [], "back_nrs": 0, "knee_left_nrs": 0, "knee_right_nrs": 0});
        let mut asked = person.clone();
        asked["conditions"] = json!([]);
        let reply = |person: &Json| {
            door(
                &json!({"do": "advise", "task": "object", "person": person, "object": {"mass_kg": 1}}),
            )
        };
        assert_eq!(reply(&person), reply(&asked));
    }

    /// The guideline weights below mid lower leg, arms close: women 7 kg, men 10 kg (HSE L23).
    #[test]
    fn sex_not_asked_is_judged_by_womens_figures() {
        let guide = |example: Example| example.ask().value(ReasonId::OverGuideWeight, "guide");
        assert_eq!(guide(a_box(11.0)), Some(Value::Mass(kg(7.0))));
        assert_eq!(
            guide(a_box(11.0).sex(Sex::Female)),
            Some(Value::Mass(kg(7.0)))
        );
        assert_eq!(
            guide(a_box(11.0).sex(Sex::Male)),
            Some(Value::Mass(kg(10.0)))
        );
    }

    /// Knuckle height is 0.42 of stature: 78.5 cm for a tall man (187 cm), 69.3 cm at 165 cm.
    #[test]
    fn stature_not_asked_puts_the_knuckles_at_a_tall_mans() {
        let from = |height| a_box(6.0).from_cm(height).to_cm(height);
        assert_eq!(from(79.0).ask().ways(), [Way::Upright]);
        assert!(!from(78.0).ask().offers(Way::Upright));
        assert_eq!(from(70.0).stature(165.0).ask().ways(), [Way::Upright]);
        assert!(
            !from(69.0)
                .stature(165.0)
                .ask()
                .ways()
                .contains(&Way::Upright)
        );
    }

    /// Shoulder height is 0.82 of stature: 125.05 cm for a small woman (152.5 cm), 135.3 cm at 165 cm.
    #[test]
    fn stature_not_asked_puts_the_shoulder_at_a_small_womans() {
        let high = |height| a_box(1.0).from_cm(height).balance(Balance::Poor);
        assert!(high(126.0).ask().says(ReasonId::HighAndUnsteady));
        assert!(!high(125.0).ask().says(ReasonId::HighAndUnsteady));
        assert!(
            high(136.0)
                .stature(165.0)
                .ask()
                .says(ReasonId::HighAndUnsteady)
        );
        assert!(
            !high(135.0)
                .stature(165.0)
                .ask()
                .says(ReasonId::HighAndUnsteady)
        );
    }

    /// Mid lower leg is 0.14 of stature: 26.2 cm for a tall man, 23.1 cm at 165 cm.
    #[test]
    fn stature_not_asked_puts_the_mid_shin_at_a_tall_mans() {
        let low = |height| a_box(3.0).from_cm(height).has(Condition::Pregnant);
        assert!(low(26.0).ask().says(ReasonId::PregnancyLowOrOverhead));
        assert!(!low(27.0).ask().says(ReasonId::PregnancyLowOrOverhead));
        assert!(
            low(23.0)
                .stature(165.0)
                .ask()
                .says(ReasonId::PregnancyLowOrOverhead)
        );
        assert!(
            !low(24.0)
                .stature(165.0)
                .ask()
                .says(ReasonId::PregnancyLowOrOverhead)
        );
    }

    /// The highest half-kneel grip is 0.30 of stature: 45.75 cm for a small woman, 49.5 cm at 165 cm.
    #[test]
    fn stature_not_asked_puts_the_kneeling_hip_at_a_small_womans() {
        let kneels = |example: Example| example.ask().offers(Way::HalfKneelingLunge);
        assert!(kneels(a_box(6.0).from_cm(45.0)));
        assert!(!kneels(a_box(6.0).from_cm(46.0)));
        assert!(kneels(a_box(6.0).from_cm(49.0).stature(165.0)));
        assert!(!kneels(a_box(6.0).from_cm(50.0).stature(165.0)));
    }
}

mod load {
    use super::*;

    #[test]
    fn whether_it_comes_apart_not_asked_is_no() {
        let answer = a_box(20.0).ask();
        assert_eq!(answer.change("split_load"), None);
        assert_eq!(answer.change("lighten"), None);
        assert!(a_box(20.0).in_parts().ask().change("split_load").is_some());
    }

    #[test]
    fn a_helper_whose_limit_is_not_known_does_not_count() {
        let unknown = a_box(14.0).helper(None).ask();
        assert_eq!(unknown.change("second_person"), None);
        assert!(
            a_box(14.0)
                .helper(Some(12.0))
                .ask()
                .change("second_person")
                .is_some()
        );
    }

    #[test]
    fn nor_is_a_lift_together_suggested_with_a_helper_whose_limit_is_not_known() {
        let suggests = |limit: Option<f64>| {
            a_box(14.0)
                .helper(limit)
                .ask()
                .suggests(Alternative::TwoPerson)
        };
        assert!(suggests(Some(12.0)));
        assert!(!suggests(None));
    }

    #[test]
    fn grip_not_asked_is_hard_to_hold() {
        let answer = a_box(6.0).task(|task| task.awkward = None).ask();
        assert_eq!(answer.outcome(), "lift_with_change");
        assert!(answer.says(ReasonId::Bulky));
        let light = a_box(0.1).task(|task| task.awkward = None).ask();
        assert_eq!(light.why_not(Way::GolfersLift), [ReasonId::NeedsTwoHands]);
    }

    #[test]
    fn where_it_stands_and_how_far_not_asked_is_the_floor_at_arms_length() {
        let nowhere = a_box(6.0).task(|task| task.start = None);
        assert_eq!(nowhere.ask(), a_box(6.0).ask());
        let answer = a_box(6.0).task(|task| task.reach = None).ask();
        assert_eq!(answer.outcome(), "lift_with_change");
        assert!(answer.says(ReasonId::FarReach));
    }

    #[test]
    fn how_often_not_asked_is_a_long_run() {
        let answer = a_box(0.1).task(|task| task.repetitions = None).ask();
        assert!(!answer.offers(Way::FreeBend));
        assert!(!matches!(
            answer.first(),
            Some(Way::Squat | Way::HalfKneelingLunge)
        ));
        assert!(answer.warns(Caution::PaceAndMix));
    }

    #[test]
    fn how_often_not_asked_may_be_answered_by_ten_at_a_time() {
        let only_squat = a_box(1.0)
            .back(8)
            .kneels(Kneeling::No)
            .balance(Balance::Fair);
        let answer = only_squat.task(|task| task.repetitions = None).ask();
        let ten = ChangeStep::ShortenBout {
            to: Repetitions::of(10),
        };
        assert_eq!(answer.change("shorten_bout"), Some(ten));
    }
}
