//! The task of moving a person, as it stands on the wire.

use crate::answer;
use serde_json::{Value, json};

/// Bed to chair, part of the weight, a steadying hand.
fn request() -> Value {
    json!({
        "do": "advise", "task": "transfer",
        "person": {"flags": [], "back_nrs": 2, "back_state": "steady", "knee_left_nrs": 1, "knee_right_nrs": 1, "balance": "good"},
        "transfer": {
            "move": "bed_to_chair", "client_mass_kg": 68, "weight_bearing": "part", "help": "steady_only",
            "follows_steps": "yes", "arms_strong": true, "equipment": ["belt", "stand_aid"], "workers": 1,
            "care_plan": "covers_move", "client_new_signs": [],
        },
    })
}

fn with(key: &str, value: Value) -> Value {
    let mut changed = request();
    changed["transfer"][key] = value;
    changed
}

fn ask(command: &Value) -> Value {
    serde_json::from_str(&answer(&command.to_string()).unwrap()).unwrap()
}

fn refuses(command: &Value, code: &str, field: &str) {
    let reply = ask(command);
    assert_eq!(reply["error"]["code"], code, "{reply}");
    assert_eq!(reply["error"]["field"], field, "{reply}");
}

#[test]
fn the_reply_has_the_shape_of_any_advice() {
    let reply = ask(&request());
    let advice = &reply["ok"];
    assert_eq!(advice["outcome"], "lift");
    assert_eq!(advice["urgency"], "none");
    assert_eq!(advice["ways"], json!(["stand_aid", "stand_pivot_belt"]));
    assert_eq!(advice["changes"], json!([]));
    assert_eq!(advice["loads"], json!([]));
    for null in ["progress", "heaviest_today_kg", "limit"] {
        assert_eq!(advice[null], Value::Null, "{null}");
    }
    for reason in advice["reasons"].as_array().unwrap() {
        assert!(reason["source"].is_string() && reason["step"].is_number());
    }
}

#[test]
fn every_number_and_word_is_checked() {
    for (key, value, code) in [
        ("move", json!("dance"), "not_a_choice"),
        ("move", Value::Null, "missing_field"),
        ("client_mass_kg", json!(1), "out_of_range"),
        ("client_mass_kg", json!(401), "out_of_range"),
        ("staff_share", json!(1.1), "out_of_range"),
        ("staff_share", json!(-0.1), "out_of_range"),
        ("workers", json!(21), "out_of_range"),
        ("hold_min", json!(-1), "out_of_range"),
        ("weight_bearing", json!("some"), "not_a_choice"),
        ("aid", json!("crane"), "not_a_choice"),
        ("care_plan", json!("maybe"), "not_a_choice"),
        ("client_new_signs", json!(["x".repeat(201)]), "too_long"),
        ("client_new_signs", json!(vec!["sore"; 41]), "too_long"),
    ] {
        refuses(&with(key, value), code, &format!("transfer.{key}"));
    }
    refuses(
        &with("equipment", json!(["crane"])),
        "not_a_choice",
        "transfer.equipment[0]",
    );
    refuses(
        &with("weight", json!(68)),
        "unknown_field",
        "transfer.weight",
    );
}

#[test]
fn ways_and_workers_belong_to_a_plan_that_covers_the_move() {
    for key in ["care_plan_ways", "care_plan_workers", "care_plan_old"] {
        let mut unplanned = with("care_plan", json!("none"));
        unplanned["transfer"][key] = match key {
            "care_plan_ways" => json!(["hoist_two"]),
            "care_plan_old" => json!(true),
            _ => json!(2),
        };
        refuses(&unplanned, "contradiction", &format!("transfer.{key}"));
    }
    let named = ask(&with("care_plan_ways", json!(["stand_aid"])));
    assert_eq!(named["ok"]["ways"], json!(["stand_aid"]));
}

#[test]
fn the_floor_has_one_move() {
    let mut floor = request();
    floor["task"] = json!("floor_recovery");
    refuses(&floor, "contradiction", "transfer.move");
    floor["transfer"]["move"] = Value::Null;
    let unnamed = ask(&floor);
    floor["transfer"]["move"] = json!("floor_to_chair");
    assert_eq!(ask(&floor), unnamed);
    floor["task"] = json!("transfer");
    assert_eq!(ask(&floor), unnamed);
}

#[test]
fn a_sign_in_other_words_counts_as_one() {
    let reply = ask(&with("client_new_signs", json!(["looks grey"])));
    assert_eq!(reply["ok"]["outcome"], "do_not_lift");
    assert!(
        !reply.to_string().contains("grey"),
        "what was written does not come back"
    );
}

#[test]
fn an_aid_is_one_more_piece_of_equipment() {
    let mut bare = with("equipment", json!([]));
    assert_eq!(ask(&bare)["ok"]["outcome"], "do_not_lift");
    bare["transfer"]["aid"] = json!("none");
    assert_eq!(ask(&bare)["ok"]["outcome"], "do_not_lift");
    bare["transfer"]["aid"] = json!("stand_aid");
    assert_eq!(ask(&bare)["ok"]["ways"], json!(["stand_aid"]));
}

#[test]
fn null_and_unknown_are_the_same_as_missing() {
    let mut missing = request();
    missing["transfer"]
        .as_object_mut()
        .unwrap()
        .remove("weight_bearing");
    assert_eq!(
        ask(&missing),
        ask(&with("weight_bearing", json!("unknown")))
    );
    assert_eq!(ask(&missing), ask(&with("weight_bearing", Value::Null)));
}
