//! More than two phones, plans that cross, and phones that are replaced or brought back.

use super::screens::{
    asked_about, file, history_for, look_at_each_other, pair, plan, plan_for, refusal, shown, taken,
};
use crate::phone::{PASSPHRASE, TestPhone};
use crate::script::Script;
use serde_json::{Value, json};

fn clinician() -> TestPhone {
    TestPhone::of("surgery", "treat", "Blue Kettle")
}

fn patient() -> TestPhone {
    TestPhone::of("orchard", "lift", "Green Ladder")
}

fn now(phone: &TestPhone) -> Value {
    phone.ask(json!({"do": "plan_now"}))["plan"].take()
}

fn set(phone: &TestPhone, plan: &Value, field: &str, value: Value) {
    phone.ask(json!({"do": "plan_set", "id": plan, "field": field, "value": value}));
}

/// Brings a phone's folder as it was onto another phone, and unlocks it.
fn brought_back(copy: &TestPhone) {
    copy.ask(json!({"do": "unlock", "passphrase": PASSPHRASE}));
}

#[test]
fn two_phones_whose_plans_cross() {
    let (one, other) = (clinician(), patient());
    let pairing = pair(&one, &other);
    let mine = plan(&one, "sore_back", "Green Ladder");
    let theirs = plan(&other, "sore_knee", "Blue Kettle");
    let to_other = shown(&one, plan_for(&mine, &pairing));
    let to_one = shown(&other, plan_for(&theirs, &pairing));
    taken(&one, &to_one);
    taken(&other, &to_other);
    assert_eq!(now(&one)["title"], "One sore knee");
    assert_eq!(now(&other)["title"], "A back that aches");
}

#[test]
fn a_version_shown_twice_is_asked_about_once() {
    let (clinician, patient) = (clinician(), patient());
    let pairing = pair(&clinician, &patient);
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let shows = [0, 1].map(|_| shown(&clinician, plan_for(&id, &pairing)));
    taken(&patient, &shows[0]);
    assert!(refusal(&patient, &shows[1]).starts_with("You follow this plan already"));
    patient.ask(json!({"do": "plan_stop"}));
    taken(&patient, &shows[1]);
    assert!(
        now(&patient).is_object(),
        "taken up again after it was stopped"
    );
}

#[test]
fn a_patient_with_two_clinicians_follows_one_plan_and_is_told() {
    let (first, patient) = (clinician(), patient());
    let second = TestPhone::of("clinic", "treat", "Red Boat");
    let [with_first, with_second] = [&first, &second].map(|phone| pair(phone, &patient));
    let one = plan(&first, "sore_back", "Green Ladder");
    let two = plan(&second, "sore_knee", "Green Ladder");
    taken(&patient, &shown(&first, plan_for(&one, &with_first)));
    let question = asked_about(&patient, &shown(&second, plan_for(&two, &with_second)));
    let warnings = question["warnings"].to_string();
    assert!(
        warnings.contains("From Blue Kettle. This one takes its place"),
        "{warnings}"
    );
    patient.ask(json!({"do": "parcel_accept"}));
    assert_eq!(now(&patient)["from"], "From Red Boat");

    // The numbers of one do not stand in the way of the other's.
    set(&first, &one, "ceiling", json!(9));
    taken(&patient, &shown(&first, plan_for(&one, &with_first)));
    assert_eq!(now(&patient)["from"], "From Blue Kettle");

    // A history goes to the one it was sealed for, and to no other.
    patient.lift(&Script::ordinary().but("mass", json!({"choice": "two_bottles"})));
    let history = shown(&patient, history_for(90, &with_first));
    assert!(refusal(&second, &history).starts_with("This is meant for another phone"));
    taken(&first, &history);
}

#[test]
fn a_clinician_with_twenty_patients() {
    const NAMES: [&str; 20] = [
        "p01", "p02", "p03", "p04", "p05", "p06", "p07", "p08", "p09", "p10", "p11", "p12", "p13",
        "p14", "p15", "p16", "p17", "p18", "p19", "p20",
    ];
    let clinician = clinician();
    let mut patients = Vec::new();
    for (at, name) in NAMES.into_iter().enumerate() {
        let alias = format!("Person {at}");
        let phone = TestPhone::of(name, "lift", &alias);
        let pairing = pair(&clinician, &phone);
        let id = plan(&clinician, "sore_back", &alias);
        taken(&phone, &shown(&clinician, plan_for(&id, &pairing)));
        patients.push((phone, pairing, alias));
    }
    let people = clinician.ask(json!({"do": "pairings"}))["pairings"].take();
    assert_eq!(people.as_array().map(Vec::len), Some(20));
    for (phone, pairing, alias) in &patients {
        phone.lift(&Script::ordinary().but("mass", json!({"choice": "two_bottles"})));
        let question = asked_about(&clinician, &shown(phone, history_for(90, pairing)));
        assert_eq!(question["text"], format!("A history from {alias}."));
        let to = clinician.ask(json!({"do": "parcel_accept"}))["to"].clone();
        assert_eq!(to, format!("#/person/{pairing}"));
    }
}

