//! The composite lifting index (DHHS (NIOSH) 94-110, sections 2.4 and 2.4.5: the three-task example). Data and
//! provenance: `tests/reference/niosh_examples.toml`, `[cli_example]`.

use lifting::limits::niosh::{
    Duration, Hours, Length, LiftingTask, Load, PerMinute, Us, composite, task_limit,
};
use lifting::quantity::{Degrees, OutOfRange};
use lifting::task::Coupling;
use serde::Deserialize;
use std::error::Error;

type Outcome = Result<(), Box<dyn Error>>;

#[derive(Deserialize)]
struct Reference {
    cli_example: Job,
}

#[derive(Deserialize)]
struct Job {
    printed_cli: f64,
    printed_increments: Vec<f64>,
    task: Vec<Row>,
}

#[derive(Deserialize)]
struct Row {
    load_lb: f64,
    f: f64,
    firwl_lb: f64,
    strwl_lb: f64,
    fili: f64,
    stli: f64,
}

fn example() -> Result<Job, toml::de::Error> {
    let reference: Reference = toml::from_str(include_str!("../../reference/niosh_examples.toml"))?;
    Ok(reference.cli_example)
}

/// A task with a wanted FIRWL of 20 lb or less: 25 in away (HM 0.4) at the best height, twisted just enough.
fn task_with(firwl_lb: f64, load_lb: f64, per_minute: f64) -> Result<LiftingTask<Us>, OutOfRange> {
    let twist = (1.0 - firwl_lb / (51.0 * 0.4)) / 0.0032;
    Ok(LiftingTask {
        h: Length::new(25.0)?,
        v_origin: Length::new(30.0)?,
        v_destination: Length::new(30.0)?,
        a_origin: Degrees::new(twist)?,
        a_destination: Degrees::new(0.0)?,
        h_destination: None,
        control_at_destination: false,
        lifts_per_min: PerMinute::new(per_minute)?,
        hours: Hours::new(1.0)?,
        recovery_hours: None,
        coupling: Coupling::Good,
        load_avg: Load::new(load_lb)?,
        load_max: Load::new(load_lb)?,
    })
}

fn job() -> Result<Vec<LiftingTask<Us>>, Box<dyn Error>> {
    let tasks = example()?.task;
    let tasks: Result<Vec<_>, _> = tasks
        .iter()
        .map(|row| task_with(row.firwl_lb, row.load_lb, row.f))
        .collect();
    Ok(tasks?)
}

fn near(a: f64, b: f64, within: f64) -> bool {
    (a - b).abs() <= within
}

#[test]
fn each_task_of_the_example_alone() -> Outcome {
    for (row, task) in example()?.task.iter().zip(job()?) {
        let limit = task_limit(&task);
        let alone = limit.frequency_independent;
        assert!(near(alone.firwl.value(), row.firwl_lb, 1e-9));
        assert!(
            near(limit.strwl.value(), row.strwl_lb, 1e-9),
            "{:?}",
            limit.strwl
        );
        assert!(near(alone.fili.ok_or("a FILI")?, row.fili, 0.005));
        // 30 / 18.8 = 1.596, 20 / 18.2 = 1.099, 10 / 12.6 = 0.794: printed with one decimal.
        assert!(near(limit.stli.ok_or("an STLI")?, row.stli, 0.05));
    }
    Ok(())
}

#[test]
fn the_three_task_example_gives_its_printed_index_and_increments() -> Outcome {
    let printed = example()?;
    let index = composite(&job()?).ok_or("defined")?;
    assert!(
        near(index.index, printed.printed_cli, 0.05),
        "{}",
        index.index
    );
    // By hand, unrounded: 30/18.8 + 1.0 (1/0.88 − 1/0.94) + 0.6667 (1/0.70 − 1/0.88) = 1.8631.
    assert!(near(index.index, 1.8631, 0.00005), "{}", index.index);
    let increments: Vec<f64> = index
        .shares
        .iter()
        .skip(1)
        .map(|share| share.adds)
        .collect();
    assert_eq!(increments.len(), printed.printed_increments.len());
    for (ours, theirs) in increments.iter().zip(&printed.printed_increments) {
        assert!(near(*ours, *theirs, 0.0055), "{ours} against {theirs}");
    }
    Ok(())
}

#[test]
fn the_order_in_which_tasks_are_given_does_not_matter() -> Outcome {
    let mut tasks = job()?;
    let given = composite(&tasks).ok_or("defined")?;
    tasks.reverse();
    let reversed = composite(&tasks).ok_or("defined")?;
    assert!(near(given.index, reversed.index, 1e-12));
    assert_eq!(
        given
            .shares
            .iter()
            .map(|share| share.task)
            .collect::<Vec<_>>(),
        [0, 1, 2]
    );
    assert_eq!(
        reversed
            .shares
            .iter()
            .map(|share| share.task)
            .collect::<Vec<_>>(),
        [2, 1, 0]
    );
    Ok(())
}

