//! Step 3. A clinician's plan: ceilings, ways ruled out, pain ceiling. It makes the judgement stricter.
//! Review date and pain bands are in `plan_bands.rs`.

#![cfg(test)]

use judgement::example::{Example, a_box, kg, pain};
use lifting::advise::advice::{Alternative, Caution, Urgency};
use lifting::body::Region;
use lifting::plan::{Plan, Validity};
use lifting::quantity::{Kilograms, Weeks};
use lifting::reason::{Authority, ReasonId, Value};
use lifting::task::HeightWord;
use lifting::way::Way;
use std::collections::BTreeMap;

fn max(mass: f64) -> Plan {
    Plan {
        max: Some(kg(mass)),
        ..Plan::blank()
    }
}

mod ceiling {
    use super::*;

    #[test]
    fn at_the_ceiling_is_within_it() {
        assert!(a_box(7.0).plan(max(7.0)).ask().lifts());
    }

    #[test]
    fn over_the_ceiling_is_not_for_today_whatever_the_way() {
        let answer = a_box(7.1).plan(max(7.0)).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert!(answer.warns(Caution::OverPlanCeiling));
        assert_eq!(
            answer.value(ReasonId::OverPlanCeiling, "max"),
            Some(Value::Mass(kg(7.0)))
        );
        assert_eq!(
            answer.value(ReasonId::OverPlanCeiling, "mass"),
            Some(Value::Mass(kg(7.1)))
        );
        for other in [
            Alternative::AskPerson,
            Alternative::SlideOrRoll,
            Alternative::Trolley,
            Alternative::SplitLoad,
        ] {
            assert!(answer.suggests(other), "{}", other.id());
        }
    }

    #[test]
    fn it_holds_at_table_height_too() {
        let answer = a_box(8.0).from(HeightWord::Waist).plan(max(7.0)).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
    }

    #[test]
    fn a_mass_nobody_knows_is_over_any_ceiling_until_tested() {
        let answer = a_box(0.0).no_idea_of_the_mass().plan(max(7.0)).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert!(answer.says(ReasonId::OverPlanCeiling));
        assert_eq!(answer.value(ReasonId::OverPlanCeiling, "mass"), None);
        let guessed = a_box(0.0).guessed(2.0, 9.0).plan(max(7.0)).ask();
        assert_eq!(
            guessed.outcome(),
            "do_not_lift",
            "judged at its upper bound"
        );
    }
}

mod ceiling_by_height {
    use super::*;

    fn by_height(ceilings: &[(HeightWord, f64)]) -> Plan {
        let max_by_height: BTreeMap<HeightWord, Kilograms> = ceilings
            .iter()
            .map(|(word, mass)| (*word, kg(*mass)))
            .collect();
        Plan {
            max_by_height,
            ..Plan::blank()
        }
    }

    /// The ceiling that stands against 12 kg, which the equation alone would let pass at every height below.
    fn ceiling(example: Example, plan: Plan) -> Option<Value> {
        example
            .plan(plan)
            .ask()
            .value(ReasonId::OverPlanCeiling, "max")
    }

    #[test]
    fn holds_at_its_height() {
        let plan = by_height(&[(HeightWord::Floor, 5.0), (HeightWord::Waist, 10.0)]);
        let is = |mass: f64| Some(Value::Mass(kg(mass)));
        assert_eq!(ceiling(a_box(12.0), plan.clone()), is(5.0));
        assert_eq!(
            ceiling(a_box(12.0).from(HeightWord::Waist), plan.clone()),
            is(10.0)
        );
        assert_eq!(ceiling(a_box(4.0), plan), None);
    }

    #[test]
    fn the_general_ceiling_holds_besides() {
        let plan = Plan {
            max: Some(kg(8.0)),
            ..by_height(&[(HeightWord::Floor, 5.0), (HeightWord::Waist, 10.0)])
        };
        assert_eq!(
            ceiling(a_box(12.0), plan.clone()),
            Some(Value::Mass(kg(5.0)))
        );
        assert_eq!(
            ceiling(a_box(12.0).from(HeightWord::Waist), plan.clone()),
            Some(Value::Mass(kg(8.0)))
        );
        assert_eq!(
            ceiling(a_box(12.0).from(HeightWord::Chest), plan),
            Some(Value::Mass(kg(8.0)))
        );
    }

