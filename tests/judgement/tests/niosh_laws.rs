//! Laws of the lifting equation that hold for every input: total, never not-a-number, never over the load constant,
//! and never more permissive for a harder task.

use lifting::limits::niosh::{
    Hours, Length, LiftingTask, Load, Metric, PerMinute, TaskLimit, UnitSystem, Us, composite,
    task_limit,
};
use lifting::quantity::Degrees;
use lifting::task::Coupling;
use proptest::option;
use proptest::prelude::*;

/// Any length, often near or beyond the cut-offs.
fn length<S: UnitSystem>() -> impl Strategy<Value = Length<S>> {
    let inside = 0.0..=S::V_MAX;
    let anywhere = 0.0..=S::LENGTH_MAX;
    prop_oneof![
        inside,
        anywhere,
        Just(0.0),
        Just(S::H_MIN),
        Just(S::H_MAX),
        Just(S::V_BEST)
    ]
    .prop_filter_map("a length", |value| Length::new(value).ok())
}

fn load<S: UnitSystem>() -> impl Strategy<Value = Load<S>> {
    prop_oneof![0.0..=60.0, 0.0..=S::LOAD_MAX]
        .prop_filter_map("a load", |value| Load::new(value).ok())
}

fn pace() -> impl Strategy<Value = PerMinute> {
    prop_oneof![0.0..=0.3, 0.0..=16.0, 0.0..=100.0].prop_map(PerMinute::clamped)
}

fn hours() -> impl Strategy<Value = Hours> {
    prop_oneof![0.0..=2.5, 0.0..=24.0].prop_map(Hours::clamped)
}

fn twist() -> impl Strategy<Value = Degrees> {
    (0.0..=180.0).prop_map(Degrees::clamped)
}

fn coupling() -> impl Strategy<Value = Coupling> {
    prop::sample::select(Coupling::ALL)
}

fn task_in<S: UnitSystem>() -> impl Strategy<Value = LiftingTask<S>> {
    let place = (length(), length(), twist(), twist());
    let end = (option::of(length()), any::<bool>());
    let time = (pace(), hours(), option::of(hours()));
    let what = (coupling(), load(), load());
    (length(), place, end, time, what).prop_map(|(h, place, end, time, what)| LiftingTask {
        h,
        v_origin: place.0,
        v_destination: place.1,
        a_origin: place.2,
        a_destination: place.3,
        h_destination: end.0,
        control_at_destination: end.1,
        lifts_per_min: time.0,
        hours: time.1,
        recovery_hours: time.2,
        coupling: what.0,
        load_avg: what.1,
        load_max: what.2,
    })
}

fn task() -> impl Strategy<Value = LiftingTask> {
    task_in::<Metric>()
}

/// Every figure is a number in its range, and an index is missing exactly when there is no limit to divide by.
fn well_formed<S: UnitSystem>(limit: &TaskLimit<S>) -> Result<(), TestCaseError> {
    for point in limit.points() {
        for multiplier in [point.hm, point.vm, point.dm, point.am, point.fm, point.cm] {
            prop_assert!((0.0..=1.0).contains(&multiplier), "{:?}", point);
        }
        prop_assert!(point.rwl <= point.lc);
        prop_assert_eq!(point.lifting_index.is_none(), point.rwl.value() <= 0.0);
        prop_assert!(limit.governing_rwl() <= point.rwl);
        if let (Some(governing), Some(index)) = (limit.governing_index(), point.lifting_index) {
            prop_assert!(governing >= index && index.is_finite());
        }
    }
    prop_assert!(limit.strwl <= limit.frequency_independent.firwl);
    prop_assert_eq!(limit.outside.is_empty(), limit.strwl.value() > 0.0);
    prop_assert_eq!(limit.outside.is_empty(), limit.governing_index().is_some());
    prop_assert_eq!(limit.outside.is_empty(), limit.stli.is_some());
    Ok(())
}

/// No index is the least permissive of all.
fn strictness(index: Option<f64>) -> f64 {
    index.unwrap_or(f64::INFINITY)
}

/// The second task gets no more than the first.
fn no_more(easier: &LiftingTask, harder: &LiftingTask) -> Result<(), TestCaseError> {
    let (easier, harder) = (task_limit(easier), task_limit(harder));
    prop_assert!(
        harder.governing_rwl() <= easier.governing_rwl(),
        "{:?}\n{:?}",
        easier,
        harder
    );
    prop_assert!(strictness(harder.governing_index()) >= strictness(easier.governing_index()));
    Ok(())
}

