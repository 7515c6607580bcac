//! Single parts of the plan page: pain bands, days to try it on, several things to practise.

use super::plans::{clinician, field, set};
use super::screens::plan;
use serde_json::{Value, json};

fn ids(page: &Value) -> Vec<&str> {
    let sections = page["sections"].as_array().expect("sections").iter();
    let fields = sections.flat_map(|section| section["fields"].as_array().expect("fields"));
    fields
        .map(|field| field["id"].as_str().expect("an id"))
        .collect()
}

fn outcomes(preview: &Value) -> Vec<&str> {
    let loads = preview["loads"].as_array().expect("loads").iter();
    loads
        .map(|load| load["outcome"].as_str().expect("an outcome"))
        .collect()
}

/// 4 and 7 are where bands begin for everybody (`docs/method/judgement.md`).
#[test]
fn a_part_that_is_ticked_gets_its_own_bands() {
    let phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    let page = phone.ask(set(&id, "bands_for", json!(["knee_left", "back"])));
    assert_eq!(
        field(&page, "bands_for")["value"],
        json!(["back", "knee_left"])
    );
    assert_eq!(field(&page, "bands_for")["text"], "Back, Left knee");
    let hint = field(&page, "bands_for")["hint"].as_str().expect("a hint");
    assert!(
        hint.contains("no agreed numbers") && hint.contains("Boonstra 2016"),
        "{hint}"
    );
    for (part, from) in [("moderate_back", 4), ("severe_back", 7)] {
        assert_eq!(field(&page, part)["value"], from);
        assert_eq!(field(&page, part)["min"], 1.0);
        assert_eq!(field(&page, part)["max"], 10.0);
        assert_eq!(
            field(&page, part)["optional"],
            Value::Null,
            "it cannot be left out"
        );
    }
    assert_eq!(field(&page, "severe_back")["label"], "Back: strong from");
    phone.ask(set(&id, "severe_back", json!(8)));
    // What is ticked already keeps its numbers.
    let page = phone.ask(set(&id, "bands_for", json!(["back", "shoulders"])));
    assert_eq!(field(&page, "severe_back")["value"], 8);
    assert!(!ids(&page).contains(&"severe_knee_left"));
    let page = phone.ask(set(&id, "bands_for", json!([])));
    assert!(!ids(&page).iter().any(|id| id.starts_with("severe_")));
}

#[test]
fn bands_out_of_order_are_refused_in_their_own_words() {
    let phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    phone.ask(set(&id, "bands_for", json!(["back"])));
    let before = phone.ask(json!({"do": "plan_edit", "id": id}));
    for (part, value) in [
        ("moderate_back", 7),
        ("moderate_back", 9),
        ("severe_back", 4),
    ] {
        let line = phone.line(&set(&id, part, json!(value)).to_string());
        assert!(line.contains("plan_contradiction"), "{line}");
        assert!(
            line.contains("Strong pain must start at a higher number"),
            "{line}"
        );
    }
    for (part, value, expected) in [
        ("moderate_back", json!(0), "out_of_range at value"),
        ("severe_back", json!(11), "out_of_range at value"),
        ("severe_back", json!(null), "missing_field at value"),
        ("severe_hip_left", json!(8), "not_a_choice at field"),
        ("severe_nose", json!(8), "not_a_choice at field"),
        ("bands_for", json!(["nose"]), "not_a_choice at value"),
        ("bands_for", json!("back"), "wrong_type at value"),
    ] {
        assert_eq!(phone.refused(set(&id, part, value)), expected, "{part}");
    }
    assert_eq!(phone.ask(json!({"do": "plan_edit", "id": id})), before);
}

#[test]
fn bands_stand_in_the_lines_of_the_plan() {
    let phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    phone.ask(set(&id, "bands_for", json!(["back"])));
    phone.ask(set(&id, "severe_back", json!(8)));
    let summary = phone.ask(json!({"do": "show_summary", "what": "plan", "plan": id}));
    let line = "Back: moderate pain from 4, strong pain from 8.";
    assert!(summary["leaves"].to_string().contains(line), "{summary}");
}

