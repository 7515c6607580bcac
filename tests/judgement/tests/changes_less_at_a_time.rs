//! Step 8. Less at a time, with the smallest value that is enough: a carry in stages, a shorter bout, parts,
//! some taken out, a second person. From the floor, close, once, the printed equation allows 12.418 kg.

#![cfg(test)]

use judgement::example::{Answer, Example, a_box, kg, pain};
use lifting::advise::advice::Caution;
use lifting::advise::change::ChangeStep;
use lifting::body::{Balance, Kneeling};
use lifting::plan::Plan;
use lifting::quantity::{Metres, Repetitions};
use lifting::reason::ReasonId;
use lifting::task::Coupling;
use lifting::way::Way;

fn max(mass: f64) -> Plan {
    Plan {
        max: Some(kg(mass)),
        ..Plan::blank()
    }
}

/// The first way of the change of this kind.
fn first_then(answer: &Answer, kind: &str) -> Option<Way> {
    let mut changes = answer.changes().iter();
    let change = changes.find(|change| change.steps[0].id() == kind)?;
    Some(change.ways.first)
}

mod carry_and_pace {
    use super::*;

    #[test]
    fn a_long_carry_rests_every_10_m() {
        let stages = a_box(5.0).carried_m(40.0).ask().change("carry_in_stages");
        assert_eq!(
            stages,
            Some(ChangeStep::CarryInStages {
                to: Metres::clamped(10.0)
            })
        );
        assert_eq!(
            a_box(13.0).carried_m(8.0).ask().change("carry_in_stages"),
            None
        );
    }

    #[test]
    fn a_bout_is_shortened_no_more_than_needed() {
        // 100 in 15 minutes are 6.67 a minute: FM 0.717, 8.9 kg. 30 are 2 a minute: FM 0.91, 11.3 kg.
        let fewer = a_box(10.0)
            .times(100)
            .within_min(15.0)
            .ask()
            .change("shorten_bout");
        assert_eq!(
            fewer,
            Some(ChangeStep::ShortenBout {
                to: Repetitions::of(30)
            })
        );
    }

    #[test]
    fn the_shorter_bouts_are_tried_in_turn() {
        // 20 in 15 minutes: FM 0.93, 11.55 kg. 10: FM 0.96, 11.92 kg. 5: FM 0.987, 12.25 kg.
        let fewer = |mass| {
            a_box(mass)
                .times(100)
                .within_min(15.0)
                .ask()
                .change("shorten_bout")
        };
        for (mass, count) in [(11.4, 20), (11.8, 10), (12.2, 5)] {
            let to = Repetitions::of(count);
            assert_eq!(
                fewer(mass),
                Some(ChangeStep::ShortenBout { to }),
                "{mass} kg"
            );
        }
    }

    #[test]
    fn a_run_is_shortened_to_ten_when_only_ways_not_for_long_runs_are_left() {
        let only_squat = a_box(1.0)
            .back(8)
            .kneels(Kneeling::No)
            .balance(Balance::Fair)
            .times(40);
        let answer = only_squat.ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert_eq!(
            answer.change("shorten_bout"),
            Some(ChangeStep::ShortenBout {
                to: Repetitions::of(10)
            })
        );
        assert_eq!(first_then(&answer, "shorten_bout"), Some(Way::Squat));
        assert!(answer.warns(Caution::PaceAndMix));
        assert!(answer.says(ReasonId::OnlySecondBestLeft) && answer.says(ReasonId::LongRun));
    }

    #[test]
    fn a_run_is_shortened_to_two_when_only_the_free_bend_is_left() {
        let plan = Plan {
            allowed: Some([Way::FreeBend].into()),
            ..Plan::blank()
        };
        let fewer = a_box(0.1).times(20).plan(plan).ask().change("shorten_bout");
        assert_eq!(
            fewer,
            Some(ChangeStep::ShortenBout {
                to: Repetitions::of(2)
            })
        );
    }
}

mod less_at_a_time {
    use super::*;

