//! One task with its choices: what is scored, what is outside, what is not covered (DHHS (NIOSH) 94-110, sections
//! 1.2, 1.3 and 2.1.1). Expected figures are worked by hand from the printed constants beside each check.

use lifting::limits::niosh::{
    Hours, Length, LiftingTask, Load, Metric, Multiplier, NotCovered, PerMinute, Us,
    estimated_reach, task_limit,
};
use lifting::quantity::{Centimetres, Degrees, Kilograms, OutOfRange};
use lifting::task::Coupling;
use std::error::Error;

type Outcome = Result<(), Box<dyn Error>>;

/// A 10 kg box with handles, held close, from 75 cm to 100 cm, now and then.
fn easy() -> Result<LiftingTask, OutOfRange> {
    Ok(LiftingTask {
        h: Centimetres::new(25.0)?.into(),
        v_origin: Centimetres::new(75.0)?.into(),
        v_destination: Centimetres::new(100.0)?.into(),
        a_origin: Degrees::new(0.0)?,
        a_destination: Degrees::new(0.0)?,
        h_destination: None,
        control_at_destination: false,
        lifts_per_min: PerMinute::new(0.0)?,
        hours: Hours::new(1.0)?,
        recovery_hours: None,
        coupling: Coupling::Good,
        load_avg: Kilograms::new(10.0)?.into(),
        load_max: Kilograms::new(10.0)?.into(),
    })
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-9
}

#[test]
fn in_the_best_case_the_limit_is_the_load_constant() -> Outcome {
    let limit = task_limit(&easy()?);
    assert!(near(limit.governing_rwl().value(), 23.0));
    assert!(near(
        limit.governing_index().ok_or("an index")?,
        10.0 / 23.0
    ));
    assert_eq!(limit.destination, None);
    assert!(limit.outside.is_empty() && limit.not_covered.is_empty());

    let us: LiftingTask<Us> = LiftingTask {
        h: Length::new(10.0)?,
        v_origin: Length::new(30.0)?,
        v_destination: Length::new(40.0)?,
        a_origin: Degrees::new(0.0)?,
        a_destination: Degrees::new(0.0)?,
        h_destination: None,
        control_at_destination: false,
        lifts_per_min: PerMinute::new(0.0)?,
        hours: Hours::new(1.0)?,
        recovery_hours: None,
        coupling: Coupling::Good,
        load_avg: Load::new(10.0)?,
        load_max: Load::new(10.0)?,
    };
    assert!(near(task_limit(&us).governing_rwl().value(), 51.0));
    Ok(())
}

/// From the floor to 75 cm, 45 cm away, fair grip, 4 a minute for 90 minutes:
/// 23 × 25/45 × 0.775 × (0.82 + 4.5/75) × 1 × 0.72 × 0.95 = 5.9607 kg.
#[test]
fn a_metric_task_worked_by_hand() -> Outcome {
    let task = LiftingTask {
        h: Length::new(45.0)?,
        v_origin: Length::new(0.0)?,
        v_destination: Length::new(75.0)?,
        lifts_per_min: PerMinute::new(4.0)?,
        hours: Hours::new(1.5)?,
        coupling: Coupling::Fair,
        ..easy()?
    };
    let limit = task_limit(&task);
    assert!(
        (limit.strwl.value() - 5.9607).abs() < 0.0001,
        "{:?}",
        limit.strwl
    );
    let alone = limit.frequency_independent;
    assert!(near(alone.firwl.value() * 0.72, limit.strwl.value()));
    Ok(())
}

#[test]
fn the_average_load_makes_the_single_task_index_and_the_largest_every_other() -> Outcome {
    let task = LiftingTask {
        load_max: Load::new(23.0)?,
        load_avg: Load::new(11.5)?,
        ..easy()?
    };
    let limit = task_limit(&task);
    assert!(near(limit.governing_index().ok_or("an index")?, 1.0));
    assert!(near(
        limit.frequency_independent.fili.ok_or("an index")?,
        1.0
    ));
    assert!(near(limit.stli.ok_or("an index")?, 0.5));
    Ok(())
}

