//! What words and missing measures come to in the published equation (NIOSH 94-110): heights, reaches,
//! depth, pace, duration, grip and end height. Expected figures are worked out by hand from the printed
//! formulas: HM = 25/H, VM = 1 − 0.003·|V − 75|, DM = 0.82 + 4.5/D, FM by table 5, CM by table 7.

#![cfg(test)]

use judgement::example::{Example, a_box};
use lifting::limits::niosh::PointScore;
use lifting::task::{Coupling, HeightWord, ReachWord};

fn origin(example: &Example) -> PointScore {
    example.ask().0.limit.unwrap().origin
}

#[track_caller]
fn near(found: f64, expected: f64) {
    assert!(
        (found - expected).abs() < 1e-9,
        "{found} instead of {expected}"
    );
}

mod height_in_words {
    use super::*;

    #[test]
    fn at_165_cm_or_when_stature_is_not_known() {
        let heights = [
            (HeightWord::Floor, 0.0),
            (HeightWord::Shin, 20.0),
            (HeightWord::Knee, 45.0),
            (HeightWord::Waist, 95.0),
            (HeightWord::Chest, 125.0),
            (HeightWord::Overhead, 175.0),
        ];
        for (word, height) in heights {
            let expected = 1.0 - 0.003 * f64::abs(height - 75.0);
            near(origin(&a_box(1.0).from(word)).vm, expected);
            near(origin(&a_box(1.0).from(word).stature(165.0)).vm, expected);
        }
    }

    #[test]
    fn scale_with_stature() {
        // A knee at 45 cm of 165 cm is at 49.09 cm of 180 cm and at 40.91 cm of 150 cm.
        near(
            origin(&a_box(1.0).from(HeightWord::Knee).stature(180.0)).vm,
            1.0 - 0.003 * (75.0 - 45.0 * 180.0 / 165.0),
        );
        near(
            origin(&a_box(1.0).from(HeightWord::Knee).stature(150.0)).vm,
            1.0 - 0.003 * (75.0 - 45.0 * 150.0 / 165.0),
        );
        near(
            origin(&a_box(1.0).from(HeightWord::Floor).stature(190.0)).vm,
            0.775,
        );
    }

    #[test]
    fn a_measured_height_does_not_scale() {
        near(origin(&a_box(1.0).from_cm(45.0).stature(180.0)).vm, 0.91);
    }

    #[test]
    fn overhead_stays_within_the_equation_for_tall_people() {
        let answer = a_box(1.0).from(HeightWord::Overhead).stature(190.0).ask();
        assert!(answer.0.limit.unwrap().outside.is_empty());
    }
}

mod reach {
    use super::*;

    #[test]
    fn in_words_is_30_45_and_63_cm() {
        near(origin(&a_box(1.0).reach(ReachWord::Close)).hm, 25.0 / 30.0);
        near(origin(&a_box(1.0).reach(ReachWord::Medium)).hm, 25.0 / 45.0);
        near(origin(&a_box(1.0).reach(ReachWord::Far)).hm, 25.0 / 63.0);
    }

    #[test]
    fn measured_wins_over_nothing_but_depth() {
        near(origin(&a_box(1.0).reach_cm(50.0)).hm, 0.5);
    }

    #[test]
    fn depth_makes_it_at_least_20_cm_and_half_the_depth() {
        let deep = |depth: f64| {
            a_box(1.0)
                .from_cm(25.0)
                .task(|task| task.depth = Some(judgement::example::cm(depth)))
        };
        near(origin(&deep(40.0)).hm, 25.0 / 40.0);
        near(origin(&deep(10.0)).hm, 25.0 / 30.0); // 25 cm by depth, 30 cm said
        near(origin(&deep(40.0).reach(ReachWord::Far)).hm, 25.0 / 63.0);
    }

    #[test]
    fn below_25_cm_it_is_25_cm_and_half_the_depth() {
        let deep = |height: f64| {
            a_box(1.0)
                .from_cm(height)
                .task(|task| task.depth = Some(judgement::example::cm(40.0)))
        };
        near(origin(&deep(24.9)).hm, 25.0 / 45.0);
        near(origin(&deep(25.0)).hm, 25.0 / 40.0);
    }

    #[test]
    fn depth_alone_is_enough_when_reach_was_not_said() {
        let example = a_box(1.0).from_cm(30.0).task(|task| {
            task.reach = None;
            task.depth = Some(judgement::example::cm(20.0));
        });
        near(origin(&example).hm, 25.0 / 30.0);
    }
}

mod how_often {
    use super::*;

