//! What a clinician sees of a history that was handed over is what the person sees of their own.

use super::screens::{history_for, pair, plan, plan_for, shown, taken};
use crate::phone::TestPhone;
use crate::report::{collect_references, keep_for_the_library};
use crate::script::Script;
use serde_json::{Value, json};

/// Days with a lift each; pain falls from day to day.
fn days(phone: &TestPhone, count: u8) {
    for day in 0..count {
        let script = Script::ordinary().but("back", json!({"pain": 6 - day / 2}));
        phone.walk(&script, None);
        let kept = phone.ask(json!({"do": "lift_keep", "done": true, "way": "squat"}));
        phone.ask(json!({"do": "lift_pain", "id": kept["id"], "pain": 3}));
        phone.later(24 * 60);
        phone.ask(json!({"do": "morning", "id": kept["id"], "pain": 2}));
    }
}

fn look_back(phone: &TestPhone, of: Option<&str>) -> Value {
    let mut back = phone.ask(json!({"do": "look_back", "of": of}));
    back["of"].take();
    back
}

#[test]
fn both_see_the_same_figures_and_a_second_history_counts_nothing_twice() {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    let pairing = pair(&clinician, &patient);
    for _ in 0..2 {
        days(&patient, 6);
        while clinician.ask(json!({"do": "hello"}))["locked"] == true {
            clinician.unlock();
        }
        clinician.later(6 * 24 * 60);
        taken(&clinician, &shown(&patient, history_for(90, &pairing)));
        assert_eq!(
            look_back(&clinician, Some(&pairing)),
            look_back(&patient, None)
        );
    }
    let of = clinician.ask(json!({"do": "look_back", "of": pairing}))["of"].take();
    assert_eq!(of, "Green Ladder");
    let note = clinician.ask(json!({"do": "report_make", "form": "note", "of": pairing}));
    let note = note["text"].as_str().expect("a note");
    assert!(note.contains("Told by Green Ladder and handed over. Not examined."));
    assert!(
        note.contains("12 done and 0 decided against, on 12 days"),
        "{note}"
    );
}

#[test]
fn a_history_of_nobody_is_refused() {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    assert_eq!(
        clinician.refused(json!({"do": "look_back", "of": "00"})),
        "unknown_pairing at of"
    );
}

fn document(phone: &TestPhone, of: Option<&str>) -> Value {
    let made = phone.ask(json!({"do": "report_make", "form": "fhir", "of": of}));
    serde_json::from_str(made["text"].as_str().expect("text")).expect("JSON")
}

fn resources<'d>(document: &'d Value, kind: &str) -> Vec<&'d Value> {
    let entries = document["entry"].as_array().expect("entries").iter();
    entries
        .map(|entry| &entry["resource"])
        .filter(|resource| resource["resourceType"] == kind)
        .collect()
}

/// CarePlan with Goals (hl7.org/fhir/R4/careplan.html, goal.html): status and intent of the required value sets, a
/// subject, every goal in the document, a measure wherever there is a detail (gol-1).
#[test]
fn the_plan_goes_along_as_a_care_plan_with_goals() {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    let pairing = pair(&clinician, &patient);
    let id = plan(&clinician, "sore_back", "Green Ladder");
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    days(&patient, 3);
    while clinician.ask(json!({"do": "hello"}))["locked"] == true {
        clinician.unlock();
    }
    clinician.later(3 * 24 * 60);
    taken(&clinician, &shown(&patient, history_for(90, &pairing)));
    let own = document(&patient, None);
    let theirs = document(&clinician, Some(&pairing));
    keep_for_the_library("history-with-plan.json", &own.to_string());
    keep_for_the_library("history-with-plan-of-another.json", &theirs.to_string());
    for document in [&own, &theirs] {
        let plans = resources(document, "CarePlan");
        assert_eq!(plans.len(), 1);
        let plan = plans[0];
        assert_eq!(
            (&plan["status"], &plan["intent"]),
            (&json!("active"), &json!("plan"))
        );
        assert!(plan["subject"]["reference"].is_string());
        assert_eq!(plan["period"]["end"], "2026-12-23");
        let goals = resources(document, "Goal");
        let named: Vec<String> = goals
            .iter()
            .map(|goal| format!("urn:uuid:{}", goal["id"].as_str().expect("an id")))
            .collect();
        let mut meant = Vec::new();
        collect_references(&plan["goal"], &mut meant);
        assert_eq!(named, meant);
        for goal in &goals {
            assert_eq!(goal["lifecycleStatus"], "active");
            assert!(goal["target"][0]["measure"]["text"].is_string(), "gol-1");
        }
        let most = &goals[0]["target"][0]["detailQuantity"];
        assert_eq!(
            (&most["value"], &most["comparator"]),
            (&json!(10.0), &json!("<="))
        );
        assert_eq!(most["code"], "kg");
        assert_eq!(goals[1]["target"][0]["detailRange"]["high"]["value"], 5);
        let sections = document["entry"][0]["resource"]["section"].as_array();
        assert_eq!(sections.map(Vec::len), Some(3));
    }
}

/// One person's own plan goes; a history that names no plan takes none along.
#[test]
fn without_a_plan_there_is_no_care_plan() {
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    days(&patient, 1);
    let own = document(&patient, None);
    assert!(resources(&own, "CarePlan").is_empty() && resources(&own, "Goal").is_empty());
}
