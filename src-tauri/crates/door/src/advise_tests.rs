use crate::answer;
use serde_json::{Value, json};

/// A request that gets advice; tests change one thing about it.
fn request() -> Value {
    json!({
        "do": "advise",
        "task": "object",
        "person": {"flags": [], "back_nrs": 2, "back_state": "steady", "knee_left_nrs": 0, "knee_right_nrs": 0,
                   "balance": "good", "can_kneel": "yes"},
        "object": {"mass_kg": 5, "start_height": "floor", "reach": "close", "reps": 1},
    })
}

/// The request with the value at a path replaced or added; `null` stands for itself.
fn with(pointer: &str, value: Value) -> Value {
    let mut request = request();
    set(&mut request, pointer, value);
    request
}

fn set(request: &mut Value, pointer: &str, value: Value) {
    let (parent, key) = pointer.rsplit_once('/').unwrap();
    request.pointer_mut(parent).unwrap()[key] = value;
}

fn reply(request: &Value) -> Value {
    serde_json::from_str(&answer(&request.to_string()).unwrap()).unwrap()
}

fn ok(request: &Value) -> Value {
    let mut reply = reply(request);
    assert_eq!(reply.get("error"), None, "{request}");
    reply["ok"].take()
}

fn fault(request: &Value) -> (String, String) {
    let error = &reply(request)["error"];
    let text = |value: &Value| value.as_str().unwrap_or("null").to_owned();
    (text(&error["code"]), text(&error["field"]))
}

#[track_caller]
fn refuses(request: &Value, code: &str, field: &str) {
    assert_eq!(fault(request), (code.to_owned(), field.to_owned()));
}

#[test]
fn the_reply_has_every_key() {
    let reply = ok(&request());
    let keys = [
        "outcome",
        "urgency",
        "ways",
        "ruled_out",
        "cautions",
        "alternatives",
        "changes",
        "reasons",
        "progress",
        "heaviest_today_kg",
        "limit",
        "loads",
    ];
    for key in keys {
        assert!(reply.get(key).is_some(), "{key}");
    }
    assert_eq!(reply.as_object().unwrap().len(), keys.len());
    assert_eq!(reply["progress"], Value::Null);
}

#[test]
fn loads_are_modelled_for_ways_offered() {
    let reply = ok(&request());
    let loads = reply["loads"].as_array().unwrap();
    assert!(!loads.is_empty());
    for way in loads {
        assert!(
            reply["ways"].as_array().unwrap().contains(&way["way"]),
            "{way}"
        );
        assert!(way["compression_n"].as_f64().unwrap() > 0.0, "{way}");
        assert_eq!(way.as_object().unwrap().len(), 9);
    }
}

#[test]
fn every_reason_says_where_it_comes_from() {
    let reply = ok(&request());
    let reasons = reply["reasons"].as_array().unwrap();
    assert!(!reasons.is_empty());
    for reason in reasons {
        for key in ["id", "authority", "source", "sure"] {
            assert!(reason[key].is_string(), "{reason}");
        }
        assert!(
            (1..=7).contains(&reason["step"].as_u64().unwrap()),
            "{reason}"
        );
        assert!(reason["args"].is_object());
        assert_eq!(reason["text"], Value::Null);
    }
}

#[test]
fn sentences_are_filled_in_where_there_are_some() {
    struct Loud;
    impl crate::Texts for Loud {
        fn reason(&self, reason: &lifting::reason::Reason) -> Option<String> {
            Some(reason.id.id().to_uppercase())
        }
    }
    let line = crate::answer_with(&request().to_string(), &Loud).unwrap();
    let reply: Value = serde_json::from_str(&line).unwrap();
    let reason = &reply["ok"]["reasons"][0];
    assert_eq!(
        reason["text"].as_str(),
        Some(reason["id"].as_str().unwrap().to_uppercase().as_str())
    );
}

#[test]
fn warning_signs_must_have_been_asked() {
    let mut unasked = request();
    unasked["person"].as_object_mut().unwrap().remove("flags");
    refuses(&unasked, "answer_needed", "person.flags");
    refuses(
        &with("/person/flags", Value::Null),
        "answer_needed",
        "person.flags",
    );
}

