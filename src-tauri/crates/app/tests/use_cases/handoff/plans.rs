//! Plans made from a starting pattern and edited.

use super::screens::plan;
use crate::phone::TestPhone;
use serde_json::{Value, json};

pub(super) fn clinician() -> TestPhone {
    TestPhone::of("surgery", "treat", "Blue Kettle")
}

pub(super) fn set(id: &Value, field: &str, value: Value) -> Value {
    json!({"do": "plan_set", "id": id, "field": field, "value": value})
}

pub(super) fn field<'p>(page: &'p Value, id: &str) -> &'p Value {
    let sections = page["sections"].as_array().expect("sections").iter();
    let mut fields = sections.flat_map(|section| section["fields"].as_array().expect("fields"));
    fields
        .find(|field| field["id"] == id)
        .unwrap_or_else(|| panic!("no field {id}"))
}

#[test]
fn every_pattern_makes_a_plan_that_fits_together_and_can_be_edited() {
    let phone = clinician();
    let patterns = phone.ask(json!({"do": "plan_patterns"}))["patterns"].take();
    let patterns = patterns.as_array().expect("patterns");
    assert_eq!(patterns.len(), 12);
    for pattern in patterns {
        let page =
            phone.ask(json!({"do": "plan_new", "pattern": pattern["id"], "for": "Green Ladder"}));
        assert_eq!(page["title"], pattern["title"]);
        assert_eq!(page["draft"], true);
        assert!(page["notes"].to_string().contains("house rule"));
        // Written back as it is, every field is taken: the pattern contradicts nothing.
        let sections = page["sections"].as_array().expect("sections").clone();
        for field in sections
            .iter()
            .flat_map(|section| section["fields"].as_array().expect("fields"))
        {
            assert!(!field["label"].as_str().expect("a label").is_empty());
            let id = field["id"].as_str().expect("an id");
            phone.ask(set(&page["id"], id, field["value"].clone()));
        }
        let name = pattern["id"].as_str().expect("an id");
        let outcomes = ["good", "usual", "bad"].map(|day| {
            let asked = json!({"do": "plan_preview", "id": page["id"], "day": day});
            let loads = phone.ask(asked)["loads"].take();
            let loads = loads.as_array().expect("loads").clone();
            for load in &loads {
                for part in ["answer", "why"] {
                    assert!(!load[part].as_str().expect("text").is_empty(), "{name}");
                }
            }
            loads
                .into_iter()
                .map(|mut load| load["outcome"].take())
                .collect::<Vec<_>>()
        });
        // A plan that allows nothing on a good day would be no plan.
        assert_eq!(outcomes[0][0], "lift", "{name}");
        let lifts = outcomes.map(|day| day.iter().filter(|outcome| **outcome == "lift").count());
        assert!(
            lifts[0] >= lifts[1] && lifts[1] >= lifts[2],
            "{name}: {lifts:?}"
        );
    }
    let plans = phone.ask(json!({"do": "plan_list"}))["plans"].take();
    assert_eq!(plans.as_array().map(Vec::len), Some(12));
    assert_eq!(plans[0]["text"], "For Green Ladder. Not handed over yet");
}

#[test]
fn a_plan_needs_a_name_for_both() {
    let phone = TestPhone::set_up("surgery");
    let new =
        |pattern: &str, whom: &str| json!({"do": "plan_new", "pattern": pattern, "for": whom});
    assert_eq!(
        phone.refused(new("sore_back", "Green Ladder")),
        "alias_needed"
    );
    let phone = phone.called("Blue Kettle");
    assert_eq!(phone.refused(new("sore_back", " ")), "alias_length at for");
    assert_eq!(
        phone.refused(new("sore_tooth", "Green Ladder")),
        "not_a_choice at pattern"
    );
    assert_eq!(
        phone.refused(json!({"do": "plan_edit", "id": 9})),
        "unknown_plan at id"
    );
}