    fn parts(parts: u32, each: f64, lifts: u32) -> Option<ChangeStep> {
        Some(ChangeStep::Split {
            parts,
            each: kg(each),
            lifts: Some(Repetitions::of(lifts)),
        })
    }

    /// Once in two parts is twice: infrequent, 12.418 kg. More are taken as 6 a minute: FM 0.75, 9.31 kg.
    #[test]
    fn what_comes_apart_is_split_into_as_few_parts_as_are_enough() {
        let split = |mass| a_box(mass).in_parts().ask().change("split_load");
        assert_eq!(split(20.0), parts(2, 10.0, 2));
        assert_eq!(split(37.0), parts(4, 9.25, 4), "not three of 12.3 kg");
        assert_eq!(split(93.0), parts(10, 9.3, 10));
        assert_eq!(split(94.0), None, "more than ten parts are a day's work");
    }

    #[test]
    fn in_parts_it_is_lifted_as_many_times_more() {
        let eight = a_box(13.0).in_parts().times(8).within_min(60.0).ask();
        assert_eq!(eight.change("split_load"), parts(2, 6.5, 16));
        let not_said = a_box(13.0)
            .in_parts()
            .task(|task| task.repetitions = None)
            .ask();
        let Some(ChangeStep::Split { lifts, .. }) = not_said.change("split_load") else {
            panic!("it may be split");
        };
        assert_eq!(lifts, None, "how often is still not known");
    }

    /// 11.76 kg with a poor grip, 12.42 with a fair one.
    #[test]
    fn a_part_is_held_better_than_the_whole() {
        let two = parts(2, 12.0, 2);
        let poor = a_box(24.0)
            .in_parts()
            .task(|task| task.coupling = Some(Coupling::Poor));
        assert_eq!(poor.ask().change("split_load"), two);
        assert_eq!(
            a_box(24.0)
                .in_parts()
                .hard_to_hold()
                .ask()
                .change("split_load"),
            two
        );
    }

    #[test]
    fn or_lightened_to_the_limit() {
        let lighten = a_box(20.0).in_parts().ask().change("lighten");
        assert_eq!(lighten, Some(ChangeStep::Lighten { to: kg(12.4) }));
        let plan = a_box(12.0).in_parts().plan(max(7.0)).ask();
        assert_eq!(
            plan.change("lighten"),
            Some(ChangeStep::Lighten { to: kg(7.0) })
        );
        assert_eq!(plan.change("split_load"), parts(2, 6.0, 2));
    }

    #[test]
    fn what_nobody_has_weighed_is_not_lightened_to_a_number() {
        let unknown = a_box(0.0).guessed(7.0, 20.0).in_parts().ask();
        assert_eq!(unknown.change("lighten"), None);
        assert!(
            unknown.change("split_load").is_some(),
            "half of the upper end"
        );
    }

    #[test]
    fn what_does_not_come_apart_is_neither() {
        let whole = a_box(20.0).task(|task| task.divisible = Some(false)).ask();
        assert_eq!(whole.change("split_load"), None);
        assert_eq!(whole.change("lighten"), None);
    }
}

mod second_person {
    use super::*;

    fn judged_at(example: &Example) -> Option<ChangeStep> {
        example.ask().change("second_person")
    }

    /// Two manage about two thirds of the sum (HSE L23): of two equal limits, each has three quarters of the mass.
    #[test]
    fn two_carry_two_thirds_of_the_sum_of_their_limits() {
        let two = judged_at(&a_box(16.0).helper(Some(20.0)));
        assert_eq!(
            two,
            Some(ChangeStep::SecondPerson {
                judged_at: kg(12.0)
            })
        );
        assert_eq!(
            judged_at(&a_box(17.0).helper(Some(20.0))),
            None,
            "12.75 kg is over one's own 12.4"
        );
    }

    #[test]
    fn a_weaker_helper_lowers_what_two_can_manage() {
        // Two thirds of 12.4 + 7 are 12.9 kg, of 12.4 + 8 are 13.6 kg.
        assert_eq!(judged_at(&a_box(13.0).helper(Some(7.0))), None);
        assert!(judged_at(&a_box(13.0).helper(Some(8.0))).is_some());
    }