#[test]
fn a_plan_must_say_whether_it_holds() {
    refuses(
        &with("/plan", json!({"max_kg": 7})),
        "answer_needed",
        "plan.valid",
    );
    assert!(ok(&with("/plan", json!({"valid": false, "weeks_overdue": 2})))["outcome"].is_string());
    refuses(
        &with("/plan", json!({"valid": true, "weeks_overdue": 2})),
        "contradiction",
        "plan.weeks_overdue",
    );
}

#[test]
fn the_task_must_be_named_and_its_part_be_there() {
    refuses(&with("/task", Value::Null), "missing_field", "task");
    refuses(&with("/task", json!("dance")), "not_a_choice", "task");
    for task in ["transfer", "floor_recovery"] {
        let mut moving = with("/task", json!(task));
        refuses(&moving, "contradiction", "object");
        moving["object"] = Value::Null;
        refuses(&moving, "missing_field", "transfer");
    }
    refuses(
        &with("/transfer", json!({"move": "catch"})),
        "contradiction",
        "transfer",
    );
}

#[test]
fn each_part_must_be_there() {
    refuses(&with("/person", Value::Null), "missing_field", "person");
    refuses(&with("/object", Value::Null), "missing_field", "object");
    refuses(
        &with("/task", json!("progress")),
        "missing_field",
        "history",
    );
}

#[test]
fn unknown_is_the_same_as_not_asked_for_balance_and_kneeling() {
    for key in ["balance", "can_kneel"] {
        let pointer = format!("/person/{key}");
        assert_eq!(
            ok(&with(&pointer, json!("unknown"))),
            ok(&with(&pointer, Value::Null))
        );
    }
    refuses(
        &with("/person/back_state", json!("unknown")),
        "not_a_choice",
        "person.back_state",
    );
}

#[test]
fn null_is_the_same_as_missing() {
    let plain = ok(&request());
    for key in [
        "awkward",
        "twist_deg",
        "helpers",
        "helper_max_kg",
        "depth_cm",
        "guess_low_kg",
        "mass_known",
    ] {
        assert_eq!(
            ok(&with(&format!("/object/{key}"), Value::Null)),
            plain,
            "{key}"
        );
    }
}

#[test]
fn a_mass_is_known_or_guessed_but_not_both() {
    refuses(
        &with("/object/mass_known", json!(false)),
        "contradiction",
        "object.mass_kg",
    );
    let mut unweighed = with("/object/mass_kg", Value::Null);
    set(&mut unweighed, "/object/mass_known", json!(true));
    refuses(&unweighed, "missing_field", "object.mass_kg");
}

#[test]
fn a_low_guess_is_not_above_the_high_one() {
    let mut guessed = with("/object/mass_kg", Value::Null);
    set(&mut guessed, "/object/guess_low_kg", json!(20));
    set(&mut guessed, "/object/guess_high_kg", json!(7));
    refuses(&guessed, "contradiction", "object.guess_low_kg");
    set(&mut guessed, "/object/guess_high_kg", json!(20));
    assert!(ok(&guessed)["outcome"].is_string());
}

#[test]
fn a_measured_height_wins_over_the_word() {
    let measured = with("/object/start_height_cm", json!(0));
    let mut other_word = measured.clone();
    set(&mut other_word, "/object/start_height", json!("overhead"));
    assert_eq!(ok(&measured), ok(&other_word));
}

#[test]
fn a_note_is_taken_and_not_read() {
    assert_eq!(
        ok(&with("/person/note", json!("hurts since spring"))),
        ok(&request())
    );
    refuses(
        &with("/person/note", json!("z".repeat(5000))),
        "too_long",
        "person.note",
    );
}

#[test]
fn numbers_keep_their_range_and_path() {
    for (pointer, value, field) in [
        ("/person/back_nrs", json!(11), "person.back_nrs"),
        ("/person/stature_cm", json!(17), "person.stature_cm"),
        ("/object/mass_kg", json!(-0.5), "object.mass_kg"),
        ("/object/reps", json!(0), "object.reps"),
        ("/object/helpers", json!(21), "object.helpers"),
        (
            "/object/helper_max_kg",
            json!([-1]),
            "object.helper_max_kg[0]",
        ),
        (
            "/plan",
            json!({"valid": true, "max_by_height": {"shin": -1}}),
            "plan.max_by_height.shin",
        ),
        (
            "/history",
            json!({"sessions_at_level": 10_001}),
            "history.sessions_at_level",
        ),
        ("/recent", json!({"golfer": 10_001}), "recent.golfer"),
    ] {
        refuses(&with(pointer, value), "out_of_range", field);
    }
}

