//! The printed multiplier tables, cell by cell. HM, VM and AM: Waters & Putz-Anderson, chapter 46 (tables 46.1 and
//! 46.4 and text) in Marras & Karwowski 2006. FM: DHHS (NIOSH) 94-110, table 5. Data: `tests/reference/`.

use lifting::limits::niosh::{
    Duration, Length, Metric, PerMinute, Us, VerticalBand, am, cm, dm, fm, hm, vm,
};
use lifting::quantity::Degrees;
use lifting::task::Coupling;
use std::error::Error;

type Outcome = Result<(), Box<dyn Error>>;

fn rows(csv: &'static str) -> impl Iterator<Item = Vec<&'static str>> {
    let lines = csv.lines().filter(|line| !line.starts_with('#')).skip(1);
    lines.map(|line| line.split(',').collect())
}

fn half_up(value: f64) -> f64 {
    (value * 100.0 + 0.5 + 1e-9).floor() / 100.0
}

fn same(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-9
}

#[test]
fn printed_cells_are_our_formulas_rounded_half_up_but_for_two() -> Outcome {
    let mut differing = Vec::new();
    let mut cells = 0;
    for row in rows(include_str!("../../reference/niosh_multiplier_checks.csv")) {
        let [multiplier, x, unit, printed, rounded, note] = row[..] else {
            return Err(format!("six columns in {row:?}").into());
        };
        let (x, printed, rounded): (f64, f64, f64) =
            (x.parse()?, printed.parse()?, rounded.parse()?);
        let ours = match (multiplier, unit) {
            ("HM", "in") => hm(Length::<Us>::new(x)?),
            ("HM", "cm") => hm(Length::<Metric>::new(x)?),
            ("VM", "in") => vm(Length::<Us>::new(x)?),
            ("VM", "cm") => vm(Length::<Metric>::new(x)?),
            ("AM", "deg") => am(Degrees::new(x)?),
            _ => return Err(format!("unknown row {row:?}").into()),
        };
        assert!(same(half_up(ours), rounded), "{row:?}: {ours}");
        if !same(half_up(ours), printed) {
            assert!(
                !note.is_empty(),
                "{row:?}: {ours} differs from print without a note"
            );
            differing.push(format!("{multiplier} {x} {unit}"));
        }
        cells += 1;
    }
    assert_eq!(cells, 49);
    assert_eq!(differing, ["HM 22 in", "HM 23 in"]);
    Ok(())
}

#[test]
fn every_cell_of_the_frequency_table_is_printed_here_too() -> Outcome {
    let mut cells = 0;
    for row in rows(include_str!("../../reference/niosh_fm_table.csv")) {
        let frequency = PerMinute::new(row[0].parse()?)?;
        let columns = [Duration::Short, Duration::Moderate, Duration::Long]
            .into_iter()
            .flat_map(|duration| VerticalBand::ALL.iter().map(move |band| (duration, *band)));
        for ((duration, band), printed) in columns.zip(&row[1..]) {
            let ours = fm(frequency, duration, band);
            assert!(
                same(ours, printed.parse()?),
                "{row:?} {duration:?} {band:?}: {ours}"
            );
            cells += 1;
        }
    }
    assert_eq!(cells, 17 * 6);
    Ok(())
}

/// The one FM cell read in print: 10 a minute, up to 8 h, V at least 75 cm, FM 0.13. It comes in a worked example of
/// the Canadian Centre for Occupational Health and Safety ("Frequency Factor"): 23 × 0.93 × 0.71 × 0.13 = 1.97 kg.
#[test]
fn a_published_metric_example_comes_out_as_printed() -> Outcome {
    let ten = PerMinute::new(10.0)?;
    let fm = fm(ten, Duration::Long, VerticalBand::AtOrAbove);
    let rwl = 23.0 * 0.93 * half_up(am(Degrees::new(90.0)?)) * fm;
    assert!(same(half_up(rwl), 1.97), "{rwl}");
    Ok(())
}

/// Section 1.3: at the best value 1, at the end of the range the printed figure, beyond it 0.
#[test]
fn ends_of_the_ranges_in_both_unit_systems() -> Outcome {
    let cm_of = Length::<Metric>::new;
    let in_of = Length::<Us>::new;

    assert!(
        same(hm(cm_of(10.0)?), 1.0),
        "below the smallest reach counts as the smallest"
    );
    assert!(same(hm(in_of(4.0)?), 1.0));
    assert!(hm(cm_of(63.0)?) > 0.0 && same(hm(cm_of(63.01)?), 0.0));
    assert!(hm(in_of(25.0)?) > 0.0 && same(hm(in_of(25.01)?), 0.0));

    assert!(same(half_up(vm(cm_of(0.0)?)), 0.78) && same(half_up(vm(in_of(0.0)?)), 0.78));
    assert!(same(vm(cm_of(175.0)?), 0.70) && same(vm(cm_of(175.01)?), 0.0));
    assert!(same(vm(in_of(70.0)?), 0.70) && same(vm(in_of(70.01)?), 0.0));

    let floor = cm_of(0.0)?;
    assert!(same(dm(floor, cm_of(25.0)?), 1.0) && same(dm(floor, floor), 1.0));
    assert!(same(half_up(dm(floor, cm_of(175.0)?)), 0.85));
    assert!(same(dm(floor, cm_of(175.01)?), 0.0));
    assert!(same(half_up(dm(in_of(0.0)?, in_of(70.0)?)), 0.85));
    assert!(same(dm(in_of(0.0)?, in_of(70.01)?), 0.0));

    assert!(same(am(Degrees::new(135.0)?), 0.568));
    assert!(same(am(Degrees::new(135.01)?), 0.0));
    Ok(())
}

/// Section 1.3.6, table 7. The edge, 75 cm or 30 in, belongs to the upper column.
#[test]
fn coupling_multipliers() -> Outcome {
    let (low, high) = (Length::<Metric>::new(74.9)?, Length::<Metric>::new(75.0)?);
    let expected = [
        (Coupling::Good, 1.0, 1.0),
        (Coupling::Fair, 0.95, 1.0),
        (Coupling::Poor, 0.9, 0.9),
    ];
    for (coupling, below, at_or_above) in expected {
        assert!(same(cm(coupling, low), below), "{coupling:?}");
        assert!(same(cm(coupling, high), at_or_above), "{coupling:?}");
    }
    assert!(same(cm(Coupling::Fair, Length::<Us>::new(29.9)?), 0.95));
    assert!(same(cm(Coupling::Fair, Length::<Us>::new(30.0)?), 1.0));
    Ok(())
}
