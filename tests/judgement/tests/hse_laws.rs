//! Laws of the guideline weights that hold for every input: a figure in the printed range, never more for a harder
//! task or for knowing less.

use lifting::body::Sex;
use lifting::limits::PerMinute;
use lifting::limits::hse::{GuideTask, guide_weight};
use lifting::quantity::{Centimetres, Degrees, Stature};
use proptest::option;
use proptest::prelude::*;

fn length() -> impl Strategy<Value = Centimetres> {
    prop_oneof![0.0..=200.0, 0.0..=300.0].prop_map(Centimetres::clamped)
}

fn task() -> impl Strategy<Value = GuideTask> {
    let person = (
        option::of(prop::sample::select(Sex::ALL)),
        option::of((100.0..=230.0).prop_map(Stature::clamped)),
    );
    let rest = (
        (0.0..=180.0).prop_map(Degrees::clamped),
        prop_oneof![0.0..=3.0, 0.0..=20.0].prop_map(PerMinute::clamped),
    );
    (person, length(), length(), length(), rest).prop_map(|(person, start, end, reach, rest)| {
        GuideTask {
            sex: person.0,
            stature: person.1,
            start,
            end,
            reach,
            twist: rest.0,
            per_minute: rest.1,
        }
    })
}

fn kg(task: &GuideTask) -> f64 {
    guide_weight(task).weight.value()
}

/// The second task gets no more than the first.
fn no_more(easier: &GuideTask, harder: &GuideTask) -> Result<(), TestCaseError> {
    prop_assert!(kg(harder) <= kg(easier), "{:?}\n{:?}", easier, harder);
    Ok(())
}

proptest! {
    /// The smallest printed box is 3 kg and the largest 25; at most 80 % and 20 % are taken off.
    #[test]
    fn every_task_gets_a_figure_in_the_printed_range(task in task()) {
        let guide = guide_weight(&task);
        prop_assert!((3.0..=25.0).contains(&guide.zone_weight.value()));
        prop_assert!(guide.weight <= guide.zone_weight);
        prop_assert!(guide.weight.value() >= guide.zone_weight.value() * 0.2 * 0.8 - 1e-9);
    }

    #[test]
    fn farther_faster_or_more_twisted_never_gives_more(
        task in task(),
        farther in length(),
        by_degrees in 0.0..=180.0,
        by_rate in 0.0..=20.0,
    ) {
        let reach = task.reach.at_least(farther);
        let twist = Degrees::clamped(task.twist.value() + by_degrees);
        let per_minute = PerMinute::clamped(task.per_minute.value() + by_rate);
        no_more(&task, &GuideTask { reach, ..task })?;
        no_more(&task, &GuideTask { twist, ..task })?;
        no_more(&task, &GuideTask { per_minute, ..task })?;
    }

    #[test]
    fn a_longer_way_through_the_boxes_never_gives_more(task in task(), start in length(), end in length()) {
        let (low, high) = (task.start.at_most(task.end), task.start.at_least(task.end));
        let wider = GuideTask { start: low.at_most(start), end: high.at_least(end), ..task };
        no_more(&task, &wider)?;
    }

    #[test]
    fn turning_the_lift_round_changes_nothing(task in task()) {
        let lowered = GuideTask { start: task.end, end: task.start, ..task };
        prop_assert_eq!(guide_weight(&lowered), guide_weight(&task));
    }

    /// Between the 5th-percentile woman and the 95th-percentile man (ANSUR II: 152.5 and 187.0 cm).
    #[test]
    fn knowing_less_never_gives_more(task in task(), stature in 152.5..=187.0) {
        let known = GuideTask { stature: Some(Stature::clamped(stature)), ..task };
        no_more(&known, &GuideTask { stature: None, ..task })?;
        no_more(&task, &GuideTask { sex: None, ..task })?;
    }
}