#[test]
fn each_cut_off_is_named_and_leaves_no_limit() -> Outcome {
    let easy = easy()?;
    let long_way = LiftingTask {
        v_origin: Length::new(0.0)?,
        v_destination: Length::new(176.0)?,
        ..easy
    };
    let beyond = [
        (
            LiftingTask {
                h: Length::new(63.1)?,
                ..easy
            },
            "hm",
        ),
        (
            LiftingTask {
                v_origin: Length::new(175.1)?,
                ..easy
            },
            "vm",
        ),
        (long_way, "dm"),
        (
            LiftingTask {
                a_origin: Degrees::new(135.1)?,
                ..easy
            },
            "am",
        ),
        (
            LiftingTask {
                lifts_per_min: PerMinute::new(15.1)?,
                ..easy
            },
            "fm",
        ),
    ];
    for (task, id) in beyond {
        let limit = task_limit(&task);
        assert_eq!(
            limit.outside,
            [Multiplier::from_id(id).ok_or("a multiplier")?]
        );
        assert!(near(limit.governing_rwl().value(), 0.0), "{id}");
        assert_eq!(limit.origin.lifting_index, None, "{id}");
        assert_eq!((limit.stli, limit.governing_index()), (None, None), "{id}");
        // What does not depend on frequency is still told when only the frequency is beyond.
        assert_eq!(limit.frequency_independent.fili.is_some(), id == "fm");
    }
    Ok(())
}

#[test]
fn a_destination_beyond_a_cut_off_leaves_no_limit_when_it_is_scored() -> Outcome {
    let far_end = LiftingTask {
        h_destination: Some(Length::new(64.0)?),
        ..easy()?
    };
    assert!(task_limit(&far_end).outside.is_empty());
    let limit = task_limit(&LiftingTask {
        control_at_destination: true,
        ..far_end
    });
    assert_eq!(limit.outside, [Multiplier::Horizontal]);
    assert!(near(limit.governing_rwl().value(), 0.0));
    assert!(limit.origin.lifting_index.is_some());
    assert_eq!(limit.governing_index(), None);
    Ok(())
}

#[test]
fn what_the_equation_does_not_cover_is_said() -> Outcome {
    let easy = easy()?;
    let whole_night = LiftingTask {
        hours: Hours::new(9.0)?,
        lifts_per_min: PerMinute::new(1.0)?,
        ..easy
    };
    let limit = task_limit(&whole_night);
    assert_eq!(limit.not_covered, [NotCovered::OverEightHours]);
    assert_eq!(limit.outside, [Multiplier::Frequency]);

    let top_shelf = LiftingTask {
        v_destination: Length::new(180.0)?,
        ..easy
    };
    assert_eq!(
        task_limit(&top_shelf).not_covered,
        [NotCovered::DestinationTooHigh]
    );
    let with_care = LiftingTask {
        control_at_destination: true,
        ..top_shelf
    };
    assert_eq!(task_limit(&with_care).outside, [Multiplier::Vertical]);
    Ok(())
}

/// Section 1.3.1: 20 + W/2 cm, or 25 + W/2 with the hands below 25 cm; 8 + W/2 in, or 10 + W/2 below 10 in.
#[test]
fn reach_is_estimated_from_the_depth_of_the_load() -> Outcome {
    let deep = Length::<Metric>::new(30.0)?;
    assert!(near(
        estimated_reach(deep, Length::new(25.0)?).value(),
        35.0
    ));
    assert!(near(
        estimated_reach(deep, Length::new(24.9)?).value(),
        40.0
    ));
    let deep = Length::<Us>::new(12.0)?;
    assert!(near(
        estimated_reach(deep, Length::new(10.0)?).value(),
        14.0
    ));
    assert!(near(estimated_reach(deep, Length::new(9.9)?).value(), 16.0));
    Ok(())
}

#[test]
fn lengths_and_loads_that_cannot_be_are_errors_in_their_own_unit() {
    let error = Length::<Us>::new(-1.0).expect_err("negative");
    assert_eq!(
        error.to_string(),
        "length must be a number from 0 to 120 in"
    );
    let error = Load::<Us>::new(f64::NAN).expect_err("not a number");
    assert_eq!(error.to_string(), "load must be a number from 0 to 2200 lb");
    let error = Length::<Metric>::new(300.5).expect_err("too long");
    assert_eq!(
        error.to_string(),
        "length must be a number from 0 to 300 cm"
    );
}