#[test]
fn helpers_and_their_limits_fit_together() {
    let helpers = |count: Value, limits: Value| {
        let mut request = with("/object/helpers", count);
        set(&mut request, "/object/helper_max_kg", limits);
        request
    };
    refuses(
        &helpers(json!(1), json!([20, 20])),
        "contradiction",
        "object.helper_max_kg",
    );
    assert!(ok(&helpers(json!(2), json!([20])))["outcome"].is_string());
    assert_eq!(
        ok(&helpers(Value::Null, json!([20]))),
        ok(&helpers(json!(1), json!([20])))
    );
    refuses(
        &helpers(Value::Null, json!(vec![20; 21])),
        "out_of_range",
        "object.helper_max_kg",
    );
}

#[test]
fn a_plan_does_not_contradict_itself() {
    let plan = |more: Value| {
        let mut plan = json!({"valid": true, "max_kg": 7});
        plan.as_object_mut()
            .unwrap()
            .extend(more.as_object().unwrap().clone());
        with("/plan", plan)
    };
    refuses(
        &plan(json!({"allowed": ["hinge", "squat"], "avoid": ["squat"]})),
        "contradiction",
        "plan.avoid",
    );
    refuses(
        &plan(json!({"current_kg": 8})),
        "contradiction",
        "plan.current_kg",
    );
    refuses(
        &plan(json!({"step_kg": 8})),
        "contradiction",
        "plan.step_kg",
    );
    let band = |moderate: u8, severe: u8| json!({"bands": {"back": {"moderate_from": moderate, "severe_from": severe}}});
    refuses(
        &plan(band(7, 7)),
        "contradiction",
        "plan.bands.back.severe_from",
    );
    refuses(
        &plan(band(0, 7)),
        "out_of_range",
        "plan.bands.back.moderate_from",
    );
    assert!(ok(&plan(band(3, 6)))["outcome"].is_string());
}

#[test]
fn unlikely_pairs_are_judged_not_refused() {
    let mut calm_flare = with("/person/back_state", json!("flare"));
    set(&mut calm_flare, "/person/back_nrs", json!(0));
    assert!(ok(&calm_flare)["outcome"].is_string());
}

#[test]
fn progress_needs_no_object() {
    let reply = ok(&json!({
        "do": "advise", "task": "progress", "person": {"flags": [], "back_nrs": 2},
        "plan": {"valid": true, "max_kg": 10, "current_kg": 5, "step_kg": 1},
        "history": {"sessions_at_level": 2, "worst_during": 3, "settled_next_morning": true, "week_trend": "same",
                    "flare_today": false},
    }));
    assert_eq!(reply["outcome"], Value::Null);
    assert_eq!(reply["progress"], json!("step_up"));
    assert_eq!(reply["urgency"], json!("none"));
}

#[test]
fn an_open_sign_is_urgent_for_progress_too() {
    let reply = ok(&json!({
        "do": "advise", "task": "progress", "person": {"flags": ["saddle_numb"]}, "history": {},
    }));
    assert_eq!(reply["urgency"], json!("emergency"));
    assert_eq!(reply["cautions"], json!(["emergency_now"]));
    assert_ne!(reply["progress"], json!("step_up"));
}

#[test]
fn a_change_set_on_the_object_gives_a_plain_lift() {
    let mut heavy = with("/object/mass_kg", json!(30));
    set(&mut heavy, "/object/divisible", json!(true));
    set(&mut heavy, "/object/start_height", json!("waist"));
    let reply = ok(&heavy);
    let changes = reply["changes"].as_array().unwrap();
    assert!(!changes.is_empty(), "{reply}");
    for change in changes {
        let mut changed = heavy.clone();
        for (key, value) in change["set"].as_object().unwrap() {
            changed["object"][key] = value.clone();
        }
        let after = ok(&changed);
        assert_eq!(after["outcome"], json!("lift"), "{change}");
        assert_eq!(after["ways"], change["ways"], "{change}");
    }
}
