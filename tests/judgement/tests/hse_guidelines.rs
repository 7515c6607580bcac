//! The guideline weights of the UK Health and Safety Executive (L23, 4th edition, 2016; INDG143, revision 4, 2020).
//! Data and provenance: `tests/reference/hse_guidelines.toml`.

use lifting::body::Sex;
use lifting::limits::PerMinute;
use lifting::limits::hse::{
    CARRY_WITHOUT_REST, GuideTask, HeightBand, HeightEdges, PUSH_WITHOUT_REST, ReachZone,
    SEATED_MEN, SEATED_WOMEN, frequency_reduction, guide_weight, push_forces, team_guide,
    twist_reduction, zone_weight,
};
use lifting::quantity::{Centimetres, Degrees, Kilograms, OutOfRange, Stature};
use std::error::Error;

type Outcome = Result<(), Box<dyn Error>>;

fn reference() -> Result<toml::Table, toml::de::Error> {
    toml::from_str(include_str!("../../reference/hse_guidelines.toml"))
}

fn number(value: &toml::Value) -> f64 {
    value
        .as_float()
        .or_else(|| {
            value
                .as_integer()
                .and_then(|whole| i32::try_from(whole).ok())
                .map(f64::from)
        })
        .unwrap_or(f64::NAN)
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-9
}

/// A woman of 165 cm lifting close, now and then, without twist. Edges at 23.1, 69.3, 103.95 and 135.3 cm.
fn lift(start: f64, end: f64) -> Result<GuideTask, OutOfRange> {
    Ok(GuideTask {
        sex: Some(Sex::Female),
        stature: Some(Stature::new(165.0)?),
        start: Centimetres::new(start)?,
        end: Centimetres::new(end)?,
        reach: Centimetres::new(30.0)?,
        twist: Degrees::new(0.0)?,
        per_minute: PerMinute::new(0.0)?,
    })
}

fn kg_of(task: &GuideTask) -> f64 {
    guide_weight(task).weight.value()
}

#[test]
fn every_box_of_the_figure() -> Outcome {
    let bands = [
        ("above shoulder", HeightBand::AboveShoulder),
        ("elbow to shoulder", HeightBand::ElbowToShoulder),
        ("knuckle to elbow", HeightBand::KnuckleToElbow),
        ("mid lower leg to knuckle", HeightBand::MidLowerLegToKnuckle),
        ("below mid lower leg", HeightBand::BelowMidLowerLeg),
    ];
    let reference = reference()?;
    let zones = reference["zone"].as_array().ok_or("zones")?;
    assert_eq!(zones.len(), bands.len());
    for (zone, (name, band)) in zones.iter().zip(bands) {
        assert_eq!(zone["band"].as_str(), Some(name));
        for (sex, people) in [(Sex::Female, "women"), (Sex::Male, "men")] {
            for (reach, column) in [(ReachZone::Close, "close_kg"), (ReachZone::Far, "far_kg")] {
                let ours = zone_weight(band, reach, sex).value();
                assert!(
                    near(ours, number(&zone[people][column])),
                    "{name} {people} {column}: {ours}"
                );
            }
        }
    }
    Ok(())
}

/// 0.14, 0.42, 0.63 and 0.82 of 165 cm.
#[test]
fn zones_scale_with_stature() -> Outcome {
    let edges = HeightEdges::of(Stature::new(165.0)?);
    assert!(near(edges.mid_lower_leg, 23.1) && near(edges.knuckle, 69.3));
    assert!(near(edges.elbow, 103.95) && near(edges.shoulder, 135.3));
    Ok(())
}

#[test]
fn the_smallest_figure_of_the_boxes_passed_through_holds() -> Outcome {
    assert!(
        near(kg_of(&lift(80.0, 100.0)?), 16.0),
        "knuckle to elbow only"
    );
    assert!(
        near(kg_of(&lift(30.0, 60.0)?), 13.0),
        "mid lower leg to knuckle only"
    );
    assert!(near(kg_of(&lift(0.0, 75.0)?), 7.0), "from the floor");
    assert!(
        near(kg_of(&lift(80.0, 150.0)?), 7.0),
        "above the shoulder at the end"
    );
    assert!(
        near(kg_of(&lift(150.0, 80.0)?), 7.0),
        "lowering passes the same boxes"
    );
    assert!(
        near(kg_of(&lift(30.0, 120.0)?), 13.0),
        "both neighbours of the best box"
    );
    assert_eq!(
        guide_weight(&lift(0.0, 150.0)?).band,
        HeightBand::BelowMidLowerLeg
    );
    Ok(())
}

#[test]
fn hands_on_an_edge_take_the_smaller_figure() -> Outcome {
    let task = GuideTask {
        stature: Some(Stature::new(150.0)?),
        ..lift(63.0, 80.0)?
    };
    assert!(
        near(kg_of(&task), 13.0),
        "knuckle height is 63 cm at 150 cm"
    );
    Ok(())
}

#[test]
fn beyond_35_cm_the_far_figures_hold() -> Outcome {
    let at = |reach| {
        Ok::<_, OutOfRange>(GuideTask {
            reach: Centimetres::new(reach)?,
            ..lift(80.0, 90.0)?
        })
    };
    assert!(near(kg_of(&at(35.0)?), 16.0));
    assert!(near(kg_of(&at(35.1)?), 10.0));
    assert!(!guide_weight(&at(63.0)?).beyond_boxes);
    assert!(guide_weight(&at(63.1)?).beyond_boxes);
    assert!(guide_weight(&lift(80.0, 176.0)?).beyond_boxes);
    Ok(())
}