#[test]
fn equal_tasks_keep_the_order_given() -> Outcome {
    let same = task_with(20.0, 20.0, 1.0)?;
    let index = composite(&[same, same, same]).ok_or("defined")?;
    assert_eq!(
        index
            .shares
            .iter()
            .map(|share| share.task)
            .collect::<Vec<_>>(),
        [0, 1, 2]
    );
    Ok(())
}

/// The longest category of the set holds for all: one task of four hours puts every FM in the long columns.
#[test]
fn the_longest_duration_of_the_set_holds_for_the_job() -> Outcome {
    let short = task_with(20.0, 20.0, 1.0)?;
    let long = LiftingTask {
        hours: Hours::new(4.0)?,
        ..task_with(20.0, 10.0, 1.0)?
    };
    let index = composite(&[short, long]).ok_or("defined")?;
    assert_eq!(index.duration, Duration::Long);
    // By hand: 20/(20 × 0.75) + 10/20 × (1/0.65 − 1/0.75) = 1.4359.
    assert!(near(index.index, 1.4359, 0.00005), "{}", index.index);
    Ok(())
}

/// At 9 lifts a minute over a long day the printed FM is 0.00 below 30 in and 0.15 from there up.
#[test]
fn each_task_reads_the_summed_frequency_in_its_own_height_band() -> Outcome {
    let day = |task: LiftingTask<Us>| LiftingTask {
        hours: Hours::clamped(8.0),
        ..task
    };
    let high = day(task_with(20.0, 10.0, 4.5)?);
    assert!(composite(&[high, high]).is_some());
    // Lighter, so that it is the second task and its band is the one that is read.
    let low = LiftingTask {
        v_origin: Length::new(29.0)?,
        v_destination: Length::new(29.0)?,
        load_avg: Load::new(5.0)?,
        load_max: Load::new(5.0)?,
        ..high
    };
    assert_eq!(composite(&[high, low]), None);
    Ok(())
}

/// Section 2.4: STLI from the average load, increments from the largest. By hand, all at 20 lb and 1 a minute:
/// 20/(20 × 0.94) + 30/20 × (1/0.91 − 1/0.94) = 1.1164, the second task averaging 10 lb with 30 lb at most.
#[test]
fn increments_are_made_from_the_largest_load() -> Outcome {
    let first = task_with(20.0, 20.0, 1.0)?;
    let uneven = LiftingTask {
        load_max: Load::new(30.0)?,
        ..task_with(20.0, 10.0, 1.0)?
    };
    let index = composite(&[first, uneven]).ok_or("defined")?;
    assert!(near(index.index, 1.1164, 0.00005), "{}", index.index);
    Ok(())
}

/// Tasks with 40 lb at the origin, 12.75 in away, and 20 lb at a destination that is scored. Each counts by its harder
/// point: 20/(20 × 0.94) + 10/20 × (1/0.91 − 1/0.94) = 1.0814.
#[test]
fn the_harder_of_two_scored_points_counts() -> Outcome {
    let from_nearby = |task: LiftingTask<Us>| -> Result<LiftingTask<Us>, OutOfRange> {
        Ok(LiftingTask {
            h: Length::new(12.75)?,
            a_origin: Degrees::new(0.0)?,
            h_destination: Some(task.h),
            a_destination: task.a_origin,
            control_at_destination: true,
            ..task
        })
    };
    let tasks = [
        from_nearby(task_with(20.0, 20.0, 1.0)?)?,
        from_nearby(task_with(20.0, 10.0, 1.0)?)?,
    ];
    assert!(near(
        task_limit(&tasks[0]).origin.rwl.value(),
        40.0 * 0.94,
        1e-9
    ));
    let index = composite(&tasks).ok_or("defined")?;
    assert!(near(index.index, 1.0814, 0.00005), "{}", index.index);
    Ok(())
}

#[test]
fn no_index_for_one_task_or_beyond_a_cut_off() -> Outcome {
    let fine = task_with(20.0, 20.0, 1.0)?;
    assert_eq!(composite::<Us>(&[]), None);
    assert_eq!(composite(&[fine]), None);
    let too_far = LiftingTask {
        h: Length::new(26.0)?,
        ..fine
    };
    assert_eq!(composite(&[fine, too_far]), None);
    let fast = task_with(20.0, 5.0, 8.0)?;
    assert!(task_limit(&fast).stli.is_some());
    assert_eq!(composite(&[fast, fast]), None, "16 a minute together");
    Ok(())
}
