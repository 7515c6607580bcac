use super::*;
use crate::advise::ObjectWire;
use lifting::advise::advice::Ranked;
use lifting::quantity::{Centimetres, Kilograms, Metres};
use lifting::task::Task;
use lifting::way::Way;

fn kg(mass: f64) -> Kilograms {
    Kilograms::new(mass).unwrap()
}

fn cm(length: f64) -> Centimetres {
    Centimetres::new(length).unwrap()
}

fn every_step() -> Vec<ChangeStep> {
    vec![
        ChangeStep::FindMass {
            go_on_up_to: kg(11.5),
        },
        ChangeStep::BringCloser { to: cm(30.0) },
        ChangeStep::BetterGrip,
        ChangeStep::TurnFeet,
        ChangeStep::RaiseStart { to: cm(50.0) },
        ChangeStep::RaiseEnd { to: cm(80.0) },
        ChangeStep::LowerEnd { to: cm(90.0) },
        ChangeStep::Split {
            parts: 3,
            each: kg(4.0),
            lifts: Some(Repetitions::of(120)),
        },
        ChangeStep::Lighten { to: kg(6.0) },
        ChangeStep::ShortenBout {
            to: Repetitions::of(8),
        },
        ChangeStep::CarryInStages {
            to: Metres::new(10.0).unwrap(),
        },
        ChangeStep::SecondPerson { judged_at: kg(9.0) },
        ChangeStep::ThreePeople { judged_at: kg(8.0) },
    ]
}

/// A task with a guess, words and measures, so that a change has something to take away.
fn object() -> Map<String, Value> {
    let object = json!({
        "mass_known": false, "guess_low_kg": 5, "guess_high_kg": 20, "awkward": true, "start_height": "floor",
        "end_height_cm": 150, "reach": "far", "twist_deg": 60, "carry_m": 40, "coupling": "poor",
        "width_cm": 40, "depth_cm": 30, "reps": 40, "span_min": 30,
    });
    object.as_object().cloned().unwrap()
}

fn task(object: Map<String, Value>) -> Task {
    crate::read::<ObjectWire>(object)
        .unwrap()
        .checked()
        .unwrap()
}

fn change(steps: Vec<ChangeStep>) -> Change {
    Change::of(
        steps,
        Ranked {
            first: Way::Squat,
            others: vec![Way::HalfKneelingLunge],
        },
    )
}

fn after(reply: &ChangeReply) -> Task {
    let mut changed = object();
    changed.extend(reply.set.clone());
    task(changed)
}

#[test]
fn the_fields_set_are_what_the_judgement_judged() {
    for step in every_step() {
        let change = change(vec![step]);
        assert_eq!(
            after(&change_reply(&change)),
            change.apply(&task(object())),
            "{step:?}"
        );
    }
}

#[test]
fn a_later_step_overwrites_an_earlier_one_as_it_does_in_the_judgement() {
    for first in every_step() {
        for second in every_step() {
            let change = change(vec![first, second]);
            assert_eq!(
                after(&change_reply(&change)),
                change.apply(&task(object())),
                "{first:?} {second:?}"
            );
        }
    }
}

#[test]
fn every_kind_of_change_is_covered_here() {
    let kinds: Vec<&str> = every_step().iter().map(ChangeStep::id).collect();
    assert_eq!(kinds, ChangeStep::IDS);
}

#[test]
fn one_step_stands_by_itself() {
    let reply = serde_json::to_value(change_reply(&change(vec![ChangeStep::RaiseStart {
        to: cm(50.0),
    }])))
    .unwrap();
    assert_eq!(
        reply,
        json!({"kind": "raise_start", "to_cm": 50.0, "ways": ["squat", "lunge"],
               "set": {"start_height": null, "start_height_cm": 50.0}})
    );
}

#[test]
fn several_steps_are_combined() {
    let steps = vec![
        ChangeStep::BringCloser { to: cm(30.0) },
        ChangeStep::Split {
            parts: 3,
            each: kg(4.0),
            lifts: Some(Repetitions::of(120)),
        },
    ];
    let reply = serde_json::to_value(change_reply(&change(steps))).unwrap();
    assert_eq!(reply["kind"], json!("combined"));
    assert_eq!(
        reply["steps"],
        json!([{"kind": "bring_closer", "to_cm": 30.0}, {"kind": "split_load", "parts": 3, "each_kg": 4.0, "reps": 120}])
    );
}

#[test]
fn in_parts_the_number_of_lifts_is_set_too_and_left_alone_where_it_is_not_known() {
    let split = |lifts| {
        let step = ChangeStep::Split {
            parts: 2,
            each: kg(4.0),
            lifts,
        };
        serde_json::to_value(change_reply(&change(vec![step]))).unwrap()
    };
    let sixteen = split(Some(Repetitions::of(16)));
    assert_eq!(sixteen["set"]["reps"], json!(16));
    assert_eq!(sixteen["reps"], json!(16));
    let not_known = split(None);
    assert!(not_known["set"].get("reps").is_none());
    assert!(not_known.get("reps").is_none());
}