proptest! {
    #[test]
    fn every_task_gets_a_whole_answer(metric in task(), us in task_in::<Us>()) {
        well_formed(&task_limit(&metric))?;
        well_formed(&task_limit(&us))?;
    }

    #[test]
    fn farther_never_gives_more(task in task(), farther in length()) {
        let task = LiftingTask { h_destination: None, ..task };
        let (near, far) = if farther < task.h { (farther, task.h) } else { (task.h, farther) };
        no_more(&LiftingTask { h: near, ..task }, &LiftingTask { h: far, ..task })?;
    }

    #[test]
    fn heavier_never_gives_a_lower_index(task in task(), heavier in load()) {
        let (light, heavy) = if heavier < task.load_max { (heavier, task.load_max) } else { (task.load_max, heavier) };
        no_more(&LiftingTask { load_max: light, ..task }, &LiftingTask { load_max: heavy, ..task })?;
    }

    #[test]
    fn faster_never_gives_more(task in task(), other in pace()) {
        let (slow, fast) = if other < task.lifts_per_min { (other, task.lifts_per_min) } else { (task.lifts_per_min, other) };
        no_more(&LiftingTask { lifts_per_min: slow, ..task }, &LiftingTask { lifts_per_min: fast, ..task })?;
    }

    #[test]
    fn longer_or_less_rested_never_gives_more(task in task(), other in hours(), rest in hours()) {
        let (short, long) = if other < task.hours { (other, task.hours) } else { (task.hours, other) };
        no_more(&LiftingTask { hours: short, ..task }, &LiftingTask { hours: long, ..task })?;
        no_more(&LiftingTask { recovery_hours: None, ..task }, &LiftingTask { recovery_hours: Some(rest), ..task })?;
    }

    #[test]
    fn more_twist_never_gives_more(task in task(), by in twist()) {
        let more = |angle: Degrees| Degrees::clamped(angle.value() + by.value());
        let harder = LiftingTask {
            a_origin: more(task.a_origin),
            a_destination: more(task.a_destination),
            ..task
        };
        no_more(&task, &harder)?;
    }

    #[test]
    fn a_worse_grip_or_a_second_point_never_gives_more(task in task()) {
        let with = |coupling| LiftingTask { coupling, ..task };
        no_more(&with(Coupling::Good), &with(Coupling::Fair))?;
        no_more(&with(Coupling::Fair), &with(Coupling::Poor))?;
        let scored = |control_at_destination| LiftingTask { control_at_destination, ..task };
        no_more(&scored(false), &scored(true))?;
    }

    /// A job is never easier than its hardest task, and a sum of what each task adds.
    #[test]
    fn a_job_is_never_easier_than_its_hardest_task(tasks in prop::collection::vec(task(), 0..6)) {
        if let Some(job) = composite(&tasks) {
            prop_assert!(tasks.len() >= 2);
            prop_assert_eq!(job.shares.len(), tasks.len());
            let hardest = tasks.iter().filter_map(|task| task_limit(task).stli).fold(0.0, f64::max);
            prop_assert!(job.index.is_finite() && job.index >= hardest);
            prop_assert!(job.shares.iter().all(|share| share.adds >= 0.0));
            prop_assert!(job.shares.windows(2).all(|pair| pair[0].stli >= pair[1].stli));
        }
    }

    /// The two printed sets differ by rounding only: 51 lb is 23.13 kg, 10 in is 25.4 cm. Inside the cut-offs of both,
    /// the same task measured twice gets limits within 4 %.
    #[test]
    fn metric_and_us_figures_tell_the_same_story(
        (h, v, to, a) in (26.0..=62.0, 0.0..=174.0, 0.0..=174.0, 0.0..=135.0),
    ) {
        let metric = LiftingTask::<Metric> {
            h: Length::new(h).expect("in range"),
            v_origin: Length::new(v).expect("in range"),
            v_destination: Length::new(to).expect("in range"),
            a_origin: Degrees::clamped(a),
            a_destination: Degrees::clamped(0.0),
            h_destination: None,
            control_at_destination: false,
            lifts_per_min: PerMinute::clamped(0.2),
            hours: Hours::clamped(1.0),
            recovery_hours: None,
            coupling: Coupling::Good,
            load_avg: Load::new(10.0).expect("in range"),
            load_max: Load::new(10.0).expect("in range"),
        };
        let inches = |cm: f64| Length::<Us>::new(cm / 2.54).expect("in range");
        let us = LiftingTask::<Us> {
            h: inches(h),
            v_origin: inches(v),
            v_destination: inches(to),
            a_origin: metric.a_origin,
            a_destination: metric.a_destination,
            h_destination: None,
            control_at_destination: false,
            lifts_per_min: metric.lifts_per_min,
            hours: metric.hours,
            recovery_hours: None,
            coupling: Coupling::Good,
            load_avg: Load::new(22.0).expect("in range"),
            load_max: Load::new(22.0).expect("in range"),
        };
        let kg = task_limit(&metric).strwl.value();
        let lb = task_limit(&us).strwl.value();
        prop_assert!((lb * 0.453_592_37 / kg - 1.0).abs() < 0.04, "{kg} kg, {lb} lb");
    }
}
