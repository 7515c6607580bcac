//! Worked examples 1 to 5 of the Applications Manual (Waters, Putz-Anderson & Garg 1994, DHHS (NIOSH) 94-110,
//! section 3), in the inches and pounds they are printed in. Data and provenance: `tests/reference/niosh_examples.toml`.

use lifting::limits::niosh::{
    Hours, Length, LiftingTask, Load, PerMinute, PointScore, TaskLimit, Us, task_limit,
};
use lifting::quantity::Degrees;
use lifting::task::Coupling;
use serde::Deserialize;
use std::error::Error;

#[derive(Deserialize)]
struct Reference {
    example: Vec<Example>,
}

#[derive(Deserialize)]
struct Example {
    number: u32,
    load_avg_lb: f64,
    load_max_lb: f64,
    d_in: f64,
    lifts_per_min: f64,
    coupling: String,
    significant_control_at_destination: bool,
    point: Vec<Point>,
}

#[derive(Deserialize)]
struct Point {
    #[serde(rename = "where")]
    place: String,
    h_in: f64,
    v_in: f64,
    a_deg: f64,
    mult: Printed,
    printed_rwl_lb: f64,
    printed_li: f64,
    recomputed_rwl_exact_lb: f64,
    recomputed_li_exact: f64,
}

#[derive(Deserialize)]
#[allow(non_snake_case, reason = "the equation's own symbols")]
struct Printed {
    HM: f64,
    VM: f64,
    DM: f64,
    AM: f64,
    FM: f64,
    CM: f64,
}

fn reference() -> Result<Vec<Example>, toml::de::Error> {
    let reference: Reference = toml::from_str(include_str!("../../reference/niosh_examples.toml"))?;
    Ok(reference.example)
}

/// The task of an example. All five last up to an hour with enough lighter work after it. Example 3 does not score
/// its destination, which is 36 in high and 10 in away.
fn task_of(example: &Example) -> Result<LiftingTask<Us>, Box<dyn Error>> {
    let origin = example.point.first().ok_or("an example has an origin")?;
    let (h, v, a) = example
        .point
        .get(1)
        .map_or((10.0, 36.0, 45.0), |end| (end.h_in, end.v_in, end.a_deg));
    Ok(LiftingTask {
        h: Length::new(origin.h_in)?,
        v_origin: Length::new(origin.v_in)?,
        v_destination: Length::new(v)?,
        a_origin: Degrees::new(origin.a_deg)?,
        a_destination: Degrees::new(a)?,
        h_destination: Some(Length::new(h)?),
        control_at_destination: example.significant_control_at_destination,
        lifts_per_min: PerMinute::new(example.lifts_per_min)?,
        hours: Hours::new(1.0)?,
        recovery_hours: None,
        coupling: Coupling::from_id(&example.coupling).ok_or("a coupling")?,
        load_avg: Load::new(example.load_avg_lb)?,
        load_max: Load::new(example.load_max_lb)?,
    })
}

/// Each printed point of each example with what we make of it.
fn each_point(check: impl Fn(&Example, &Point, &PointScore<Us>)) -> Result<(), Box<dyn Error>> {
    let examples = reference()?;
    assert_eq!(examples.len(), 5);
    for example in &examples {
        let limit: TaskLimit<Us> = task_limit(&task_of(example)?);
        let scored: Vec<_> = limit.points().collect();
        assert_eq!(
            scored.len(),
            example.point.len(),
            "example {}",
            example.number
        );
        for (printed, ours) in example.point.iter().zip(&scored) {
            check(example, printed, ours);
        }
    }
    Ok(())
}

fn half_up(value: f64, decimals: i32) -> f64 {
    let scale = 10_f64.powi(decimals);
    (value * scale + 0.5 + 1e-9).floor() / scale
}

fn near(ours: f64, theirs: f64, within: f64) -> bool {
    (ours - theirs).abs() <= within
}