    #[test]
    fn is_spread_over_at_least_a_quarter_of_an_hour() {
        // Below 75 cm, up to an hour: FM 0.91 at 2 a minute, 0.94 at 1.
        near(origin(&a_box(1.0).times(30).within_min(5.0)).fm, 0.91);
        near(origin(&a_box(1.0).times(30).within_min(15.0)).fm, 0.91);
        near(origin(&a_box(1.0).times(30).within_min(30.0)).fm, 0.94);
    }

    #[test]
    fn without_a_span_up_to_two_is_infrequent_and_more_is_six_a_minute() {
        near(origin(&a_box(1.0).times(1)).fm, 1.0);
        near(origin(&a_box(1.0).times(2)).fm, 1.0);
        near(origin(&a_box(1.0).times(3)).fm, 0.75);
        near(origin(&a_box(1.0).times(60)).fm, 0.75);
    }

    #[test]
    fn without_a_count_it_is_six_a_minute() {
        let not_asked = |example: Example| example.task(|task| task.repetitions = None);
        near(origin(&not_asked(a_box(1.0))).fm, 0.75);
        near(origin(&not_asked(a_box(1.0).within_min(30.0))).fm, 0.75);
    }

    #[test]
    fn the_span_is_how_long_the_lifting_goes_on() {
        // Once a minute: FM 0.94 up to one hour, 0.88 up to two, 0.75 up to eight.
        near(origin(&a_box(1.0).times(60).within_min(60.0)).fm, 0.94);
        near(origin(&a_box(1.0).times(120).within_min(120.0)).fm, 0.88);
        near(origin(&a_box(1.0).times(180).within_min(180.0)).fm, 0.75);
    }

    #[test]
    fn without_a_span_many_lifts_at_six_a_minute_go_on_for_hours() {
        // 600 at 6 a minute are 100 minutes: FM 0.50 up to two hours.
        near(origin(&a_box(1.0).times(600)).fm, 0.50);
    }
}

mod long_run {
    use super::*;
    use lifting::advise::advice::Caution;

    fn long(example: &Example) -> bool {
        example.ask().warns(Caution::PaceAndMix)
    }

    #[test]
    fn is_more_than_ten_in_an_hour() {
        assert!(!long(&a_box(0.2).times(10).within_min(60.0)));
        assert!(long(&a_box(0.2).times(11).within_min(60.0)));
        assert!(
            long(&a_box(0.2).times(11).within_min(5.0)),
            "a short span does not help"
        );
    }

    #[test]
    fn is_fewer_in_an_hour_when_spread_over_hours() {
        assert!(!long(&a_box(0.2).times(20).within_min(120.0)));
        assert!(long(&a_box(0.2).times(21).within_min(120.0)));
    }

    #[test]
    fn without_a_span_is_more_than_ten() {
        assert!(!long(&a_box(0.2).times(10)));
        assert!(long(&a_box(0.2).times(11)));
    }
}

mod end_height_and_grip {
    use super::*;

    #[test]
    fn the_end_is_at_75_cm_or_at_the_start_if_that_is_higher() {
        near(origin(&a_box(1.0)).dm, 0.82 + 4.5 / 75.0);
        near(origin(&a_box(1.0).from_cm(30.0)).dm, 0.82 + 4.5 / 45.0);
        near(origin(&a_box(1.0).from(HeightWord::Chest)).dm, 1.0);
    }

    #[test]
    fn an_end_that_was_said_is_scored_too() {
        assert_eq!(a_box(1.0).ask().0.limit.unwrap().destination, None);
        let destination = a_box(1.0)
            .to_cm(125.0)
            .ask()
            .0
            .limit
            .unwrap()
            .destination
            .unwrap();
        near(destination.vm, 0.85);
        near(destination.dm, 0.82 + 4.5 / 125.0);
    }

    #[test]
    fn grip_is_poor_if_awkward_else_fair_and_an_answer_wins() {
        near(origin(&a_box(1.0)).cm, 0.95);
        near(origin(&a_box(1.0).hard_to_hold()).cm, 0.90);
        near(
            origin(&a_box(1.0).task(|task| task.coupling = Some(Coupling::Good))).cm,
            1.0,
        );
        near(
            origin(
                &a_box(1.0)
                    .hard_to_hold()
                    .task(|task| task.coupling = Some(Coupling::Good)),
            )
            .cm,
            1.0,
        );
        near(
            origin(&a_box(1.0).task(|task| task.coupling = Some(Coupling::Poor))).cm,
            0.90,
        );
    }

    #[test]
    fn twist_counts_at_both_ends() {
        let twisted = a_box(1.0)
            .to_cm(75.0)
            .task(|task| task.twist = Some(lifting::quantity::Degrees::clamped(45.0)));
        near(origin(&twisted).am, 0.856);
        near(
            twisted.ask().0.limit.unwrap().destination.unwrap().am,
            0.856,
        );
    }
}