#[test]
fn a_new_phone_pairs_again_with_a_loud_warning() {
    let (clinician, old) = (clinician(), patient());
    let before = pair(&clinician, &old);
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let for_the_old = shown(&clinician, plan_for(&id, &before));

    let new = TestPhone::of("newer", "lift", "Green Ladder");
    assert!(refusal(&new, &for_the_old).starts_with("This is meant for another phone"));
    let [hers, _] = look_at_each_other(&clinician, &new);
    let warning = hers["warning"].as_str().expect("a warning");
    assert!(
        warning.contains("Go on only if they have a new phone"),
        "{warning}"
    );
    let after = pair(&clinician, &new);
    taken(&new, &shown(&clinician, plan_for(&id, &after)));
    assert!(
        refusal(&old, &shown(&clinician, plan_for(&id, &after)))
            .starts_with("This is meant for another phone")
    );
    assert_eq!(
        clinician.refused(plan_for(&id, &before)),
        "unknown_pairing at to",
        "the old phone's pairing is gone"
    );
}

#[test]
fn a_phone_brought_back_takes_an_older_plan_again_and_says_its_number_and_day() {
    let (clinician, patient) = (clinician(), patient());
    let pairing = pair(&clinician, &patient);
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let show = clinician.ask(plan_for(&id, &pairing));
    let first = file(&clinician, &show);
    let copy = patient.copied("orchard");
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    for phone in [&clinician, &patient, &copy] {
        phone.later(3 * 24 * 60);
    }
    set(&clinician, &id, "ceiling", json!(9));
    let second = file(&clinician, &clinician.ask(plan_for(&id, &pairing)));
    patient.ask(json!({"do": "scan_start", "for": "parcel"}));
    patient.take("file", 0, 0, &second);
    patient.ask(json!({"do": "parcel_accept"}));

    // The copy knows nothing of either plan.
    brought_back(&copy);
    copy.ask(json!({"do": "scan_start", "for": "parcel"}));
    assert_eq!(copy.take("file", 0, 0, &first)["ok"]["next"], "accept");
    let question = copy.ask(json!({"do": "parcel_question"}));
    assert!(
        question["text"]
            .as_str()
            .is_some_and(|text| text.ends_with("version 1."))
    );
    assert_eq!(
        question["facts"][1],
        json!({"label": "Made", "text": "25 November 2026"})
    );
    copy.ask(json!({"do": "parcel_accept"}));
    copy.ask(json!({"do": "scan_start", "for": "parcel"}));
    assert_eq!(
        copy.take("file", 0, 0, &second)["ok"]["next"],
        "accept",
        "newer ones follow"
    );
}

#[test]
fn a_clinicians_phone_brought_back_counts_on_and_crossing_numbers_are_told() {
    let (clinician, patient) = (clinician(), patient());
    let pairing = pair(&clinician, &patient);
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let copy = clinician.copied("surgery");
    set(&clinician, &id, "ceiling", json!(9));
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    set(&clinician, &id, "ceiling", json!(8));
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    assert_eq!(now(&patient)["version_text"], "Version 2, 25 November 2026");

    for phone in [&patient, &copy] {
        phone.later(24 * 60);
    }
    brought_back(&copy);
    // It makes a version 1 again, a day later than the patient's version 2.
    set(&copy, &id, "ceiling", json!(7));
    let question = asked_about(&patient, &shown(&copy, plan_for(&id, &pairing)));
    let warnings = question["warnings"].to_string();
    assert!(
        warnings.contains("do not fit with the one you have"),
        "{warnings}"
    );
    patient.ask(json!({"do": "parcel_accept"}));
    assert_eq!(now(&patient)["version_text"], "Version 1, 26 November 2026");
}

#[test]
fn histories_follow_a_person_to_their_new_phone() {
    let (clinician, old) = (clinician(), patient());
    let before = pair(&clinician, &old);
    old.lift(&Script::ordinary());
    taken(&clinician, &shown(&old, history_for(90, &before)));
    let new = TestPhone::of("newer", "lift", "Green Ladder");
    let after = pair(&clinician, &new);
    new.lift(&Script::ordinary());
    let accepted = taken(&clinician, &shown(&new, history_for(90, &after)));
    assert_eq!(accepted["to"], format!("#/person/{after}"));
}

#[test]
fn a_plan_for_another_name_is_warned_about() {
    let (clinician, patient) = (clinician(), patient());
    let pairing = pair(&clinician, &patient);
    let id = plan(&clinician, "sore_back", "Red Boat");
    let question = asked_about(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    let warnings = question["warnings"].to_string();
    assert!(warnings.contains("This plan is for Red Boat"), "{warnings}");
}