#[test]
fn what_is_not_known_is_judged_on_the_careful_side() -> Outcome {
    let man = GuideTask {
        sex: Some(Sex::Male),
        ..lift(80.0, 90.0)?
    };
    assert!(near(kg_of(&man), 25.0));
    assert!(
        near(kg_of(&GuideTask { sex: None, ..man }), 16.0),
        "women's figures"
    );

    // 23 cm is above the middle of the lower leg of a small woman (21.35 cm), not of a tall man (26.18 cm).
    let low = lift(23.0, 60.0)?;
    let with = |cm| {
        Ok::<_, OutOfRange>(kg_of(&GuideTask {
            stature: Some(Stature::new(cm)?),
            ..low
        }))
    };
    assert!(near(with(152.5)?, 13.0) && near(with(187.0)?, 7.0));
    assert!(near(
        kg_of(&GuideTask {
            stature: None,
            ..low
        }),
        7.0
    ));
    Ok(())
}

#[test]
fn printed_reductions_for_how_often() -> Outcome {
    let reference = reference()?;
    for row in reference["frequency_reduction"].as_array().ok_or("rows")? {
        let printed = number(&row["reduce_pct"]) / 100.0;
        let from = number(&row["min_per_min"]);
        let to = row.get("max_per_min").map_or(from + 0.5, number);
        for rate in [from, f64::midpoint(from, to), to] {
            let ours = frequency_reduction(PerMinute::new(rate)?);
            assert!(near(ours, printed), "{rate} a minute: {ours}");
        }
    }
    Ok(())
}

/// House rule: between the printed ranges the stricter neighbour holds; up to 30 an hour nothing is taken off.
#[test]
fn in_the_gaps_the_stricter_neighbour_holds() -> Outcome {
    let expected = [
        (0.0, 0.0),
        (0.5, 0.0),
        (0.51, 0.3),
        (2.01, 0.5),
        (4.9, 0.5),
        (8.01, 0.8),
        (12.0, 0.8),
    ];
    for (rate, share) in expected {
        assert!(
            near(frequency_reduction(PerMinute::new(rate)?), share),
            "{rate} a minute"
        );
    }
    Ok(())
}

#[test]
fn printed_reductions_for_twist_begin_beyond_the_printed_angle() -> Outcome {
    let reference = reference()?;
    let rows = reference["twist_reduction"].as_array().ok_or("rows")?;
    for (row, before) in rows.iter().zip([0.0, 0.1]) {
        let angle = number(&row["beyond_deg"]);
        assert!(
            near(twist_reduction(Degrees::new(angle)?), before),
            "at {angle}"
        );
        let beyond = twist_reduction(Degrees::new(angle + 0.1)?);
        assert!(
            near(beyond, number(&row["reduce_pct"]) / 100.0),
            "beyond {angle}"
        );
    }
    Ok(())
}

/// A man from knuckle to elbow, close, six times a minute, twisting 60 degrees: 25 × 0.5 × 0.9 = 11.25 kg.
#[test]
fn reductions_are_taken_one_after_the_other() -> Outcome {
    let task = GuideTask {
        sex: Some(Sex::Male),
        twist: Degrees::new(60.0)?,
        per_minute: PerMinute::new(6.0)?,
        ..lift(80.0, 90.0)?
    };
    let guide = guide_weight(&task);
    assert!(near(guide.weight.value(), 11.25));
    assert!(near(guide.zone_weight.value(), 25.0));
    Ok(())
}

#[test]
fn carrying_pushing_and_sitting() -> Outcome {
    let reference = reference()?;
    let (carry, push) = (&reference["carrying"], &reference["pushing_pulling"]);
    assert!(near(
        CARRY_WITHOUT_REST.value(),
        number(&carry["max_distance_without_rest_m"])
    ));
    assert!(near(
        PUSH_WITHOUT_REST.value(),
        number(&push["max_distance_without_rest_m"])
    ));
    for (sex, people) in [
        (Some(Sex::Female), "women"),
        (Some(Sex::Male), "men"),
        (None, "women"),
    ] {
        let forces = push_forces(sex);
        assert!(near(
            forces.start_kgf,
            number(&push["start_or_stop_kgf"][people])
        ));
        assert!(near(
            forces.keep_kgf,
            number(&push["keep_moving_kgf"][people])
        ));
    }
    assert!(near(
        SEATED_WOMEN.value(),
        number(&reference["seated"]["women_kg"])
    ));
    assert!(near(
        SEATED_MEN.value(),
        number(&reference["seated"]["men_kg"])
    ));
    Ok(())
}

/// L23's worked example: two people who manage 20 kg each, together 26.6 kg (two thirds of 40, printed cut short).
/// The others follow from the factors: two men at 25 kg 33.3, three 37.5, two women at 16 kg 21.3, three 24.
#[test]
fn teams() -> Outcome {
    let team = |people: usize, each: f64| -> Result<f64, Box<dyn Error>> {
        let own = vec![Kilograms::new(each)?; people];
        Ok(team_guide(&own).ok_or("a figure")?.value())
    };
    let printed = number(&reference()?["team"]["worked_example"]["team_kg_printed"]);
    assert!(near((team(2, 20.0)? * 10.0).floor() / 10.0, printed));
    for (people, each, together) in [
        (2, 25.0, 33.3),
        (3, 25.0, 37.5),
        (2, 16.0, 21.3),
        (3, 16.0, 24.0),
    ] {
        assert!(
            (team(people, each)? - together).abs() < 0.05,
            "{people} at {each} kg"
        );
    }
    assert!(near(team(1, 16.0)?, 16.0));
    assert_eq!(team_guide(&[]), None);
    assert_eq!(
        team_guide(&[Kilograms::new(20.0)?; 4]),
        None,
        "no factor is printed"
    );
    Ok(())
}
