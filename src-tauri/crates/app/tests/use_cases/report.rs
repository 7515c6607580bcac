//! Looking back and taking it out: what is said, what leaves, and in which form.

use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// Twenty days with a lift each: pain before falls from 6 to 1, the mass goes round three masses, every fifth is left.
fn twenty_days(phone: &TestPhone) {
    for day in 0..20u8 {
        let mass = ["two_bottles", "six_pack", "water_bucket"][usize::from(day % 3)];
        let script = Script::ordinary()
            .but("back", json!({"pain": 6 - day / 4 }))
            .but("mass", json!({ "choice": mass }));
        phone.walk(&script, None);
        if day % 5 == 4 {
            phone.ask(json!({"do": "lift_keep", "done": false}));
            phone.later(24 * 60);
            continue;
        }
        let kept = phone.ask(json!({"do": "lift_keep", "done": true, "way": "squat"}));
        phone.ask(json!({"do": "lift_pain", "id": kept["id"], "pain": 3}));
        phone.later(24 * 60);
        phone.ask(json!({"do": "morning", "id": kept["id"], "pain": 2}));
    }
}

/// All sentences of a look back.
fn said(back: &Value) -> Vec<&str> {
    let passages = back["passages"].as_array().expect("passages").iter();
    passages
        .flat_map(|passage| passage["sentences"].as_array().expect("sentences"))
        .map(|sentence| sentence.as_str().expect("a sentence"))
        .collect()
}

fn made(phone: &TestPhone, form: &str) -> String {
    let made = phone.ask(json!({"do": "report_make", "form": form}));
    made["text"].as_str().expect("text").to_owned()
}

/// Rows of a table (RFC 4180) without quoted cells that hold commas; the titles do, and are not needed here.
fn column(table: &str, name: &str) -> Vec<String> {
    let mut reader = csv::Reader::from_reader(table.as_bytes());
    let place = reader
        .headers()
        .expect("a head")
        .iter()
        .position(|head| head == name)
        .expect("the column");
    reader
        .records()
        .map(|row| row.expect("a row")[place].to_owned())
        .collect()
}

#[test]
fn an_empty_history_says_so_and_cannot_be_taken_out() {
    let phone = TestPhone::set_up("orchard");
    let back = phone.ask(json!({"do": "look_back"}));
    assert_eq!(said(&back), ["Nothing is kept in this time."]);
    assert_eq!(
        phone.refused(json!({"do": "report_make", "form": "csv"})),
        "not_found"
    );
    assert_eq!(
        phone.refused(json!({"do": "report_summary", "form": "pigeon"})),
        "not_a_choice at form"
    );
    assert_eq!(
        phone.refused(json!({"do": "look_back", "since_days": 0})),
        "out_of_range at since_days"
    );
}

/// Counted on paper: 20 days, 4 left; pain 6 6 6 at first and 2 2 2 lately.
#[test]
fn the_look_back_says_what_was_told() {
    let phone = TestPhone::with_an_owner("orchard");
    twenty_days(&phone);
    let back = phone.ask(json!({"do": "look_back"}));
    let said = said(&back);
    for expected in [
        "16 done and 4 decided against, on 20 days, from 25 November 2026 to 14 December 2026.",
        "Pain before lifting: less. At first 6 out of 10, lately 2.",
        "Pain the next morning: about the same. At first 2 out of 10, lately 2.",
    ] {
        assert!(said.contains(&expected), "{expected}\n{said:#?}");
    }
    // A fall is told as an amount without a sign, the smaller end first.
    assert!(
        said.iter()
            .any(|line| line.starts_with("Pain before lifting goes down: 1"))
    );
    assert_eq!(
        back["pain"][0]["points"].as_array().expect("points").len(),
        20
    );
    assert_eq!(back["ways"][0]["count"], 16);
    let short = phone.ask(json!({"do": "look_back", "since_days": 5}));
    assert_eq!(
        short["pain"][0]["points"].as_array().expect("points").len(),
        4
    );
}

#[test]
fn the_table_holds_every_lift_and_its_sums_are_those_of_the_look_back() {
    let phone = TestPhone::with_an_owner("orchard");
    twenty_days(&phone);
    let table = made(&phone, "csv");
    assert_eq!(column(&table, "at").len(), 20);
    assert!(table.starts_with("at,title,decision,"));
    assert!(table.contains("\r\n"));
    let sum: f64 = column(&table, "mass_high_kg")
        .iter()
        .zip(column(&table, "times"))
        .zip(column(&table, "decision"))
        .filter(|(_, decision)| decision == "done")
        .map(|((mass, times), _)| {
            mass.parse::<f64>().unwrap_or(0.0) * times.parse::<f64>().expect("a count")
        })
        .sum();
    let back = phone.ask(json!({"do": "look_back"}));
    let weeks = back["weeks"].as_array().expect("weeks");
    let lifted: f64 = weeks
        .iter()
        .map(|week| week["lifted_kg"].as_f64().expect("kg"))
        .sum();
    assert!((sum - lifted).abs() < 1e-9, "{sum} {lifted}");
}

#[test]
fn a_note_is_short_and_says_that_nobody_checked_it() {
    let phone = TestPhone::with_an_owner("orchard");
    twenty_days(&phone);
    let note = made(&phone, "note");
    assert!(note.lines().count() < 25, "{note}");
    assert!(note.contains("Not checked by a clinician."));
    phone.ask(json!({"do": "language_set", "language": "es"}));
    assert!(made(&phone, "note").contains("Ningún profesional lo ha revisado."));
}