    #[test]
    fn between_two_heights_the_stricter_holds() {
        let plan = by_height(&[(HeightWord::Floor, 5.0), (HeightWord::Shin, 8.0)]);
        assert_eq!(
            ceiling(a_box(12.0).from_cm(10.0), plan),
            Some(Value::Mass(kg(5.0)))
        );
        let upside_down = by_height(&[(HeightWord::Floor, 8.0), (HeightWord::Shin, 5.0)]);
        assert_eq!(
            ceiling(a_box(12.0).from_cm(10.0), upside_down),
            Some(Value::Mass(kg(5.0)))
        );
    }

    #[test]
    fn a_height_without_a_word_of_its_own_takes_the_stricter_of_those_around() {
        let plan = by_height(&[(HeightWord::Floor, 5.0), (HeightWord::Waist, 10.0)]);
        for height in [HeightWord::Shin, HeightWord::Knee] {
            assert_eq!(
                ceiling(a_box(12.0).from(height), plan.clone()),
                Some(Value::Mass(kg(5.0))),
                "{}",
                height.id()
            );
        }
        assert_eq!(
            ceiling(a_box(12.0).from_cm(60.0), plan),
            Some(Value::Mass(kg(5.0)))
        );
    }

    #[test]
    fn a_measured_height_is_scaled_like_the_words() {
        // A knee at 45 cm of 165 cm is at 49 cm of 180 cm: 47 cm lies below it, between shin and knee.
        let plan = by_height(&[(HeightWord::Knee, 5.0)]);
        assert_eq!(
            ceiling(a_box(12.0).from_cm(45.0), plan.clone()),
            Some(Value::Mass(kg(5.0)))
        );
        assert_eq!(
            ceiling(a_box(12.0).from_cm(47.0).stature(180.0), plan),
            Some(Value::Mass(kg(5.0)))
        );
    }
}

mod ways {
    use super::*;

    fn allowed(ways: &[Way]) -> Plan {
        Plan {
            allowed: Some(ways.iter().copied().collect()),
            ..Plan::blank()
        }
    }

    fn avoided(way: Way) -> Plan {
        Plan {
            avoid: [way].into(),
            ..Plan::blank()
        }
    }

    #[test]
    fn a_way_the_plan_avoids_is_not_offered() {
        let answer = a_box(8.0).plan(avoided(Way::HipHinge)).ask();
        assert!(!answer.offers(Way::HipHinge));
        assert_eq!(answer.why_not(Way::HipHinge), [ReasonId::PlanAvoids]);
    }

    #[test]
    fn a_list_of_allowed_ways_is_exhaustive() {
        let answer = a_box(8.0).plan(allowed(&[Way::Squat])).ask();
        assert_eq!(answer.ways(), [Way::Squat]);
        assert_eq!(answer.why_not(Way::HipHinge), [ReasonId::PlanNotListed]);
        assert_eq!(
            answer.why_not(Way::HalfKneelingLunge),
            [ReasonId::PlanNotListed]
        );
    }

    #[test]
    fn a_plan_that_allows_nothing_leaves_no_way() {
        let answer = a_box(8.0).plan(allowed(&[])).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert!(answer.says(ReasonId::NoWayLeft));
        assert!(!answer.0.alternatives.is_empty());
    }

    #[test]
    fn allowing_a_way_does_not_outweigh_the_body_today() {
        let answer = a_box(6.0).back(8).plan(allowed(&[Way::HipHinge])).ask();
        assert!(!answer.offers(Way::HipHinge));
        assert_eq!(answer.outcome(), "do_not_lift");
    }

    #[test]
    fn the_list_is_exhaustive_at_the_waist_too() {
        let waist = || a_box(6.0).from(HeightWord::Waist);
        let not_listed = waist().plan(allowed(&[Way::Squat])).ask();
        assert_eq!(not_listed.outcome(), "do_not_lift");
        assert_eq!(not_listed.why_not(Way::Upright), [ReasonId::PlanNotListed]);
        let listed = allowed(&[Way::Squat, Way::Upright]);
        assert_eq!(waist().plan(listed).ask().ways(), [Way::Upright]);
        assert_eq!(
            waist().plan(avoided(Way::Upright)).ask().outcome(),
            "do_not_lift"
        );
    }

    fn preferred(way: Way, validity: Validity) -> Plan {
        Plan {
            prefer: [way].into(),
            validity,
            ..Plan::blank()
        }
    }

