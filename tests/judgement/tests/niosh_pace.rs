//! How often and how long: categories with recovery, the special adjustment, infrequent lifting, between the rows,
//! and beyond the cut-offs (DHHS (NIOSH) 94-110, section 1.3.5; `tests/reference/niosh_equation.toml`).

use lifting::limits::niosh::{Duration, Hours, PerMinute, VerticalBand, duration, fm};
use lifting::quantity::{Minutes, OutOfRange};
use std::error::Error;

type Outcome = Result<(), Box<dyn Error>>;

fn after(lifting_min: f64, recovery_min: f64) -> Result<Duration, OutOfRange> {
    Ok(duration(
        Hours::new(lifting_min / 60.0)?,
        Some(Hours::new(recovery_min / 60.0)?),
    ))
}

fn fm_at(per_minute: f64, duration: Duration, band: VerticalBand) -> Result<f64, OutOfRange> {
    Ok(fm(PerMinute::new(per_minute)?, duration, band))
}

fn same(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-9
}

#[test]
fn categories_end_at_one_two_and_eight_hours() -> Outcome {
    let expected = [
        (0.0, Duration::Short),
        (1.0, Duration::Short),
        (1.01, Duration::Moderate),
        (2.0, Duration::Moderate),
        (2.01, Duration::Long),
        (8.0, Duration::Long),
        (8.01, Duration::OverEightHours),
    ];
    for (hours, category) in expected {
        assert_eq!(duration(Hours::new(hours)?, None), category, "{hours} h");
    }
    Ok(())
}

/// The manual's two examples: 45 min of lifting need 54 min of lighter work, 120 min need 36.
#[test]
fn too_little_recovery_means_the_next_longer_category() -> Outcome {
    assert_eq!(after(45.0, 54.0)?, Duration::Short);
    assert_eq!(after(45.0, 53.0)?, Duration::Moderate);
    assert_eq!(after(120.0, 36.0)?, Duration::Moderate);
    assert_eq!(after(120.0, 35.0)?, Duration::Long);
    assert_eq!(after(45.0, 10.0)?, Duration::Long, "not even 0.3 of 45 min");
    assert_eq!(
        after(300.0, 0.0)?,
        Duration::Long,
        "the long category needs the usual breaks only"
    );
    Ok(())
}

/// The manual's example: 10 a minute for 8 of every 15 minutes count as 10 × 8 / 15 = 5.33 a minute.
#[test]
fn lifting_that_fills_a_part_of_the_window_is_averaged() -> Outcome {
    let averaged = PerMinute::averaged_over_window(PerMinute::new(10.0)?, Minutes::new(8.0)?);
    assert!((averaged.value() - 5.33).abs() < 0.005, "{averaged:?}");
    let all_the_time = PerMinute::averaged_over_window(PerMinute::new(10.0)?, Minutes::new(45.0)?);
    assert!(same(all_the_time.value(), 10.0));
    Ok(())
}

#[test]
fn below_a_tenth_a_minute_the_short_column_holds_whatever_the_shift() -> Outcome {
    for band in VerticalBand::ALL {
        assert!(same(fm_at(0.0999, Duration::Long, *band)?, 1.0));
        assert!(same(fm_at(0.0, Duration::OverEightHours, *band)?, 1.0));
        assert!(
            same(fm_at(0.1, Duration::Long, *band)?, 0.85),
            "the first row holds up to 0.2"
        );
        assert!(same(fm_at(0.1, Duration::Moderate, *band)?, 0.95));
    }
    Ok(())
}

#[test]
fn above_fifteen_a_minute_or_eight_hours_there_is_no_limit_to_give() -> Outcome {
    assert!(same(
        fm_at(15.0, Duration::Short, VerticalBand::AtOrAbove)?,
        0.28
    ));
    assert!(same(
        fm_at(15.01, Duration::Short, VerticalBand::AtOrAbove)?,
        0.0
    ));
    assert!(same(
        fm_at(100.0, Duration::Short, VerticalBand::AtOrAbove)?,
        0.0
    ));
    assert!(same(
        fm_at(0.2, Duration::OverEightHours, VerticalBand::AtOrAbove)?,
        0.0
    ));
    Ok(())
}

/// Our choice, worked by hand: halfway between 0.91 and 0.88, and halfway from 0.18 down to the printed 0.00.
#[test]
fn between_rows_it_is_linear() -> Outcome {
    assert!(same(
        fm_at(2.5, Duration::Short, VerticalBand::Below)?,
        0.895
    ));
    assert!(same(
        fm_at(0.35, Duration::Moderate, VerticalBand::Below)?,
        0.935
    ));
    assert!(same(fm_at(8.5, Duration::Long, VerticalBand::Below)?, 0.09));
    assert!(same(
        fm_at(8.5, Duration::Long, VerticalBand::AtOrAbove)?,
        0.165
    ));
    Ok(())
}

/// Ten thousand steps of each column: never rising, never off 0 to 1; more hours and a low grip never give more.
#[test]
fn faster_longer_or_lower_never_gives_more() -> Outcome {
    for duration in Duration::ALL {
        for band in VerticalBand::ALL {
            let mut before = 1.0;
            for step in 0..=10_000 {
                let f = f64::from(step) * 0.002;
                let now = fm_at(f, *duration, *band)?;
                assert!(
                    (0.0..=before).contains(&now),
                    "{f} a minute, {duration:?}, {band:?}: {now}"
                );
                assert!(now <= fm_at(f, *duration, VerticalBand::AtOrAbove)?);
                assert!(now <= fm_at(f, Duration::Short, *band)?);
                before = now;
            }
        }
    }
    Ok(())
}

#[test]
fn a_pace_or_time_that_cannot_be_is_an_error_that_names_the_range() {
    for wrong in [-0.1, 100.1, f64::NAN, f64::INFINITY] {
        let error = PerMinute::new(wrong).expect_err("refused");
        assert_eq!(
            error.to_string(),
            "lifts each minute must be a number from 0 to 100 per min"
        );
    }
    for wrong in [-0.1, 24.1, f64::NAN] {
        let error = Hours::new(wrong).expect_err("refused");
        assert_eq!(error.to_string(), "time must be a number from 0 to 24 h");
    }
}
