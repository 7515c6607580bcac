//! Step 2. Where we may not advise, we say who can: recent surgery without a written limit, a complicated
//! pregnancy, a child without plan and adult, a plan too old, a load that is alive.

#![cfg(test)]

use judgement::example::{Answer, Example, a_box, kg, weeks};
use lifting::advise::advice::{Alternative, Caution, Urgency};
use lifting::body::{AgeBand, Condition, WarningSign};
use lifting::plan::{Plan, Validity};
use lifting::reason::ReasonId;
use lifting::task::HeightWord;

#[track_caller]
fn refused(answer: &Answer, because: ReasonId) {
    assert_eq!(answer.outcome(), "refuse");
    assert!(answer.says(because));
    assert_eq!(answer.0.outcome.urgency(), Urgency::Routine);
    assert!(answer.ways().is_empty());
    assert!(answer.changes().is_empty());
    assert_eq!(answer.0.limit, None);
    assert_eq!(answer.0.heaviest_today, None);
    assert!(answer.suggests(Alternative::CallClinician), "who can");
    assert!(answer.suggests(Alternative::LeaveIt));
}

fn plan_of(max: f64) -> Plan {
    Plan {
        max: Some(kg(max)),
        ..Plan::blank()
    }
}

fn overdue(by_weeks: Option<f64>, plan: Plan) -> Plan {
    Plan {
        validity: Validity::Expired {
            overdue: by_weeks.map(weeks),
        },
        ..plan
    }
}

mod recent_surgery {
    use super::*;

    /// Four ways to hear of it; the fourth counts while its weeks were not asked.
    fn heard() -> [Example; 4] {
        [
            a_box(1.0).sign(WarningSign::PostOpRecent),
            a_box(1.0).person(|person| person.since_surgery = Some(weeks(3.0))),
            a_box(1.0).has(Condition::LumbarSurgeryRecent),
            a_box(1.0).has(Condition::KneeReplacementRecent),
        ]
    }

    #[test]
    fn without_a_written_limit_is_refused_and_the_surgeon_asked() {
        for example in heard() {
            let answer = example.ask();
            refused(&answer, ReasonId::SurgeryNoLimit);
            assert!(answer.suggests(Alternative::FollowSurgeonLimit));
            assert!(answer.suggests(Alternative::AskPerson));
            assert!(answer.warns(Caution::SurgeonLimitFirst));
        }
    }

    #[test]
    fn with_the_surgeons_limit_in_a_valid_plan_is_judged_by_it() {
        for example in heard() {
            let answer = example.plan(plan_of(5.0)).ask();
            assert_eq!(answer.outcome(), "lift");
            assert!(answer.says(ReasonId::SurgeonLimit));
            assert!(answer.warns(Caution::SurgeonLimitFirst));
        }
        for example in heard() {
            let over = example.plan(plan_of(0.5)).ask();
            assert_eq!(over.outcome(), "do_not_lift");
        }
    }

    #[test]
    fn a_plan_that_carries_no_limit_does_not_help() {
        for example in heard() {
            refused(&example.plan(Plan::blank()).ask(), ReasonId::SurgeryNoLimit);
        }
    }

    #[test]
    fn a_limit_for_another_height_is_none_for_this_one() {
        let from_the_table = Plan {
            max_by_height: [(HeightWord::Waist, kg(5.0))].into(),
            ..Plan::blank()
        };
        let after = a_box(1.0)
            .sign(WarningSign::PostOpRecent)
            .plan(from_the_table);
        refused(&after.ask(), ReasonId::SurgeryNoLimit);
        assert!(after.from(HeightWord::Waist).ask().lifts());
    }

    #[test]
    fn a_limit_past_its_review_date_is_none_even_within_the_grace() {
        let plan = overdue(Some(1.0), plan_of(5.0));
        let answer = a_box(1.0).sign(WarningSign::PostOpRecent).plan(plan).ask();
        refused(&answer, ReasonId::SurgeryNoLimit);
        assert!(answer.warns(Caution::PlanExpired));
    }