/// Each printed multiplier has two decimals, a half unit of which is up to 1 % of it; five or six of them together
/// come to 2.4 % at most here (example 1, where the table's 0.44 for 23 in stands for 0.4348).
#[test]
fn printed_limits_are_met_within_the_rounding_of_the_printed_tables() -> Result<(), Box<dyn Error>>
{
    each_point(|example, printed, ours| {
        let (rwl, theirs) = (ours.rwl.value(), printed.printed_rwl_lb);
        assert!(
            near(rwl, theirs, 0.025 * theirs),
            "example {} {}: {rwl} against {theirs} lb",
            example.number,
            printed.place
        );
    })
}

#[test]
fn exact_limits_and_indices_are_those_of_the_unrounded_formulas() -> Result<(), Box<dyn Error>> {
    each_point(|example, printed, ours| {
        let label = format!("example {} {}", example.number, printed.place);
        assert!(
            near(ours.rwl.value(), printed.recomputed_rwl_exact_lb, 0.01),
            "{label}"
        );
        let index = ours.lifting_index.expect("within the cut-offs");
        assert!(
            near(index, printed.recomputed_li_exact, 0.005 + 1e-9),
            "{label}: {index}"
        );
    })
}

/// From our formulas to the page: round each multiplier as printed, multiply, round to 0.1 lb, divide, round to 0.1.
#[test]
fn rounding_as_the_manual_does_gives_its_printed_results() -> Result<(), Box<dyn Error>> {
    each_point(|example, printed, ours| {
        let label = format!("example {} {}", example.number, printed.place);
        // The HM table prints 0.44 for 23 in, where the formula gives 0.4348.
        let hm = if near(printed.h_in, 23.0, 0.0) {
            0.44
        } else {
            half_up(ours.hm, 2)
        };
        let page = &printed.mult;
        let rounded = [
            (hm, page.HM),
            (half_up(ours.vm, 2), page.VM),
            (half_up(ours.dm, 2), page.DM),
            (half_up(ours.am, 2), page.AM),
            (half_up(ours.fm, 2), page.FM),
            (half_up(ours.cm, 2), page.CM),
        ];
        for (ours, theirs) in rounded {
            assert!(near(ours, theirs, 1e-9), "{label}: {ours} against {theirs}");
        }
        let rwl = half_up(
            rounded.iter().map(|(ours, _)| ours).product::<f64>() * 51.0,
            1,
        );
        assert!(near(rwl, printed.printed_rwl_lb, 1e-9), "{label}: {rwl} lb");
        let index = half_up(example.load_max_lb / rwl, 1);
        assert!(near(index, printed.printed_li, 1e-9), "{label}: {index}");
    })
}

#[test]
fn the_distance_is_the_difference_of_the_two_heights() -> Result<(), Box<dyn Error>> {
    for example in reference()? {
        let task = task_of(&example)?;
        let moved = (task.v_destination.value() - task.v_origin.value()).abs();
        assert!(
            near(moved, example.d_in, 1e-9),
            "example {}",
            example.number
        );
    }
    Ok(())
}

/// Package inspection, example 4: 0.7 where it is picked up, 1.7 where it is put down. The destination governs.
#[test]
fn the_point_with_the_smaller_limit_governs() -> Result<(), Box<dyn Error>> {
    let examples = reference()?;
    let inspection = examples.get(3).ok_or("example 4")?;
    let limit = task_limit(&task_of(inspection)?);
    let destination = limit.destination.ok_or("scored")?;
    assert_eq!(limit.governing_rwl(), destination.rwl);
    assert_eq!(limit.governing_index(), destination.lifting_index);
    assert!(limit.origin.lifting_index < destination.lifting_index);
    Ok(())
}

/// Dish-washing machine unloading, example 5, from 44 in down to 7 in: lowering counts like lifting.
#[test]
fn lowering_counts_like_lifting() -> Result<(), Box<dyn Error>> {
    let examples = reference()?;
    let lowering = task_of(examples.get(4).ok_or("example 5")?)?;
    let lifting = LiftingTask {
        v_origin: lowering.v_destination,
        v_destination: lowering.v_origin,
        ..lowering
    };
    assert!(lowering.v_origin > lowering.v_destination);
    assert_eq!(task_limit(&lowering).strwl, task_limit(&lifting).strwl);
    Ok(())
}