/// Every reference in a document points into it (hl7.org/fhir/R4/bundle.html, bdl-7, bdl-9 to bdl-11).
#[test]
fn the_document_keeps_the_rules_of_a_document() {
    let phone = TestPhone::with_an_owner("orchard");
    twenty_days(&phone);
    let document: Value = serde_json::from_str(&made(&phone, "fhir")).expect("JSON");
    keep_for_the_library("history.json", &document.to_string());
    assert_eq!(document["resourceType"], "Bundle");
    assert_eq!(document["type"], "document");
    assert!(
        document["identifier"]["system"].is_string() && document["identifier"]["value"].is_string()
    );
    assert!(document["timestamp"].is_string());
    for never in ["total", "search"] {
        assert!(document.get(never).is_none(), "bdl-1: {never}");
    }
    let entries = document["entry"].as_array().expect("entries");
    assert_eq!(entries[0]["resource"]["resourceType"], "Composition");
    let urls: BTreeSet<&str> = entries
        .iter()
        .map(|entry| entry["fullUrl"].as_str().expect("an address"))
        .collect();
    assert_eq!(urls.len(), entries.len(), "bdl-7: each address once");
    for entry in entries {
        for never in ["request", "response", "search"] {
            assert!(entry.get(never).is_none(), "bdl-2 to bdl-4: {never}");
        }
        let own = format!(
            "urn:uuid:{}",
            entry["resource"]["id"].as_str().expect("an id")
        );
        assert_eq!(entry["fullUrl"], own);
        assert!(
            entry["resource"]["text"]["div"]
                .as_str()
                .is_some_and(|div| div.len() > 50)
        );
    }
    let mut references = Vec::new();
    collect_references(&document, &mut references);
    assert!(references.len() > 60);
    for reference in references {
        assert!(
            urls.contains(reference.as_str()),
            "{reference} points nowhere"
        );
    }
}

/// Numbers, not answer codes, under LOINC 72514-3 and 38208-5; twenty before, sixteen during, sixteen mornings.
#[test]
fn pain_is_sent_as_a_number_under_published_codes() {
    let phone = TestPhone::with_an_owner("orchard");
    twenty_days(&phone);
    let document: Value = serde_json::from_str(&made(&phone, "fhir")).expect("JSON");
    let scores: Vec<&Value> = document["entry"]
        .as_array()
        .expect("entries")
        .iter()
        .map(|entry| &entry["resource"])
        .filter(|resource| resource.get("valueInteger").is_some())
        .collect();
    assert_eq!(scores.len(), 20 + 16 + 16);
    for score in scores {
        assert!(
            score["valueInteger"]
                .as_u64()
                .is_some_and(|score| score <= 10)
        );
        assert_eq!(score["status"], "final");
        let codes: Vec<&Value> = score["code"]["coding"]
            .as_array()
            .expect("codes")
            .iter()
            .map(|coding| &coding["code"])
            .collect();
        assert_eq!(codes, ["72514-3", "38208-5"]);
    }
}

#[test]
fn two_documents_share_no_identifier() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.walk(&Script::ordinary(), None);
    phone.ask(json!({"do": "lift_keep", "done": true, "way": "squat"}));
    let ids = || {
        let document: Value = serde_json::from_str(&made(&phone, "fhir")).expect("JSON");
        let entries = document["entry"].as_array().expect("entries").clone();
        entries
            .iter()
            .map(|entry| entry["fullUrl"].to_string())
            .collect::<BTreeSet<_>>()
    };
    assert!(ids().is_disjoint(&ids()));
}

/// One page in both languages, and on both papers, after a year of lifts.
#[test]
fn the_page_holds_a_long_history_in_both_languages() {
    let phone = TestPhone::with_an_owner("orchard");
    twenty_days(&phone);
    for (language, units) in [("en", "kg"), ("es", "kg"), ("es", "lb")] {
        phone.ask(json!({"do": "language_set", "language": language}));
        phone.ask(json!({"do": "settings_set", "units": units}));
        let made = phone.ask(json!({"do": "report_make", "form": "pdf"}));
        assert_eq!(made["text"], Value::Null);
        let base64 = made["base64"].as_str().expect("bytes");
        // "%PDF-1." in base64 (RFC 4648).
        assert!(base64.starts_with("JVBERi0xL"), "{language} {units}");
        keep_for_the_library(&format!("history-{language}-{units}.pdf.base64"), base64);
    }
}

#[test]
fn what_leaves_is_told_before_it_leaves() {
    let phone = TestPhone::with_an_owner("orchard");
    twenty_days(&phone);
    let summary = phone.ask(json!({"do": "report_summary", "form": "fhir", "since_days": 5}));
    assert_eq!(
        summary["leaves"][0],
        "4 entries of your history, from 11 December 2026 to 14 December 2026."
    );
    assert_eq!(
        summary["open"],
        "This is not sealed. Whoever gets it can read it."
    );
}

/// Where the environment names a folder, files are left there for other libraries to read.
pub(crate) fn keep_for_the_library(name: &str, text: &str) {
    if let Some(folder) = std::env::var_os("HEFTWELL_DOCUMENTS") {
        let path = std::path::Path::new(&folder).join(name);
        #[allow(
            clippy::disallowed_methods,
            reason = "a file for another program to read"
        )]
        std::fs::write(path, text).expect("written");
    }
}

pub(crate) fn collect_references(value: &Value, found: &mut Vec<String>) {
    match value {
        Value::Object(fields) => {
            for (name, value) in fields {
                match value.as_str() {
                    Some(reference) if name == "reference" => found.push(reference.to_owned()),
                    _ => collect_references(value, found),
                }
            }
        }
        Value::Array(items) => items
            .iter()
            .for_each(|item| collect_references(item, found)),
        _ => {}
    }
}