#[test]
fn what_is_set_is_kept() {
    let mut phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    phone.ask(set(&id, "ceiling_waist", json!(9.5)));
    phone.ask(set(&id, "cue_2", json!("  Look   ahead. ")));
    phone.ask(set(&id, "why_free_bend", json!("Not this month.")));
    phone.ask(set(&id, "notes", json!("Ring me on Fridays.")));
    phone.ask(set(&id, "locked", json!(true)));
    phone.ask(set(&id, "review_on", json!("2027-01-15")));
    phone.kill_and_unlock();
    let page = phone.ask(json!({"do": "plan_edit", "id": id}));
    assert_eq!(field(&page, "ceiling_waist")["value"], 9.5);
    assert_eq!(field(&page, "ceiling_waist")["text"], "9.5\u{a0}kg");
    assert_eq!(field(&page, "cue_2")["value"], "Look ahead.");
    assert_eq!(field(&page, "why_free_bend")["text"], "Not this month.");
    assert_eq!(field(&page, "notes")["text"], "Ring me on Fridays.");
    assert_eq!(field(&page, "locked")["value"], true);
    assert_eq!(field(&page, "review_on")["text"], "15 January 2027");
    let cleared = phone.ask(set(&id, "ceiling_waist", json!(null)));
    assert_eq!(field(&cleared, "ceiling_waist")["value"], json!(null));
    assert_eq!(field(&cleared, "ceiling_waist")["text"], "Not set");
}

/// The pattern: at most 10 kg, 6 kg from the floor, 5 lifts in one go, and squat and lunge first.
#[test]
fn a_preview_asks_the_judgement_itself() {
    let phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    let preview = phone.ask(json!({"do": "plan_preview", "id": id}));
    let outcomes: Vec<(&str, &str)> = preview["loads"]
        .as_array()
        .expect("loads")
        .iter()
        .map(|load| {
            let text = |field: &str| load[field].as_str().expect("text");
            assert!(!text("why").is_empty() && !text("answer").is_empty());
            (text("load"), text("outcome"))
        })
        .collect();
    assert_eq!(
        outcomes,
        [
            ("2\u{a0}kg from the floor", "lift"),
            ("5\u{a0}kg from the floor", "lift"),
            ("5\u{a0}kg from the floor, 10\u{a0}times", "do_not_lift"),
            ("10\u{a0}kg from the floor", "do_not_lift"),
            ("10\u{a0}kg from knee height", "lift"),
            ("10\u{a0}kg from waist height", "lift"),
            ("20\u{a0}kg from the floor", "do_not_lift"),
        ]
    );
    phone.ask(set(
        &id,
        "not_allowed",
        json!(["hinge", "free_bend", "golfer"]),
    ));
    let preview = phone.ask(json!({"do": "plan_preview", "id": id}));
    assert!(
        !preview["loads"][1]["ways"]
            .to_string()
            .contains("Hip hinge")
    );
    assert_eq!(phone.ask(json!({"do": "history"}))["entries"], json!([]));
}

