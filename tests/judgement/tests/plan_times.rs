//! Step 3. How often a clinician's plan allows lifting: the most lifts in one go, the most goes in a day. Limits that
//! a plan sets bind as its ceilings do (`docs/method/judgement.md`, step 3); the plan itself is the source.

#![cfg(test)]

use judgement::example::{Example, a_box, kg};
use lifting::advise::advice::{Alternative, Caution};
use lifting::advise::change::ChangeStep;
use lifting::plan::{Plan, Validity};
use lifting::quantity::{Repetitions, Weeks};
use lifting::reason::{ReasonId, Value};

fn in_one_go(times: u32) -> Plan {
    Plan {
        times_a_bout: Some(Repetitions::of(times)),
        ..Plan::blank()
    }
}

fn a_day(bouts: u32) -> Plan {
    Plan {
        bouts_a_day: Some(Repetitions::of(bouts)),
        ..Plan::blank()
    }
}

fn count(times: u32) -> Option<Value> {
    Some(Value::Count(Repetitions::of(times)))
}

mod in_one_go {
    use super::*;

    #[test]
    fn as_many_as_the_plan_says_are_within_it() {
        assert!(a_box(4.0).times(5).plan(in_one_go(5)).ask().lifts());
    }

    #[test]
    fn more_are_not_for_one_go_and_the_plans_number_is_the_change() {
        let answer = a_box(4.0).times(8).plan(in_one_go(5)).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert_eq!(answer.value(ReasonId::OverPlanTimes, "times"), count(8));
        assert_eq!(answer.value(ReasonId::OverPlanTimes, "max"), count(5));
        assert_eq!(
            answer.change("shorten_bout"),
            Some(ChangeStep::ShortenBout {
                to: Repetitions::of(5)
            })
        );
        assert!(answer.warns(Caution::OverPlanCeiling));
        assert!(answer.suggests(Alternative::SpreadOverDays));
    }

    #[test]
    fn a_number_between_those_usually_tried_is_offered_as_it_is() {
        let answer = a_box(4.0).times(10).plan(in_one_go(7)).ask();
        assert_eq!(
            answer.change("shorten_bout"),
            Some(ChangeStep::ShortenBout {
                to: Repetitions::of(7)
            })
        );
    }

    /// A go is what falls into an hour, as a long run is (house rule).
    #[test]
    fn lifts_that_are_spread_over_hours_are_counted_by_the_hour() {
        let spread = |span: f64| a_box(4.0).times(10).within_min(span).plan(in_one_go(5));
        assert_eq!(spread(60.0).ask().outcome(), "do_not_lift");
        assert_eq!(spread(119.0).ask().outcome(), "do_not_lift");
        assert!(spread(120.0).ask().lifts());
    }

    #[test]
    fn how_often_nobody_asked_may_be_more_than_any_plan_allows() {
        let unasked: Example = a_box(4.0).task(|task| task.repetitions = None);
        let answer = unasked.plan(in_one_go(15)).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert_eq!(answer.value(ReasonId::OverPlanTimes, "times"), None);
        assert_eq!(answer.value(ReasonId::OverPlanTimes, "max"), count(15));
    }

    #[test]
    fn two_halves_of_a_load_are_two_lifts_of_the_go() {
        let plan = Plan {
            max: Some(kg(5.0)),
            ..in_one_go(2)
        };
        let answer = a_box(10.0).in_parts().times(2).plan(plan).ask();
        assert_eq!(
            answer.change("split_load"),
            None,
            "four lifts are over the plan's two"
        );
        let steps = answer.kinds();
        assert!(
            steps.contains(&vec!["lighten"]) || steps.contains(&vec!["shorten_bout", "split_load"]),
            "{steps:?}"
        );
    }

    #[test]
    fn it_stays_in_the_grace_after_the_review_date() {
        let plan = Plan {
            validity: Validity::Expired {
                overdue: Some(Weeks::clamped(1.0)),
            },
            ..in_one_go(5)
        };
        assert!(
            a_box(4.0)
                .times(8)
                .plan(plan)
                .ask()
                .says(ReasonId::OverPlanTimes)
        );
    }
}

mod goes_in_a_day {
    use super::*;

    #[test]
    fn the_last_one_is_within_the_plan() {
        assert!(a_box(4.0).plan(a_day(3)).bouts_today(2).ask().lifts());
    }

    #[test]
    fn once_they_are_done_there_is_no_lift_today_and_no_change_makes_one() {
        let answer = a_box(4.0).plan(a_day(3)).bouts_today(3).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert_eq!(answer.value(ReasonId::PlanBoutsDone, "done"), count(3));
        assert_eq!(answer.value(ReasonId::PlanBoutsDone, "max"), count(3));
        assert!(answer.changes().is_empty());
        for other in [
            Alternative::LeaveIt,
            Alternative::AskPerson,
            Alternative::SpreadOverDays,
        ] {
            assert!(answer.suggests(other), "{}", other.id());
        }
        assert_eq!(answer.0.heaviest_today, None);
    }

    #[test]
    fn without_a_plan_that_says_so_goes_are_not_counted() {
        assert!(a_box(4.0).bouts_today(40).ask().lifts());
        assert!(a_box(4.0).plan(Plan::blank()).bouts_today(40).ask().lifts());
    }
}
