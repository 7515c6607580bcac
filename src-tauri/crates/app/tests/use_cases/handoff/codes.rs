//! Without a pairing: under eight words that are read aloud.

use super::screens::{frames, look, plan};
use crate::phone::TestPhone;
use serde_json::{Value, json};

struct Hall {
    clinician: TestPhone,
    patient: TestPhone,
    show: Value,
}

/// A plan shown to somebody who is not paired.
fn hall() -> Hall {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let show = clinician.ask(json!({"do": "show", "what": "plan", "plan": id, "to": null}));
    Hall {
        clinician,
        patient,
        show,
    }
}

fn words(hall: &Hall) -> Vec<String> {
    let code = hall
        .clinician
        .ask(json!({"do": "show_code", "show": hall.show["show"]}));
    let words = code["words"].as_array().expect("words").iter();
    words
        .map(|word| word.as_str().expect("a word").to_owned())
        .collect()
}

fn type_in(code: &str) -> Value {
    json!({"do": "parcel_code", "code": code})
}

fn scan(hall: &Hall) -> Value {
    look(&hall.patient, &frames(&hall.clinician, &hall.show, 0, 1))
}

fn now(phone: &TestPhone) -> Value {
    phone.ask(json!({"do": "plan_now"}))["plan"].take()
}

#[test]
fn eight_words_open_it_and_the_sender_is_not_verified() {
    let hall = hall();
    assert_eq!(hall.show["code"], true);
    assert_eq!(
        hall.show["to_text"],
        "Whoever has the eight words can open it."
    );
    assert_eq!(scan(&hall)["next"], "code");
    let words = words(&hall);
    assert_eq!(words.len(), 8);
    let question = hall.patient.ask(type_in(&words.join(" ")));
    let warnings = question["warnings"].to_string();
    assert!(
        warnings.contains("Nobody knows for sure who sent it"),
        "{warnings}"
    );
    hall.patient.ask(json!({"do": "parcel_accept"}));
    assert_eq!(now(&hall.patient)["from"], "Says it is from Blue Kettle");
}

#[test]
fn words_are_taken_in_capitals_and_by_their_first_four_letters() {
    let hall = hall();
    scan(&hall);
    let short: Vec<String> = words(&hall)
        .iter()
        .map(|word| word.chars().take(4).collect::<String>().to_uppercase())
        .collect();
    assert!(hall.patient.ask(type_in(&short.join(", ")))["title"].is_string());
}

#[test]
fn a_wrong_code_changes_nothing_and_may_be_typed_again() {
    let hall = hall();
    scan(&hall);
    let right = words(&hall);
    let says = |code: &str| {
        let line = hall.patient.line(&type_in(code).to_string());
        let reply: Value = serde_json::from_str(&line).expect("a reply is JSON");
        assert_eq!(reply["error"]["code"], "code_wrong", "{line}");
        reply["error"]["message"]
            .as_str()
            .expect("a sentence")
            .to_owned()
    };
    let mut wrong = right.clone();
    wrong.reverse();
    assert!(says(&wrong.join(" ")).starts_with("These words do not open it"));
    assert!(says(&right[..7].join(" ")).starts_with("There must be eight words"));
    assert!(says(&format!("{} zzzz", right[..7].join(" "))).starts_with("One of these words"));
    assert_eq!(
        hall.patient.refused(json!({"do": "parcel_question"})),
        "no_parcel"
    );
    assert_eq!(
        hall.patient.refused(json!({"do": "parcel_accept"})),
        "no_parcel"
    );
    assert_eq!(now(&hall.patient), json!(null));
    hall.patient.ask(type_in(&right.join(" ")));
}

#[test]
fn it_is_taken_once() {
    let hall = hall();
    let words = words(&hall).join(" ");
    scan(&hall);
    hall.patient.ask(type_in(&words));
    hall.patient.ask(json!({"do": "parcel_accept"}));
    scan(&hall);
    let line = hall.patient.line(&type_in(&words).to_string());
    assert!(line.contains("This was taken once before"), "{line}");
    hall.patient.ask(json!({"do": "plan_stop"}));
    scan(&hall);
    assert_eq!(hall.patient.refused(type_in(&words)), "no_parcel");
}

#[test]
fn every_show_has_words_of_its_own() {
    let hall = hall();
    let first = words(&hall);
    let again = json!({"do": "show", "what": "plan", "plan": 1, "to": null});
    let again = hall.clinician.ask(again);
    let code = hall
        .clinician
        .ask(json!({"do": "show_code", "show": again["show"]}));
    assert_ne!(json!(first), code["words"]);
}

#[test]
fn a_parcel_for_a_paired_phone_has_no_words() {
    let hall = hall();
    let pairing = super::screens::pair(&hall.clinician, &hall.patient);
    let show = hall
        .clinician
        .ask(super::screens::plan_for(&json!(1), &pairing));
    let code = json!({"do": "show_code", "show": show["show"]});
    assert_eq!(hall.clinician.refused(code), "unknown_show at show");
    assert_eq!(
        hall.patient.refused(type_in("a b c d e f g h")),
        "no_parcel"
    );
}