    #[test]
    fn the_strongest_helper_counts() {
        assert!(
            judged_at(
                &a_box(13.0)
                    .helper(Some(7.0))
                    .helper(Some(20.0))
                    .helper(None)
            )
            .is_some()
        );
    }

    /// Three manage about half of the sum (HSE L23): of three equal limits, each has two thirds of the mass.
    #[test]
    fn three_lift_half_of_the_sum_where_two_are_not_enough() {
        let strong = |mass: f64| a_box(mass).helper(Some(20.0)).helper(Some(20.0));
        let three = strong(18.0).ask();
        assert_eq!(three.change("second_person"), None, "13.5 kg is over 12.4");
        let judged_at = kg(12.0);
        assert_eq!(
            three.change("three_people"),
            Some(ChangeStep::ThreePeople { judged_at })
        );
        let two = strong(16.0).ask();
        assert!(two.change("second_person").is_some());
        assert_eq!(two.change("three_people"), None, "two are enough");
        assert_eq!(strong(19.0).ask().change("three_people"), None, "12.7 kg");
    }

    #[test]
    fn three_need_two_helpers_whose_limits_are_known() {
        // Half of 12.4 + 12 + 12 are 18.2 kg, of 12.4 + 12 + 10 are 17.2 kg.
        let with = |second: Option<f64>| {
            a_box(18.0)
                .helper(Some(12.0))
                .helper(second)
                .ask()
                .change("three_people")
        };
        assert!(with(Some(12.0)).is_some());
        assert_eq!(with(Some(10.0)), None);
        assert_eq!(with(None), None);
    }

    #[test]
    fn nobody_there_nobody_helps() {
        assert_eq!(judged_at(&a_box(13.0)), None);
    }

    #[test]
    fn one_holds_the_awkward_end() {
        assert!(judged_at(&a_box(10.0).hard_to_hold().helper(Some(20.0))).is_some());
        // 11.76 kg with a poor grip, 12.42 with a fair one.
        let poor = a_box(16.0)
            .helper(Some(20.0))
            .task(|task| task.coupling = Some(Coupling::Poor));
        let judged = ChangeStep::SecondPerson {
            judged_at: kg(12.0),
        };
        assert_eq!(judged_at(&poor), Some(judged));
    }
}

mod every_change_that_is_enough {
    use super::*;

    #[test]
    fn is_listed_beside_the_others() {
        let kinds = |example: Example| example.ask().kinds().concat();
        assert_eq!(
            kinds(a_box(5.0).in_parts().carried_m(40.0)),
            ["carry_in_stages", "split_load", "lighten"]
        );
        assert_eq!(
            kinds(a_box(6.0).in_parts().hard_to_hold()),
            ["better_grip", "split_load", "lighten"]
        );
        let handles = a_box(6.0)
            .in_parts()
            .hard_to_hold()
            .task(|task| task.coupling = Some(Coupling::Good));
        assert_eq!(kinds(handles), ["better_grip", "split_load", "lighten"]);
        let at_the_limit = a_box(0.0).guessed(12.4, 20.0).in_parts();
        assert_eq!(kinds(at_the_limit), ["find_mass", "split_load"]);
    }
}

mod nothing_to_change {
    use super::*;

    #[test]
    fn a_plain_lift_asks_for_no_change() {
        assert!(
            a_box(6.0)
                .in_parts()
                .helper(Some(20.0))
                .ask()
                .changes()
                .is_empty()
        );
    }

    #[test]
    fn no_change_to_the_task_helps_a_pain_ceiling() {
        let plan = Plan {
            pain_ceiling: Some(pain(3)),
            ..Plan::blank()
        };
        let answer = a_box(6.0)
            .back(5)
            .in_parts()
            .helper(Some(20.0))
            .plan(plan)
            .ask();
        assert!(answer.changes().is_empty());
    }
}