#[test]
fn a_plan_that_contradicts_itself_is_refused_with_a_reason() {
    let phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    // The pattern: at most 10 kg, 6 kg from the floor, squat and lunge first, practice 4 kg squat, hold from 4.
    let before = phone.ask(json!({"do": "plan_edit", "id": id}));
    let refused = |field: &str, value: Value, says: &str| {
        let line = phone.line(&set(&id, field, value).to_string());
        let reply: Value = serde_json::from_str(&line).expect("a reply is JSON");
        assert_eq!(
            reply["error"]["code"], "plan_contradiction",
            "{field}: {line}"
        );
        assert_eq!(reply["error"]["field"], field);
        let message = reply["error"]["message"].as_str().expect("a sentence");
        assert!(message.contains(says), "{message}");
        assert_eq!(
            phone.ask(json!({"do": "plan_edit", "id": id})),
            before,
            "{field}"
        );
    };
    refused("preferred", json!(["free_bend"]), "first and not at all");
    refused("not_allowed", json!(["lunge"]), "first and not at all");
    refused("practice_way", json!("free_bend"), "would be ruled out");
    refused("practice_load", json!(10.5), "heavier than the limit");
    refused("ceiling", json!(3), "more than any lift");
    refused("ceiling_knee", json!(12), "more than any lift");
    phone.ask(set(&id, "ceiling_floor", json!(null)));
    let before_step = phone.ask(json!({"do": "plan_edit", "id": id}));
    let line = phone.line(&set(&id, "ceiling", json!(3)).to_string());
    assert!(line.contains("heavier than the limit"), "{line}");
    phone.ask(set(&id, "practice_way", json!("none")));
    phone.ask(set(&id, "ceiling", json!(3)));
    let line = phone.line(&set(&id, "step", json!(3.5)).to_string());
    assert!(line.contains("larger than the limit"), "{line}");
    let line = phone.line(&set(&id, "hold_from", json!(8)).to_string());
    assert!(line.contains("before the hold"), "{line}");
    assert_ne!(phone.ask(json!({"do": "plan_edit", "id": id})), before_step);
}

#[test]
fn values_that_cannot_be_are_refused() {
    let phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    for (field, value, expected) in [
        ("ceiling", json!(-1), "out_of_range at value"),
        ("ceiling", json!(101), "out_of_range at value"),
        ("ceiling", json!("ten"), "wrong_type at value"),
        ("times_a_bout", json!(0), "out_of_range at value"),
        ("times_a_bout", json!(2.5), "wrong_type at value"),
        ("pain_ceiling", json!(11), "out_of_range at value"),
        ("next_morning", json!("perhaps"), "not_a_choice at value"),
        ("preferred", json!(["crawl"]), "not_a_choice at value"),
        ("preferred", json!("squat"), "wrong_type at value"),
        ("review_on", json!("2026-11-24"), "out_of_range at value"),
        ("review_on", json!("2028-11-24"), "out_of_range at value"),
        ("review_on", json!("soon"), "wrong_type at value"),
        ("title", json!(" "), "missing_field at value"),
        ("title", json!("x".repeat(61)), "too_long at value"),
        ("for", json!(""), "alias_length at value"),
        ("cue_1", json!("x".repeat(201)), "too_long at value"),
        ("cue_4", json!("Go."), "not_a_choice at field"),
        ("ceiling_attic", json!(1), "not_a_choice at field"),
        ("why_squat", json!("No."), "not_a_choice at field"),
        ("colour", json!("blue"), "not_a_choice at field"),
    ] {
        assert_eq!(phone.refused(set(&id, field, value)), expected, "{field}");
    }
}

#[test]
fn masses_are_in_the_unit_of_whoever_edits() {
    let phone = clinician();
    phone.ask(json!({"do": "settings_set", "units": "lb"}));
    let id = plan(&phone, "after_surgery", "Green Ladder");
    let page = phone.ask(json!({"do": "plan_edit", "id": id}));
    // 4.5 kg is 9.92 lb.
    assert_eq!(field(&page, "ceiling")["value"], 9.9);
    assert_eq!(field(&page, "ceiling")["unit"], "lb");
    let page = phone.ask(set(&id, "ceiling", json!(10)));
    assert_eq!(field(&page, "ceiling")["value"], 10.0);
    phone.ask(json!({"do": "settings_set", "units": "kg"}));
    let page = phone.ask(json!({"do": "plan_edit", "id": id}));
    // 10 lb is 4.536 kg.
    assert_eq!(field(&page, "ceiling")["value"], 4.5);
}

#[test]
fn a_plan_speaks_the_language_of_whoever_reads_it() {
    let phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    phone.ask(json!({"do": "language_set", "language": "es"}));
    let page = phone.ask(json!({"do": "plan_edit", "id": id}));
    assert_eq!(page["title"], "Una espalda que duele");
    assert_eq!(field(&page, "cue_1")["text"], "Téngalo cerca del cuerpo.");
}