    #[test]
    fn counts_as_recent_for_three_months() {
        let after = |time| a_box(1.0).person(|person| person.since_surgery = Some(weeks(time)));
        refused(&after(12.9).ask(), ReasonId::SurgeryNoLimit);
        assert!(after(13.0).ask().lifts());
        let knee = |time| after(time).has(Condition::KneeReplacementRecent);
        refused(&knee(12.9).ask(), ReasonId::SurgeryNoLimit);
        assert_ne!(knee(13.0).ask().outcome(), "refuse");
    }
}

mod pregnancy_and_age {
    use super::*;

    #[test]
    fn a_complicated_pregnancy_is_refused_with_or_without_plan() {
        let example = a_box(1.0).has(Condition::PregnancyComplicated);
        refused(&example.ask(), ReasonId::PregnancyComplicated);
        refused(
            &example.plan(plan_of(5.0)).ask(),
            ReasonId::PregnancyComplicated,
        );
    }

    fn child() -> Example {
        a_box(1.0).person(|person| person.age = Some(AgeBand::Under16))
    }

    #[test]
    fn a_child_without_a_plan_is_refused() {
        let answer = child().ask();
        refused(&answer, ReasonId::ChildNoPlan);
        assert!(answer.warns(Caution::AdultAndClinician));
        assert!(answer.suggests(Alternative::AskPerson));
    }

    #[test]
    fn a_child_with_a_clinicians_plan_still_needs_the_adult() {
        let answer = child().plan(plan_of(5.0)).ask();
        assert!(answer.lifts());
        assert!(answer.warns(Caution::AdultAndClinician));
    }

    #[test]
    fn a_childs_plan_has_to_be_valid() {
        refused(
            &child().plan(overdue(Some(1.0), plan_of(5.0))).ask(),
            ReasonId::ChildNoPlan,
        );
    }

    #[test]
    fn every_other_age_is_judged() {
        for age in AgeBand::ALL.iter().filter(|age| **age != AgeBand::Under16) {
            let answer = a_box(1.0).person(|person| person.age = Some(*age)).ask();
            assert!(answer.lifts(), "{}", age.id());
            assert!(!answer.warns(Caution::AdultAndClinician));
        }
    }
}

mod a_plan_too_old {
    use super::*;

    #[test]
    fn past_four_weeks_of_grace_is_refused() {
        let late = |time| a_box(1.0).plan(overdue(Some(time), plan_of(5.0))).ask();
        assert!(late(4.0).lifts());
        let answer = late(4.1);
        refused(&answer, ReasonId::PlanTooOld);
        assert!(answer.warns(Caution::PlanExpired));
        assert!(answer.value(ReasonId::PlanTooOld, "overdue").is_some());
    }

    #[test]
    fn by_a_time_nobody_knows_is_refused() {
        let answer = a_box(1.0).plan(overdue(None, plan_of(5.0))).ask();
        refused(&answer, ReasonId::PlanTooOld);
        assert_eq!(answer.value(ReasonId::PlanTooOld, "overdue"), None);
    }

    #[test]
    fn the_plan_may_set_its_own_grace() {
        let late = |time, grace| {
            let plan = Plan {
                grace: Some(weeks(grace)),
                ..overdue(Some(time), plan_of(5.0))
            };
            a_box(1.0).plan(plan).ask().outcome()
        };
        assert_eq!(late(2.0, 1.0), "refuse");
        assert_eq!(late(8.0, 10.0), "lift");
        assert_eq!(late(0.5, 0.0), "refuse");
    }
}

mod a_living_load {
    use super::*;

    #[test]
    fn is_refused_however_light() {
        let answer = a_box(0.5)
            .from(HeightWord::Waist)
            .task(|task| task.living = true)
            .ask();
        refused(&answer, ReasonId::LoadIsAlive);
    }
}

#[test]
fn every_ground_for_refusal_is_told_the_laws_first() {
    let answer = a_box(1.0)
        .sign(WarningSign::PostOpRecent)
        .has(Condition::PregnancyComplicated)
        .person(|person| person.age = Some(AgeBand::Under16))
        .plan(overdue(None, Plan::blank()))
        .task(|task| task.living = true)
        .ask();
    refused(&answer, ReasonId::LoadIsAlive);
    let told: Vec<ReasonId> = answer.0.reasons.iter().map(|reason| reason.id).collect();
    assert_eq!(told.len(), 5);
    let authorities: Vec<_> = told.iter().map(|id| id.authority()).collect();
    assert!(authorities.is_sorted(), "highest authority first: {told:?}");
}
