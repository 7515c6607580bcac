//! Step 1. Any open warning sign ends the judgement: care first, how soon by the sign's tier, and no word on
//! how to lift around it. Tiers: source `red_flags`.

#![cfg(test)]

use judgement::example::{Example, a_box};
use lifting::advise::advice::{Alternative, Caution, Urgency};
use lifting::advise::care_needed;
use lifting::body::{Condition, WarningSign as Sign};
use lifting::plan::Plan;
use lifting::reason::{Authority, ReasonId, Value};
use lifting::task::HeightWord;

const EMERGENCY: [Sign; 7] = [
    Sign::SaddleNumb,
    Sign::BladderBowel,
    Sign::BothLegsWeak,
    Sign::MajorTrauma,
    Sign::ChestBreath,
    Sign::StrokeSigns,
    Sign::HerniaBad,
];
const SAME_DAY: [Sign; 11] = [
    Sign::OneLegWeaker,
    Sign::MinorTraumaFragile,
    Sign::FeverUnwell,
    Sign::CancerHistory,
    Sign::WeightLoss,
    Sign::NightPain,
    Sign::HotJoint,
    Sign::LockedKnee,
    Sign::NoWeightBear,
    Sign::CalfSwollen,
    Sign::DizzyFaint,
];

/// The lightest thing at the kindest height: only the sign stands against it.
fn a_feather_on_a_table() -> Example {
    a_box(0.1).from(HeightWord::Waist)
}

fn urgency(example: &Example) -> Urgency {
    example.ask().0.outcome.urgency()
}

#[test]
fn every_sign_has_a_tier_and_only_recent_surgery_is_left_to_the_surgeon() {
    let tiered: Vec<Sign> = EMERGENCY.into_iter().chain(SAME_DAY).collect();
    for sign in Sign::ALL {
        assert_eq!(
            tiered.contains(sign),
            *sign != Sign::PostOpRecent,
            "{}",
            sign.id()
        );
    }
}

#[test]
fn emergency_signs_need_help_now() {
    for sign in EMERGENCY {
        let answer = a_feather_on_a_table().sign(sign).ask();
        assert_eq!(answer.outcome(), "seek_care", "{}", sign.id());
        assert_eq!(
            answer.0.outcome.urgency(),
            Urgency::Emergency,
            "{}",
            sign.id()
        );
        assert_eq!(answer.0.cautions, [Caution::EmergencyNow]);
        assert_eq!(
            answer.value(ReasonId::SignEmergency, "sign"),
            Some(Value::Sign(sign))
        );
    }
}

#[test]
fn same_day_signs_need_advice_today() {
    for sign in SAME_DAY {
        let answer = a_feather_on_a_table().sign(sign).ask();
        assert_eq!(answer.outcome(), "seek_care", "{}", sign.id());
        assert_eq!(
            answer.0.outcome.urgency(),
            Urgency::SameDay,
            "{}",
            sign.id()
        );
        assert_eq!(answer.0.cautions, [Caution::SameDayAdvice]);
        assert_eq!(
            answer.value(ReasonId::SignSameDay, "sign"),
            Some(Value::Sign(sign))
        );
        assert!(answer.suggests(Alternative::CallClinician), "whom to ask");
    }
}

#[test]
fn there_is_no_word_on_how_to_lift_around_it() {
    for sign in EMERGENCY.into_iter().chain(SAME_DAY) {
        let answer = a_box(6.0).in_parts().helper(Some(20.0)).sign(sign).ask();
        let advice = &answer.0;
        assert!(answer.ways().is_empty());
        assert!(answer.changes().is_empty());
        assert!(advice.ruled_out.is_empty(), "not even what is ruled out");
        assert!(advice.loads.is_empty());
        assert_eq!(advice.limit, None);
        assert_eq!(advice.heaviest_today, None);
        let allowed = [Alternative::LeaveIt, Alternative::CallClinician];
        assert!(
            advice
                .alternatives
                .iter()
                .all(|other| allowed.contains(other))
        );
        assert!(answer.suggests(Alternative::LeaveIt), "never a dead end");
    }
}

