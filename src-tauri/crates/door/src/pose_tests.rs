use crate::answer;
use serde_json::{Value, json};

fn posed(way: &str, person: Value, object: Value) -> Value {
    let line = json!({"do": "pose", "way": way, "person": person, "object": object}).to_string();
    serde_json::from_str(&answer(&line).unwrap()).unwrap()
}

fn box_on_the_floor() -> Value {
    json!({"mass_kg": 10, "start_height_cm": 10, "width_cm": 40, "depth_cm": 30, "awkward": false})
}

#[test]
fn every_low_way_has_a_figure_for_a_box_on_the_floor() {
    for way in ["hinge", "squat", "lunge", "free_bend", "golfer"] {
        let reply = posed(
            way,
            json!({"stature_cm": 172, "mass_kg": 74}),
            box_on_the_floor(),
        );
        let hands = &reply["ok"]["hands_m"];
        assert!(
            (hands[1].as_f64().unwrap() - 0.10).abs() < 0.005,
            "{way}: {reply}"
        );
        assert_eq!(reply["ok"]["segments"].as_array().unwrap().len(), 15);
    }
}

#[test]
fn what_cannot_be_done_is_said() {
    let reply = posed(
        "upright",
        json!({"stature_cm": 172, "mass_kg": 74}),
        box_on_the_floor(),
    );
    assert_eq!(reply["error"]["code"], "no_posture");
    assert!(
        reply["error"]["field"]
            .as_str()
            .unwrap()
            .starts_with("object.")
    );
}

#[test]
fn the_sore_knee_is_not_the_one_on_the_ground() {
    let on_the_ground = |left: u8, right: u8| {
        let person = json!({"stature_cm": 172, "mass_kg": 74, "knee_left_nrs": left, "knee_right_nrs": right});
        let reply = posed("lunge", person, box_on_the_floor());
        reply["ok"]["contacts"]
            .as_array()
            .unwrap()
            .iter()
            .map(|c| c["name"].as_str().unwrap().to_owned())
            .collect::<Vec<_>>()
    };
    assert_eq!(on_the_ground(6, 0), ["foot_left", "knee_right"]);
    assert_eq!(on_the_ground(0, 6), ["foot_right", "knee_left"]);
}

#[test]
fn an_unknown_way_is_refused() {
    assert!(
        answer(r#"{"do":"pose","way":"leap"}"#)
            .unwrap()
            .contains(r#""code":"not_a_choice","field":"way""#)
    );
}

#[test]
fn a_hand_that_leans_is_among_the_contacts_and_lifts_nothing() {
    let leaning = |support: Value| -> Value {
        let line = json!({
            "do": "pose", "way": "hinge", "person": {"stature_cm": 172, "mass_kg": 74},
            "object": {"mass_kg": 1, "start_height_cm": 5}, "support": support,
        });
        serde_json::from_str(&answer(&line.to_string()).unwrap()).unwrap()
    };
    let reply = leaning(json!({"on": "thigh", "push_n": 60}));
    let contacts = reply["ok"]["contacts"].as_array().unwrap();
    let names: Vec<&Value> = contacts.iter().map(|contact| &contact["name"]).collect();
    assert_eq!(
        names,
        ["foot_left", "foot_right", "hand_left", "thigh_left"]
    );
    assert_eq!(reply["ok"]["load"]["hands"], json!(["hand_right"]));
    for (support, field) in [
        (json!({"on": "thigh", "push_n": 501}), "support.push_n"),
        (
            json!({"on": "thigh", "push_n": 60, "height_cm": 70}),
            "support.height_cm",
        ),
        (
            json!({"on": "furniture", "push_n": 60, "height_cm": 250}),
            "support.height_cm",
        ),
        (
            json!({"on": "furniture", "push_n": 450, "height_cm": 60}),
            "support.push_n",
        ),
        (
            json!({"on": "thigh", "push_n": 60, "hard": 1}),
            "support.hard",
        ),
    ] {
        assert_eq!(leaning(support)["error"]["field"], json!(field));
    }
}
