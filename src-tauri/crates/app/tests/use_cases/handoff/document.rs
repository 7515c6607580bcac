//! Practice in the document for clinic software (HL7 FHIR R4): each entry is a resource of its own.
//! The pattern `sore_back`: practice of the squat with 4 kg, 2 sets of 6.

use super::practice::{Visit, a_day, visit};
use super::screens::{history_for, shown, taken};
use crate::phone::TestPhone;
use crate::report::{collect_references, keep_for_the_library};
use crate::script::Script;
use serde_json::{Value, json};
use std::collections::BTreeSet;

fn document(phone: &TestPhone, of: Option<&str>) -> Value {
    let made = phone.ask(json!({"do": "report_make", "form": "fhir", "of": of}));
    serde_json::from_str(made["text"].as_str().expect("text")).expect("JSON")
}

/// Resources in a category of observations.
fn of_category<'d>(document: &'d Value, category: &str) -> Vec<&'d Value> {
    let entries = document["entry"].as_array().expect("entries").iter();
    entries
        .map(|entry| &entry["resource"])
        .filter(|resource| resource["category"][0]["coding"][0]["code"] == category)
        .collect()
}

fn component<'d>(resource: &'d Value, text: &str) -> &'d Value {
    let components = resource["component"].as_array().expect("components").iter();
    let mut found = components.filter(|part| part["code"]["text"] == text);
    found.next().unwrap_or(&Value::Null)
}

fn weeks() -> Visit {
    let visit = visit(&[]);
    let phone = &visit.patient;
    phone.lift(&Script::ordinary().but("mass", json!({"choice": "bottle"})));
    phone.later(24 * 60);
    a_day(phone, 2, "yes");
    a_day(phone, 3, "yes");
    phone.ask(json!({"do": "step_answer", "step": "step_up", "take": true}));
    phone.later(60);
    phone.ask(json!({"do": "practice_keep", "item": 0, "done": false}));
    phone.later(24 * 60);
    phone.ask(json!({"do": "flare_start"}));
    visit.clinician.later(4 * 24 * 60);
    visit
}

/// `activity` is of HL7's code system observation-category; the mass is in UCUM `kg`.
#[test]
fn what_was_practised_is_an_activity_with_way_mass_sets_and_times() {
    let Visit {
        clinician,
        patient,
        pairing,
    } = weeks();
    taken(&clinician, &shown(&patient, history_for(90, &pairing)));
    let own = document(&patient, None);
    let theirs = document(&clinician, Some(&pairing));
    keep_for_the_library("history-with-practice.json", &own.to_string());
    keep_for_the_library("history-with-practice-of-another.json", &theirs.to_string());
    for document in [&own, &theirs] {
        let practised = of_category(document, "activity");
        assert_eq!(practised.len(), 3, "two done, one left");
        for one in &practised {
            assert_eq!(one["resourceType"], "Observation");
            assert_eq!(one["status"], "final");
            assert_eq!(
                one["category"][0]["coding"][0]["system"],
                "http://terminology.hl7.org/CodeSystem/observation-category"
            );
            assert_eq!(one["code"], json!({"text": "Practice"}));
            assert!(one["subject"]["reference"].is_string());
        }
        let first = practised[0];
        let at = first["effectiveDateTime"].as_str().expect("a time");
        assert!(at.starts_with("2026-11-26T"), "{at}");
        let kilograms = json!({
            "value": 4.0, "unit": "kg", "system": "http://unitsofmeasure.org", "code": "kg",
        });
        for (part, name, value) in [
            ("Done or left", "valueString", json!("Done")),
            ("Way to lift", "valueString", json!("Squat")),
            ("How heavy", "valueQuantity", kilograms),
            ("Sets, by the plan", "valueInteger", json!(2)),
            ("Times in a set, by the plan", "valueInteger", json!(6)),
        ] {
            assert_eq!(component(first, part)[name], value, "{part}");
        }
        let left = practised[2];
        assert_eq!(component(left, "Done or left")["valueString"], "Left");
        assert_eq!(component(left, "Sets, by the plan"), &Value::Null);
    }
}

/// LOINC 72514-3 with a number, as for lifts: the pain while practising and the next morning of both days.
#[test]
fn pain_of_practice_is_sent_as_a_number() {
    let document = document(&weeks().patient, None);
    let pains: Vec<(Value, Value, Value)> = of_category(&document, "survey")
        .into_iter()
        .filter(|one| one["code"]["coding"][0]["code"] == "72514-3")
        .map(|one| {
            let text = |value: &Value| value.clone();
            (
                text(&one["code"]["text"]),
                text(&one["valueInteger"]),
                text(&one["effectiveDateTime"]),
            )
        })
        .filter(|(name, ..)| name != "Pain before lifting" && name != "Pain while lifting")
        .collect();
    let told: Vec<(&str, u64)> = pains
        .iter()
        .map(|(name, score, _)| {
            (
                name.as_str().expect("a name"),
                score.as_u64().expect("0 to 10"),
            )
        })
        .collect();
    assert_eq!(
        told,
        [
            ("Pain while practising", 2),
            ("Pain the next morning", 1),
            ("Pain while practising", 3),
            ("Pain the next morning", 1),
        ]
    );
    assert_eq!(pains[1].2, "2026-11-27", "a date without a time");
}

#[test]
fn a_step_and_a_flare_up_are_answers_with_the_level_from_then_on() {
    let document = document(&weeks().patient, None);
    let of = |code: &str| {
        let survey = of_category(&document, "survey").into_iter();
        let found: Vec<&Value> = survey.filter(|one| one["code"]["text"] == code).collect();
        assert_eq!(found.len(), 1, "{code}");
        component(found[0], "Level from then on")["valueQuantity"]["value"].clone()
    };
    assert_eq!(of("Step by the plan's rule"), 4.5);
    // Half of 4.5 kg: docs/method/deviations.md, 47.
    assert_eq!(of("Flare-up"), 2.25);
}

/// Every one of them is in the section named Practice, and points into the document (bdl-7 and the rules beside it).
#[test]
fn the_section_names_each_of_them() {
    let document = document(&weeks().patient, None);
    let entries = document["entry"].as_array().expect("entries");
    let urls: BTreeSet<&str> = entries
        .iter()
        .map(|entry| entry["fullUrl"].as_str().expect("an address"))
        .collect();
    assert_eq!(urls.len(), entries.len());
    let mut references = Vec::new();
    collect_references(&document, &mut references);
    for reference in &references {
        assert!(urls.contains(reference.as_str()), "{reference}");
    }
    let sections = entries[0]["resource"]["section"]
        .as_array()
        .expect("sections");
    let practice = sections.iter().find(|one| one["title"] == "Practice");
    let practice = practice.expect("a section");
    // Two done with two pains each, one left, one step, one flare-up.
    assert_eq!(practice["entry"].as_array().map(Vec::len), Some(9));
    let div = practice["text"]["div"].as_str().expect("a copy to read");
    assert!(div.contains("26 November 2026: Squat, 4 kg"), "{div}");
    let observations = entries
        .iter()
        .filter(|entry| entry["resource"]["resourceType"] == "Observation");
    let named: usize = sections
        .iter()
        .filter_map(|section| section["entry"].as_array())
        .map(Vec::len)
        .sum();
    // The care plan is named in a section as well.
    assert_eq!(named, observations.count() + 1);
}