#[test]
fn the_most_urgent_of_several_decides_and_every_one_is_told_most_urgent_first() {
    let answer = a_feather_on_a_table()
        .sign(Sign::FeverUnwell)
        .sign(Sign::StrokeSigns)
        .sign(Sign::WeightLoss)
        .ask();
    assert_eq!(answer.0.outcome.urgency(), Urgency::Emergency);
    let told: Vec<ReasonId> = answer.0.reasons.iter().map(|reason| reason.id).collect();
    assert_eq!(
        told,
        [
            ReasonId::SignEmergency,
            ReasonId::SignSameDay,
            ReasonId::SignSameDay
        ]
    );
    assert_eq!(
        answer.0.cautions,
        [Caution::EmergencyNow, Caution::SameDayAdvice]
    );
}

#[test]
fn a_hot_joint_is_an_emergency_with_a_replaced_joint() {
    for replaced in [
        Condition::KneeReplacementOld,
        Condition::KneeReplacementRecent,
        Condition::HipReplacement,
    ] {
        let hot = a_feather_on_a_table().sign(Sign::HotJoint).has(replaced);
        assert_eq!(urgency(&hot), Urgency::Emergency, "{}", replaced.id());
    }
    let worn = a_feather_on_a_table()
        .sign(Sign::HotJoint)
        .has(Condition::KneeOsteoarthritis);
    assert_eq!(urgency(&worn), Urgency::SameDay);
    let fever = a_feather_on_a_table()
        .sign(Sign::FeverUnwell)
        .has(Condition::HipReplacement);
    assert_eq!(urgency(&fever), Urgency::SameDay, "the joint is not hot");
}

/// "Very ill" is asked as fever, shivers or feeling very ill.
#[test]
fn a_hot_joint_is_an_emergency_with_fever_or_feeling_very_ill() {
    let answer = a_feather_on_a_table()
        .sign(Sign::HotJoint)
        .sign(Sign::FeverUnwell)
        .ask();
    assert_eq!(answer.0.outcome.urgency(), Urgency::Emergency);
    assert!(answer.warns(Caution::SameDayAdvice), "the fever's own word");
    let told = answer.value(ReasonId::SignEmergency, "sign");
    assert_eq!(told, Some(Value::Sign(Sign::HotJoint)));
}

#[test]
fn a_leg_that_bears_no_weight_is_an_emergency_after_a_fall() {
    let leg = a_feather_on_a_table().sign(Sign::NoWeightBear);
    assert_eq!(urgency(&leg), Urgency::SameDay);
    assert_eq!(
        urgency(&leg.clone().sign(Sign::MinorTraumaFragile)),
        Urgency::Emergency
    );
    assert_eq!(urgency(&leg.sign(Sign::MajorTrauma)), Urgency::Emergency);
}

#[test]
fn a_sign_outranks_plan_and_every_refusal() {
    let plan = Plan::blank();
    let answer = a_feather_on_a_table()
        .plan(plan)
        .has(Condition::PregnancyComplicated)
        .sign(Sign::PostOpRecent)
        .sign(Sign::SaddleNumb)
        .task(|task| task.living = true)
        .ask();
    assert_eq!(answer.outcome(), "seek_care");
    assert_eq!(
        answer.0.cautions,
        [Caution::EmergencyNow],
        "one thing to do"
    );
    assert!(
        answer.0.reasons.iter().all(|reason| {
            reason.id.step() == 1 && reason.id.authority() == Authority::Emergency
        })
    );
}

#[test]
fn recent_surgery_alone_is_not_a_reason_to_seek_care() {
    let answer = a_feather_on_a_table().sign(Sign::PostOpRecent).ask();
    assert_eq!(answer.outcome(), "refuse");
}

#[test]
fn no_sign_no_care() {
    let example = a_feather_on_a_table();
    assert_eq!(care_needed(&example.request), None);
    assert!(example.ask().lifts());
    assert!(care_needed(&example.sign(Sign::NightPain).request).is_some());
}