    #[test]
    fn a_way_the_plan_prefers_comes_first_among_those_that_may() {
        let overdue = Validity::Expired {
            overdue: Some(Weeks::clamped(1.0)),
        };
        let free = a_box(6.0).ask();
        for way in free.ways() {
            let answer = a_box(6.0).plan(preferred(way, Validity::Valid)).ask();
            assert_eq!(answer.first(), Some(way));
            assert!(answer.says(ReasonId::PlanPrefers));
            let lapsed = a_box(6.0).plan(preferred(way, overdue)).ask();
            assert_eq!(lapsed.ways(), free.ways(), "past its day that lapses");
        }
    }

    #[test]
    fn what_the_body_bars_no_plan_puts_first() {
        let hinge = preferred(Way::HipHinge, Validity::Valid);
        let answer = a_box(6.0).back(8).plan(hinge).ask();
        assert!(!answer.offers(Way::HipHinge));
        assert_eq!(answer.why_not(Way::HipHinge), [ReasonId::BackSevere]);
        let squat = preferred(Way::Squat, Validity::Valid);
        let many = a_box(2.0).times(40).plan(squat).ask();
        assert_ne!(many.first(), Some(Way::Squat), "a long run of lifts");
    }

    #[test]
    fn the_plans_word_is_told_before_the_bodys() {
        let answer = a_box(6.0).back(8).plan(avoided(Way::HipHinge)).ask();
        assert_eq!(
            answer.why_not(Way::HipHinge),
            [ReasonId::PlanAvoids, ReasonId::BackSevere]
        );
        assert_eq!(ReasonId::PlanAvoids.authority(), Authority::Plan);
    }
}

mod pain_ceiling {
    use super::*;

    fn at_most(score: u8) -> Plan {
        Plan {
            pain_ceiling: Some(pain(score)),
            ..Plan::blank()
        }
    }

    fn hurting(region: Region, score: u8) -> Example {
        a_box(1.0).person(|person| {
            let pains = &mut person.pain;
            let place = match region {
                Region::Back => &mut pains.back,
                Region::KneeLeft => &mut pains.knee_left,
                Region::KneeRight => &mut pains.knee_right,
                Region::HipLeft => &mut pains.hip_left,
                Region::HipRight => &mut pains.hip_right,
                Region::Shoulders => &mut pains.shoulders,
            };
            *place = Some(pain(score));
        })
    }

    #[test]
    fn holds_for_every_rated_region() {
        for region in Region::ALL {
            let answer = hurting(*region, 5).plan(at_most(4)).ask();
            assert_eq!(answer.outcome(), "do_not_lift", "{}", region.id());
            assert!(answer.warns(Caution::OverPainCeiling));
            assert_eq!(
                answer.value(ReasonId::OverPainCeiling, "region"),
                Some(Value::Region(*region))
            );
            assert_eq!(
                answer.value(ReasonId::OverPainCeiling, "pain"),
                Some(Value::Pain(pain(5)))
            );
            assert_eq!(
                answer.value(ReasonId::OverPainCeiling, "max"),
                Some(Value::Pain(pain(4)))
            );
            assert!(
                hurting(*region, 4).plan(at_most(4)).ask().lifts(),
                "{}",
                region.id()
            );
        }
    }

    #[test]
    fn nothing_is_changed_about_the_task_and_the_clinician_is_told() {
        let answer = hurting(Region::Back, 6).in_parts().plan(at_most(4)).ask();
        assert!(answer.changes().is_empty());
        assert_eq!(answer.0.outcome.urgency(), Urgency::Routine);
        assert!(answer.suggests(Alternative::CallClinician));
    }

    #[test]
    fn every_region_over_it_is_told() {
        let answer = a_box(1.0).back(6).knees(0, 7).plan(at_most(4)).ask();
        let over = answer
            .0
            .reasons
            .iter()
            .filter(|reason| reason.id == ReasonId::OverPainCeiling);
        assert_eq!(over.count(), 2);
    }

    #[test]
    fn hips_and_shoulders_that_were_not_asked_do_not_count() {
        let answer = a_box(1.0)
            .person(|person| {
                person.pain.hip_left = None;
                person.pain.hip_right = None;
                person.pain.shoulders = None;
            })
            .plan(at_most(0))
            .ask();
        assert!(answer.lifts());
    }
}

#[test]
fn a_plan_that_sets_nothing_changes_nothing() {
    for example in [
        a_box(6.0),
        a_box(14.0),
        a_box(0.1).back(8),
        a_box(6.0).hard_to_hold(),
    ] {
        assert_eq!(example.clone().plan(Plan::blank()).ask(), example.ask());
    }
}
