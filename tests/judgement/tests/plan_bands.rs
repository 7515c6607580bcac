//! Step 3. A plan past its review date, and pain bands that a plan sets for one person: what tightens stays,
//! what relaxes lapses, and where a house rule is relaxed the advice says whose rule it is.

#![cfg(test)]

use judgement::example::{a_box, kg, pain, weeks};
use lifting::advise::advice::{Alternative, Caution, Urgency};
use lifting::body::{BackState, Region};
use lifting::plan::{PainBands, Plan, Validity};
use lifting::reason::{Authority, ReasonId, Value};
use lifting::way::Way;

fn max(mass: f64) -> Plan {
    Plan {
        max: Some(kg(mass)),
        ..Plan::blank()
    }
}

mod review_date {
    use super::*;

    fn overdue(by: f64, plan: Plan) -> Plan {
        Plan {
            validity: Validity::Expired {
                overdue: Some(weeks(by)),
            },
            ..plan
        }
    }

    #[test]
    fn within_the_grace_limits_stay_and_it_is_said() {
        let within = a_box(6.0).plan(overdue(2.0, max(7.0))).ask();
        assert!(within.lifts());
        assert!(within.says(ReasonId::PlanExpired));
        assert!(within.warns(Caution::PlanExpired));
        let over = a_box(8.0).plan(overdue(2.0, max(7.0))).ask();
        assert_eq!(over.outcome(), "do_not_lift");
        assert_eq!(over.0.outcome.urgency(), Urgency::Routine);
        assert!(over.suggests(Alternative::CallClinician));
    }

    #[test]
    fn a_valid_plan_says_nothing_of_it() {
        let answer = a_box(8.0).plan(max(7.0)).ask();
        assert!(!answer.says(ReasonId::PlanExpired));
        assert!(!answer.warns(Caution::PlanExpired));
        assert_eq!(answer.0.outcome.urgency(), Urgency::None);
        assert!(!answer.suggests(Alternative::CallClinician));
    }

    #[test]
    fn what_it_relaxed_lapses_and_what_it_tightened_stays() {
        let severe_from = |from: u8, moderate: u8| Plan {
            bands: [(
                Region::Back,
                PainBands {
                    moderate_from: pain(moderate),
                    severe_from: pain(from),
                },
            )]
            .into(),
            ..Plan::blank()
        };
        let relaxed = severe_from(9, 5);
        assert!(
            a_box(6.0)
                .back(8)
                .plan(relaxed.clone())
                .ask()
                .offers(Way::HipHinge)
        );
        assert!(
            !a_box(6.0)
                .back(8)
                .plan(overdue(2.0, relaxed))
                .ask()
                .offers(Way::HipHinge)
        );
        let tightened = severe_from(5, 3);
        assert!(
            !a_box(6.0)
                .back(5)
                .plan(overdue(2.0, tightened))
                .ask()
                .offers(Way::HipHinge)
        );
    }
}

mod bands {
    use super::*;

    fn bands(region: Region, moderate_from: u8, severe_from: u8) -> Plan {
        Plan {
            bands: [(
                region,
                PainBands {
                    moderate_from: pain(moderate_from),
                    severe_from: pain(severe_from),
                },
            )]
            .into(),
            ..Plan::blank()
        }
    }

    #[test]
    fn a_clinician_may_relax_when_pain_counts_as_severe_and_the_advice_says_so() {
        let answer = a_box(6.0).back(8).plan(bands(Region::Back, 5, 9)).ask();
        assert!(answer.offers(Way::HipHinge));
        assert_eq!(
            answer.value(ReasonId::PlanSetsBands, "region"),
            Some(Value::Region(Region::Back))
        );
        assert_eq!(ReasonId::PlanSetsBands.authority(), Authority::Plan);
        assert!(
            !a_box(6.0)
                .back(9)
                .plan(bands(Region::Back, 5, 9))
                .ask()
                .offers(Way::HipHinge)
        );
    }

    #[test]
    fn or_tighten_it() {
        assert!(
            !a_box(6.0)
                .back(5)
                .plan(bands(Region::Back, 3, 5))
                .ask()
                .offers(Way::HipHinge)
        );
        let knee = a_box(6.0)
            .knees(5, 0)
            .plan(bands(Region::KneeLeft, 3, 5))
            .ask();
        assert!(!knee.offers(Way::Squat));
        let hip = a_box(0.1)
            .hips(0, 5)
            .plan(bands(Region::HipRight, 3, 5))
            .ask();
        assert_eq!(
            hip.value(ReasonId::StandOn, "region"),
            Some(Value::Region(Region::HipLeft))
        );
    }

    #[test]
    fn for_one_region_and_no_other() {
        let answer = a_box(6.0)
            .knees(5, 5)
            .plan(bands(Region::KneeLeft, 3, 5))
            .ask();
        assert_eq!(
            answer.value(ReasonId::KneelOn, "region"),
            Some(Value::Region(Region::KneeRight))
        );
        let back = a_box(6.0).back(8).plan(bands(Region::KneeLeft, 5, 9)).ask();
        assert!(!back.offers(Way::HipHinge));
    }

    #[test]
    fn a_knee_that_the_plan_calls_severe_is_never_the_one_on_the_ground() {
        let mut plan = bands(Region::KneeLeft, 3, 5);
        plan.bands.extend(bands(Region::KneeRight, 5, 9).bands);
        let answer = a_box(6.0).knees(6, 8).plan(plan).ask();
        assert_eq!(
            answer.value(ReasonId::KneelOn, "region"),
            Some(Value::Region(Region::KneeRight))
        );
    }

    #[test]
    fn the_worse_knee_is_the_one_that_the_plan_calls_severe() {
        for (left, right) in [
            (Region::KneeLeft, Region::KneeRight),
            (Region::KneeRight, Region::KneeLeft),
        ] {
            let mut plan = bands(left, 3, 5);
            plan.bands.extend(bands(right, 9, 10).bands);
            let knees = if left == Region::KneeLeft {
                (5, 6)
            } else {
                (6, 5)
            };
            let answer = a_box(0.1).knees(knees.0, knees.1).plan(plan).ask();
            assert!(answer.offers(Way::FreeBend));
            assert!(
                answer.says(ReasonId::HingeEasesKnee),
                "5 is severe, 6 is mild"
            );
        }
    }

    #[test]
    fn bands_do_not_touch_a_flare() {
        let answer = a_box(6.0)
            .back(2)
            .back_state(BackState::Flare)
            .plan(bands(Region::Back, 5, 10))
            .ask();
        assert!(!answer.offers(Way::HipHinge));
    }
}
