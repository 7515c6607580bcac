use crate::answer;
use serde_json::{Value, json};

fn reviewed(until_day: u32, lifts: Value) -> Value {
    let line = json!({"do": "review", "until_day": until_day, "lifts": lifts}).to_string();
    serde_json::from_str(&answer(&line).unwrap()).unwrap()
}

#[test]
fn an_empty_history_says_that_there_is_not_enough() {
    let reply = reviewed(10, json!([]));
    assert_eq!(
        reply["ok"]["pain"][0]["trend_per_week"],
        json!({"have_days": 0, "need_days": 8})
    );
    assert_eq!(
        reply["ok"]["next_morning_per_kg"],
        json!({"have_days": 0, "need_days": 10})
    );
    assert_eq!(reply["ok"]["evenness"], Value::Null);
    assert_eq!(reply["ok"]["weeks"], json!([]));
}

/// Arithmetic on paper: 10 kg three times and 5 kg once in the last week, 2 kg once three weeks before.
#[test]
fn weeks_add_up_mass_times_repetitions_and_leave_no_week_out() {
    let lifts = json!([
        {"day": 20, "decision": "done", "mass_kg": 10, "times": 3, "way": "squat"},
        {"day": 19, "decision": "done_unchanged", "mass_kg": 5, "way": "hinge"},
        {"day": 18, "decision": "left", "mass_kg": 40},
        {"day": 18, "decision": "done_against", "way": "hinge"},
        {"day": 0, "decision": "done", "mass_kg": 2},
        {"day": 21, "decision": "done", "mass_kg": 99},
    ]);
    let reply = reviewed(20, lifts);
    assert_eq!(
        reply["ok"]["weeks"],
        json!([
            {"from_day": 0, "lifted_kg": 2.0, "heaviest_kg": 2.0, "times": 1, "unknown_mass": 0},
            {"from_day": 7, "lifted_kg": 0.0, "heaviest_kg": null, "times": 0, "unknown_mass": 0},
            {"from_day": 14, "lifted_kg": 35.0, "heaviest_kg": 10.0, "times": 5, "unknown_mass": 1},
        ])
    );
    assert_eq!(reply["ok"]["ways"], json!({"hinge": 2, "squat": 1}));
    let counts = &reply["ok"]["counts"];
    for (count, expected) in [
        ("entries", 5),
        ("done", 4),
        ("left", 1),
        ("done_against", 1),
        ("done_unchanged", 1),
        ("days", 4),
        ("no_mass", 1),
        ("no_way", 1),
        ("no_next_morning", 4),
    ] {
        assert_eq!(counts[count], expected, "{count}");
    }
}

/// Pain that falls by one point every seven days, on a straight line.
#[test]
fn a_straight_line_has_its_own_slope_and_an_important_change() {
    let lifts: Vec<Value> = (0..6)
        .flat_map(|week| [week * 7, week * 7 + 1].map(|day| (week, day)))
        .map(|(week, day)| json!({"day": day, "decision": "done", "before_nrs": 8 - week}))
        .collect();
    let reply = reviewed(36, json!(lifts));
    let before = &reply["ok"]["pain"][0];
    assert_eq!(before["kind"], "before");
    assert_eq!(before["days"], 12);
    assert_eq!(before["trend_per_week"]["clear"], true);
    assert!(before["trend_per_week"]["slope"].as_f64().unwrap() < -0.9);
    assert_eq!(
        before["change"],
        json!({"first_nrs": 8.0, "last_nrs": 3.0, "verdict": "less"})
    );
}

#[test]
fn a_number_that_cannot_be_is_refused_with_its_place() {
    for (lift, field) in [
        (
            json!({"day": 1, "decision": "done", "before_nrs": 11}),
            "lifts[0].before_nrs",
        ),
        (
            json!({"day": 1, "decision": "done", "mass_kg": -1}),
            "lifts[0].mass_kg",
        ),
        (
            json!({"day": 1, "decision": "done", "times": 0}),
            "lifts[0].times",
        ),
        (
            json!({"day": 4_000_000, "decision": "done"}),
            "lifts[0].day",
        ),
    ] {
        let reply = reviewed(1, json!([lift]));
        assert_eq!(reply["error"]["code"], "out_of_range", "{reply}");
        assert_eq!(reply["error"]["field"], field);
    }
}
