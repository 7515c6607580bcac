//! A plan on one page of paper. `tests/interop/check_plan_sheets.py` reads the pages that are left here: their text,
//! and, off a picture of the page, their symbol.

use crate::handoff::screens::{pair, plan};
use crate::phone::TestPhone;
use crate::report::keep_for_the_library;
use serde_json::{Value, json};

fn set(phone: &TestPhone, plan: &Value, field: &str, value: Value) {
    phone.ask(json!({"do": "plan_set", "id": plan, "field": field, "value": value}));
}

fn paper(phone: &TestPhone, plan: &Value, to: Option<&str>) -> String {
    let made = phone.ask(json!({"do": "report_make", "form": "pdf", "plan": plan, "to": to}));
    assert_eq!(made["mime"], "application/pdf");
    assert_eq!(made["name"], "heftwell-plan-2026-11-25.pdf");
    let base64 = made["base64"].as_str().expect("bytes").to_owned();
    // "%PDF-1." in base64 (RFC 4648).
    assert!(base64.starts_with("JVBERi0xL"));
    base64
}

fn visit() -> (TestPhone, String) {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    let pairing = pair(&clinician, &patient);
    (clinician, pairing)
}

/// Every field that holds typed text as long as it may be. Three ways are practised and the others ruled out, or all are
/// ruled out: what is practised may be used.
fn longest(phone: &TestPhone, is_practised: bool) -> Value {
    let plan = plan(phone, "both_knees", "Green Ladder");
    let parts = [
        "back",
        "knee_left",
        "knee_right",
        "hip_left",
        "hip_right",
        "shoulders",
    ];
    set(phone, &plan, "bands_for", json!(parts));
    set(phone, &plan, "practice_way", json!("none"));
    set(phone, &plan, "preferred", json!([]));
    let mut ruled_out = vec!["upright", "squat", "lunge"];
    let others = ["hinge", "golfer", "free_bend"];
    if is_practised {
        let places = ["practice_way", "practice_way_2", "practice_way_3"];
        for (place, way) in places.iter().zip(others) {
            set(phone, &plan, place, json!(way));
        }
    } else {
        ruled_out.extend(others);
    }
    set(phone, &plan, "not_allowed", json!(ruled_out));
    for start in ["shin", "knee", "waist", "chest", "overhead"] {
        set(phone, &plan, &format!("ceiling_{start}"), json!(5.5));
    }
    let page = phone.ask(json!({"do": "plan_edit", "id": plan}));
    let text = |length: usize, seed: u64| -> String {
        // Invented syllables without a pattern, which pack worse than any language does (a linear congruential
        // generator, Knuth's constants).
        const SYLLABLES: [&str; 16] = [
            "ba ", "lo", "mi ", "ten", "ra", "us ", "ke", "for ", "di", "an ", "so", "gle ", "vu",
            "per ", "ni", "ho ",
        ];
        let mut state = seed;
        let mut text = String::new();
        while text.len() < length {
            state = state
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            text.push_str(SYLLABLES[usize::try_from(state >> 60).expect("four bits")]);
        }
        text.truncate(length);
        text.trim_end().to_owned()
    };
    set(phone, &plan, "notes", json!(text(700, 1)));
    set(phone, &plan, "call", json!(text(60, 9)));
    set(phone, &plan, "why", json!(text(200, 10)));
    for (seed, cue) in [(2, "cue_1"), (3, "cue_2"), (4, "cue_3")] {
        set(phone, &plan, cue, json!(text(200, seed)));
    }
    for (seed, step) in [(5, "flare_1"), (6, "flare_2"), (8, "flare_3")] {
        set(phone, &plan, step, json!(text(60, seed)));
    }
    let fields = page["sections"]
        .as_array()
        .expect("sections")
        .iter()
        .flat_map(|section| section["fields"].as_array().expect("fields"));
    for (seed, field) in (11..).zip(fields) {
        let id = field["id"].as_str().expect("an id");
        if id.starts_with("why_") && id != "why_private" {
            set(phone, &plan, id, json!(text(200, seed)));
        }
    }
    plan
}

#[test]
fn what_leaves_on_paper_is_told_first() {
    let (phone, pairing) = visit();
    let plan = plan(&phone, "sore_back", "Green Ladder");
    let summary = |to: Option<&str>| {
        phone.ask(json!({"do": "report_summary", "form": "pdf", "plan": plan, "to": to}))
    };
    let last = |summary: &Value| summary["leaves"].as_array().expect("lines").last().cloned();
    let sealed = summary(Some(&pairing));
    assert_eq!(sealed["leaves"][0], "The plan for Green Ladder, version 1");
    assert_eq!(
        last(&sealed),
        Some(json!(
            "A symbol that only the phone of Green Ladder can open."
        ))
    );
    let open = summary(None);
    assert_eq!(
        last(&open),
        Some(json!("No symbol: the page is only for reading."))
    );
    assert_eq!(
        open["open"],
        "The words on the page are not sealed. Whoever holds the page can read them."
    );
}

#[test]
fn a_plan_leaves_in_the_open_on_paper_only() {
    let (phone, _) = visit();
    let plan = plan(&phone, "sore_back", "Green Ladder");
    for form in ["csv", "fhir", "note"] {
        let asked = json!({"do": "report_make", "form": form, "plan": plan});
        assert_eq!(phone.refused(asked), "not_a_choice at form");
    }
    let asked = json!({"do": "report_make", "form": "pdf", "plan": 99});
    assert_eq!(phone.refused(asked), "unknown_plan at plan");
}

/// A version that left on paper is not the one that is changed afterwards.
#[test]
fn what_is_on_paper_keeps_its_version() {
    let (phone, _) = visit();
    let plan = plan(&phone, "sore_back", "Green Ladder");
    paper(&phone, &plan, None);
    set(&phone, &plan, "ceiling", json!(6));
    let summary = phone.ask(json!({"do": "report_summary", "form": "pdf", "plan": plan}));
    assert_eq!(summary["leaves"][0], "The plan for Green Ladder, version 2");
}

#[test]
fn every_pattern_and_the_longest_plan_fit_on_one_page_in_both_languages() {
    for (language, units) in [("en", "kg"), ("es", "kg"), ("es", "lb"), ("en", "lb")] {
        let (phone, pairing) = visit();
        phone.ask(json!({"do": "language_set", "language": language}));
        phone.ask(json!({"do": "settings_set", "units": units}));
        let patterns = phone.ask(json!({"do": "plan_patterns"}))["patterns"].take();
        for pattern in patterns.as_array().expect("patterns") {
            let id = pattern["id"].as_str().expect("an id");
            let made = plan(&phone, id, "Green Ladder");
            let page = paper(&phone, &made, Some(&pairing));
            keep_for_the_library(&format!("plan-{id}-{language}-{units}.pdf.base64"), &page);
        }
        for (name, is_practised) in [("longest", true), ("forbidding", false)] {
            let page = paper(&phone, &longest(&phone, is_practised), Some(&pairing));
            let name = format!("plan-{name}-{language}-{units}.pdf.base64");
            keep_for_the_library(&name, &page);
        }
    }
}