/// A day on which the back hurts 6: above a pain ceiling of 5, under one of 6. With strong pain from 6, neither a hinge nor
/// a free bend may be used (`docs/method/judgement.md`).
#[test]
fn a_bad_day_shows_what_ceilings_and_bands_do() {
    let phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    let on = |day: &str| phone.ask(json!({"do": "plan_preview", "id": id, "day": day}));
    let usual = phone.ask(json!({"do": "plan_preview", "id": id}));
    assert_eq!(on("usual"), usual);
    let shown = |preview: &Value| {
        let days = preview["days"].as_array().expect("days").clone();
        let shown = days.into_iter().find(|day| day["shown"] == true);
        shown.expect("one is shown")["text"].clone()
    };
    assert_eq!(shown(&usual), "Usual");
    assert_eq!(shown(&on("good")), "Good");
    let bad = on("bad");
    assert_eq!(shown(&bad), "Bad");
    assert!(bad["day"].as_str().expect("a text").contains("back pain 6"));
    assert_eq!(outcomes(&bad), ["do_not_lift"; 7]);
    phone.ask(set(&id, "pain_ceiling", json!(6)));
    phone.ask(set(&id, "preferred", json!(["hinge"])));
    let names = |preview: &Value| preview["loads"][1]["ways"].to_string();
    assert!(names(&on("bad")).contains("Hip hinge"), "{}", on("bad"));
    phone.ask(set(&id, "bands_for", json!(["back"])));
    phone.ask(set(&id, "severe_back", json!(6)));
    assert!(!names(&on("bad")).contains("Hip hinge"), "{}", on("bad"));
    assert_eq!(
        phone.refused(json!({"do": "plan_preview", "id": id, "day": "worst"})),
        "not_a_choice at day"
    );
}

#[test]
fn a_text_box_knows_how_much_it_takes() {
    let phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    let page = phone.ask(json!({"do": "plan_edit", "id": id}));
    for (part, longest) in [
        ("for", 40),
        ("title", 60),
        ("cue_1", 200),
        ("flare_1", 60),
        ("notes", 700),
        ("call", 60),
    ] {
        assert_eq!(field(&page, part)["max_length"], longest, "{part}");
    }
    assert_eq!(field(&page, "ceiling")["max_length"], Value::Null);
}

/// The pattern: squat with 4 kg, free bend ruled out, at most 10 kg.
#[test]
fn up_to_three_things_are_practised() {
    let phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    let asked = |field: &str, value: Value| phone.ask(set(&id, field, value));
    let page = phone.ask(json!({"do": "plan_edit", "id": id}));
    assert_eq!(
        field(&page, "practice_way")["label"],
        "First way to practise"
    );
    assert_eq!(
        field(&page, "practice_load")["label"],
        "Squat: with how much"
    );
    assert_eq!(field(&page, "practice_way_2")["value"], "none");
    assert!(!ids(&page).contains(&"practice_load_2") && !ids(&page).contains(&"practice_way_3"));
    let page = asked("practice_way_2", json!("hinge"));
    // It begins with what is practised already, so that the level stays.
    assert_eq!(field(&page, "practice_load_2")["value"], 4.0);
    asked("practice_load_2", json!(5));
    asked("practice_days_2", json!(2));
    let page = asked("practice_way_3", json!("lunge"));
    assert_eq!(
        field(&page, "practice_way_3")["label"],
        "Third way to practise"
    );
    assert!(!ids(&page).contains(&"practice_way_4"));
    let summary = phone.ask(json!({"do": "show_summary", "what": "plan", "plan": id}));
    let leaves = summary["leaves"].to_string();
    for line in [
        "Squat with 4\u{a0}kg: 2 sets of 6, 3 days a week.",
        "Hip hinge with 5\u{a0}kg: 2 sets of 6, 2 days a week.",
        "Half-kneel with 4\u{a0}kg: 2 sets of 6, 3 days a week.",
    ] {
        assert!(leaves.contains(line), "{leaves}");
    }
    // The gap closes.
    let page = asked("practice_way", json!("none"));
    assert_eq!(field(&page, "practice_way")["value"], "hinge");
    assert_eq!(field(&page, "practice_load")["value"], 5.0);
    assert_eq!(field(&page, "practice_way_2")["value"], "lunge");
    assert_eq!(field(&page, "practice_way_3")["value"], "none");
}

#[test]
fn each_thing_to_practise_must_fit_the_plan() {
    let phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    phone.ask(set(&id, "practice_way_2", json!("hinge")));
    let before = phone.ask(json!({"do": "plan_edit", "id": id}));
    for (field, value, says) in [
        ("practice_load_2", json!(10.5), "heavier than the limit"),
        ("practice_way_2", json!("free_bend"), "would be ruled out"),
        ("practice_way_2", json!("squat"), "practised twice"),
        ("practice_way_3", json!("hinge"), "practised twice"),
        (
            "not_allowed",
            json!(["free_bend", "hinge"]),
            "would be ruled out",
        ),
    ] {
        let line = phone.line(&set(&id, field, value).to_string());
        assert!(
            line.contains("plan_contradiction") && line.contains(says),
            "{line}"
        );
    }
    for (field, value, expected) in [
        ("practice_load_2", json!(null), "missing_field at value"),
        ("practice_sets_2", json!(21), "out_of_range at value"),
        ("practice_load_3", json!(4), "not_a_choice at field"),
        ("practice_way_4", json!("lunge"), "not_a_choice at field"),
        ("practice_colour", json!(4), "not_a_choice at field"),
    ] {
        assert_eq!(phone.refused(set(&id, field, value)), expected, "{field}");
    }
    assert_eq!(phone.ask(json!({"do": "plan_edit", "id": id})), before);
}
