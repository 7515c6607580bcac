use crate::answer;
use serde_json::{Value, json};

fn metric() -> Value {
    json!({
        "h_cm": 25, "v_origin_cm": 75, "v_destination_cm": 75, "a_origin_deg": 0, "a_destination_deg": 0,
        "h_destination_cm": null, "control_at_destination": false, "lifts_per_min": 0.2, "hours": 1,
        "coupling": "good", "load_avg_kg": 23, "load_max_kg": 23,
    })
}

/// NIOSH 94-110, example 1 (loading punch press stock), as printed.
fn punch_press() -> Value {
    json!({
        "h_in": 23, "v_origin_in": 15, "v_destination_in": 64, "a_origin_deg": 0, "a_destination_deg": 0,
        "h_destination_in": 23, "control_at_destination": true, "lifts_per_min": 0.2, "hours": 1,
        "coupling": "fair", "load_avg_lb": 44, "load_max_lb": 44,
    })
}

fn with(mut task: Value, key: &str, value: Value) -> Value {
    task[key] = value;
    task
}

fn reply(command: Value) -> Value {
    serde_json::from_str(&answer(&command.to_string()).unwrap()).unwrap()
}

fn ok(command: Value) -> Value {
    let mut reply = reply(command.clone());
    assert_eq!(reply.get("error"), None, "{command}");
    reply["ok"].take()
}

fn limit_of(task: Value) -> Value {
    ok(json!({"do": "task_limit", "tasks": [task]}))["tasks"][0].take()
}

#[track_caller]
fn refuses(command: Value, code: &str, field: &str) {
    let error = reply(command)["error"].take();
    assert_eq!(
        (error["code"].as_str(), error["field"].as_str()),
        (Some(code), Some(field))
    );
}

fn one(task: Value) -> Value {
    json!({"do": "task_limit", "tasks": [task]})
}

fn us(task: Value) -> Value {
    json!({"do": "task_limit", "units": "us", "tasks": [task]})
}

#[test]
fn the_best_place_gives_the_load_constant() {
    let reply = ok(one(metric()));
    let task = &reply["tasks"][0];
    assert_eq!(task["origin"]["lc_kg"], json!(23.0));
    assert_eq!(task["origin"]["rwl_kg"], json!(23.0));
    assert_eq!(task["origin"]["lifting_index"], json!(1.0));
    assert_eq!(task["destination"], Value::Null);
    assert_eq!(
        task["frequency_independent"],
        json!({"firwl_kg": 23.0, "fili": 1.0})
    );
    assert_eq!(task["strwl_kg"], json!(23.0));
    assert_eq!(task["outside"], json!([]));
    assert_eq!(reply["composite_lifting_index"], Value::Null);
}

#[test]
fn us_units_have_their_own_names_and_constants() {
    let task = ok(us(punch_press()))["tasks"][0].take();
    assert_eq!(task["origin"]["lc_lb"], json!(51.0));
    // Printed: 16.3 lb and 14.5 lb, from multipliers rounded to two places (HM at 23 in as 0.44, not 0.4348).
    let near = |value: &Value, printed: f64| (value.as_f64().unwrap() / printed - 1.0).abs() < 0.03;
    assert!(near(&task["origin"]["rwl_lb"], 16.3), "{task}");
    assert!(near(&task["destination"]["rwl_lb"], 14.5), "{task}");
    assert_eq!(task["strwl_lb"], task["destination"]["rwl_lb"]);
}

#[test]
fn fields_of_the_other_units_are_refused() {
    refuses(
        us(with(punch_press(), "h_cm", json!(58))),
        "unknown_field",
        "tasks[0].h_cm",
    );
    refuses(
        one(with(metric(), "load_avg_lb", json!(50))),
        "unknown_field",
        "tasks[0].load_avg_lb",
    );
    refuses(
        json!({"do": "task_limit", "units": "furlong", "tasks": []}),
        "not_a_choice",
        "units",
    );
    assert!(
        ok(json!({"do": "task_limit", "units": "metric", "tasks": [metric()]}))["tasks"].is_array()
    );
}

#[test]
fn beyond_a_cut_off_the_limit_is_zero_and_no_index_is_given() {
    let task = limit_of(with(metric(), "h_cm", json!(64)));
    assert_eq!(task["origin"]["hm"], json!(0.0));
    assert_eq!(task["origin"]["rwl_kg"], json!(0.0));
    assert_eq!(task["origin"]["lifting_index"], Value::Null);
    assert_eq!(task["stli"], Value::Null);
    assert_eq!(task["frequency_independent"]["fili"], Value::Null);
    assert_eq!(task["outside"], json!(["hm"]));
}

#[test]
fn several_tasks_have_a_composite_index() {
    let reply =
        ok(json!({"do": "task_limit", "tasks": [metric(), with(metric(), "h_cm", json!(50))]}));
    assert_eq!(reply["tasks"].as_array().unwrap().len(), 2);
    assert!(reply["composite_lifting_index"].as_f64().unwrap() >= 2.0);
}

#[test]
fn what_cannot_be_is_an_error_with_its_path() {
    refuses(json!({"do": "task_limit"}), "missing_field", "tasks");
    refuses(
        json!({"do": "task_limit", "tasks": []}),
        "out_of_range",
        "tasks",
    );
    refuses(
        one(with(metric(), "h_cm", json!(-1))),
        "out_of_range",
        "tasks[0].h_cm",
    );
    refuses(
        one(with(metric(), "hours", json!(25))),
        "out_of_range",
        "tasks[0].hours",
    );
    refuses(
        one(with(metric(), "load_avg_kg", json!(24))),
        "contradiction",
        "tasks[0].load_avg_kg",
    );
    refuses(
        one(with(metric(), "coupling", json!("firm"))),
        "not_a_choice",
        "tasks[0].coupling",
    );
    refuses(
        json!({"do": "task_limit", "tasks": [metric(), with(metric(), "recovery_hours", json!(-1))]}),
        "out_of_range",
        "tasks[1].recovery_hours",
    );
}

#[test]
fn what_is_not_scored_need_not_be_measured() {
    let mut task = metric();
    task.as_object_mut().unwrap().remove("a_destination_deg");
    task.as_object_mut().unwrap().remove("h_destination_cm");
    assert_eq!(limit_of(task.clone()), limit_of(metric()));
    refuses(
        one(with(task, "control_at_destination", json!(true))),
        "missing_field",
        "tasks[0].a_destination_deg",
    );
}
