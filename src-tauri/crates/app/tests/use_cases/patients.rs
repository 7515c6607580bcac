//! The people a clinician treats: a list that finds them, what became of their plans, and notes that stay.

use crate::handoff::screens::{file, from_base64, history_for, pair, plan, plan_for, shown, taken};
use crate::phone::TestPhone;
use crate::script::Script;
use handoff::{Code, open_unpaired};
use serde_json::{Value, json};

fn clinician() -> TestPhone {
    TestPhone::of("surgery", "treat", "Blue Kettle")
}

fn names(phone: &TestPhone, find: &str) -> Vec<String> {
    let listed = phone.ask(json!({"do": "patients", "find": find}));
    let patients = listed["patients"].as_array().expect("patients").iter();
    patients
        .map(|one| one["alias"].as_str().expect("a name").to_owned())
        .collect()
}

fn of_name(phone: &TestPhone, name: &str) -> Value {
    let mut listed = phone.ask(json!({"do": "patients", "find": name}));
    let id = listed["patients"][0]["id"].take();
    phone.ask(json!({"do": "patient", "id": id}))
}

fn set(phone: &TestPhone, plan: &Value, field: &str, value: Value) {
    phone.ask(json!({"do": "plan_set", "id": plan, "field": field, "value": value}));
}

#[test]
fn names_are_found_by_the_beginnings_of_their_words() {
    let phone = clinician();
    for alias in ["Quiet Lantern", "Ámbar Ñandú", "Green Ladder", "Blue Lamp"] {
        phone.ask(json!({"do": "patient_new", "alias": alias}));
    }
    assert_eq!(
        names(&phone, ""),
        ["Ámbar Ñandú", "Blue Lamp", "Green Ladder", "Quiet Lantern"]
    );
    assert_eq!(
        names(&phone, "la"),
        ["Blue Lamp", "Green Ladder", "Quiet Lantern"]
    );
    assert_eq!(names(&phone, "NAN amb"), ["Ámbar Ñandú"]);
    assert_eq!(names(&phone, "dder"), Vec::<String>::new());
    let long = "a".repeat(81);
    assert_eq!(
        phone.refused(json!({"do": "patients", "find": long})),
        "too_long at find"
    );
}

#[test]
fn whoever_a_plan_is_for_or_whose_history_comes_is_on_the_list() {
    let (clinician, patient) = (
        clinician(),
        TestPhone::of("orchard", "lift", "Green Ladder"),
    );
    let pairing = pair(&clinician, &patient);
    plan(&clinician, "sore_hip", "Quiet Lantern");
    assert_eq!(names(&clinician, ""), ["Quiet Lantern"]);
    patient.walk(&Script::ordinary(), None);
    patient.ask(json!({"do": "lift_keep", "done": true, "way": "squat"}));
    taken(&clinician, &shown(&patient, history_for(90, &pairing)));
    assert_eq!(names(&clinician, ""), ["Green Ladder", "Quiet Lantern"]);
    let page = of_name(&clinician, "Green");
    assert_eq!(page["histories_text"], "One history came.");
    assert_eq!(page["pairing"], json!(pairing));
    assert_eq!(page["text"], "Last seen 25 November 2026.");
}

/// Looked at before the plan is handed over, the list has them by name; then their phone is known.
#[test]
fn somebody_who_is_on_the_list_by_name_is_not_there_twice_once_their_phone_is_known() {
    let (clinician, patient) = (
        clinician(),
        TestPhone::of("orchard", "lift", "Green Ladder"),
    );
    let pairing = pair(&clinician, &patient);
    let id = plan(&clinician, "sore_back", "Green Ladder");
    assert_eq!(names(&clinician, ""), ["Green Ladder"]);
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    assert_eq!(names(&clinician, ""), ["Green Ladder"]);
    let page = of_name(&clinician, "Green");
    assert_eq!(page["pairing"], json!(pairing));
    assert_eq!(page["plans"].as_array().map(Vec::len), Some(1));
}

/// From their page to a new plan and back: the list is not looked at in between.
#[test]
fn a_plan_that_was_just_made_is_on_the_persons_page() {
    let phone = clinician();
    let id = phone.ask(json!({"do": "patient_new", "alias": "Quiet Lantern"}))["id"].take();
    plan(&phone, "sore_hip", "Quiet Lantern");
    let page = phone.ask(json!({"do": "patient", "id": id}));
    assert_eq!(page["plans"].as_array().map(Vec::len), Some(1), "{page}");
}

/// Two people of one name: a plan is put to neither by a guess, and to one where it was begun on their page.
#[test]
fn a_name_that_two_have_decides_nothing() {
    let phone = clinician();
    for _ in 0..2 {
        phone.ask(json!({"do": "patient_new", "alias": "Quiet Lantern"}));
    }
    plan(&phone, "sore_hip", "Quiet Lantern");
    assert_eq!(names(&phone, ""), ["Quiet Lantern", "Quiet Lantern"]);
    let mut listed = phone.ask(json!({"do": "patients"}));
    let ids = [0, 1].map(|at| listed["patients"][at]["id"].take());
    let plans_of = |id: &Value| {
        let page = phone.ask(json!({"do": "patient", "id": id}));
        page["plans"].as_array().map(Vec::len)
    };
    assert_eq!(ids.each_ref().map(plans_of), [Some(0), Some(0)]);
    let named =
        json!({"do": "plan_new", "pattern": "sore_hip", "for": "Quiet Lantern", "patient": ids[1]});
    phone.ask(named);
    assert_eq!(ids.each_ref().map(plans_of), [Some(0), Some(1)]);
    let nobody =
        json!({"do": "plan_new", "pattern": "sore_hip", "for": "Quiet Lantern", "patient": 99});
    assert_eq!(phone.refused(nobody), "not_found at patient");
}

#[test]
fn a_version_says_what_changed_and_why_and_the_person_is_told_why() {
    let (clinician, patient) = (
        clinician(),
        TestPhone::of("orchard", "lift", "Green Ladder"),
    );
    let pairing = pair(&clinician, &patient);
    let id = plan(&clinician, "sore_back", "Green Ladder");
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    set(&clinician, &id, "ceiling", json!(12));
    set(&clinician, &id, "why", json!("Two good weeks."));
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    let page = of_name(&clinician, "Green");
    let versions = &page["plans"][0]["versions"];
    assert_eq!(versions.as_array().map(Vec::len), Some(2), "{page}");
    assert_eq!(versions[0]["why"], "Two good weeks.");
    let changes = versions[0]["changes"].to_string();
    assert!(
        changes.contains("At most 12") && changes.contains("At most 10"),
        "{changes}"
    );
    assert_eq!(versions[1]["why"], Value::Null);
    let followed = patient.ask(json!({"do": "plan_now"}));
    assert!(
        followed.to_string().contains("Two good weeks."),
        "{followed}"
    );
    // The reason belongs to that version: the next one begins without.
    set(&clinician, &id, "ceiling", json!(13));
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    let page = of_name(&clinician, "Green");
    assert_eq!(page["plans"][0]["versions"][0]["why"], Value::Null);
}

#[test]
fn a_plan_that_is_due_comes_first_and_says_so() {
    let (clinician, patient) = (
        clinician(),
        TestPhone::of("orchard", "lift", "Green Ladder"),
    );
    let pairing = pair(&clinician, &patient);
    clinician.ask(json!({"do": "patient_new", "alias": "Amber Lamp"}));
    let id = plan(&clinician, "sore_back", "Green Ladder");
    clinician.ask(plan_for(&id, &pairing));
    assert_eq!(names(&clinician, ""), ["Amber Lamp", "Green Ladder"]);
    clinician.later(30 * 24 * 60);
    clinician.unlock();
    assert_eq!(names(&clinician, ""), ["Green Ladder", "Amber Lamp"]);
    let page = of_name(&clinician, "Green");
    assert_eq!(page["due"], true);
    assert!(page["text"].as_str().expect("text").contains("Review due"));
}

/// Typed into a note and as a private reason, and looked for in everything that can leave.
#[test]
fn a_note_and_a_private_reason_never_leave() {
    const NOTE: &str = "zzz-quillet-private-9c1";
    const REASON: &str = "zzz-quillet-reason-4e7";
    const TOLD: &str = "zzz-quillet-told-2a5";
    let (clinician, patient) = (
        clinician(),
        TestPhone::of("orchard", "lift", "Green Ladder"),
    );
    let pairing = pair(&clinician, &patient);
    patient.walk(&Script::ordinary(), None);
    patient.ask(json!({"do": "lift_keep", "done": true, "way": "squat"}));
    taken(&clinician, &shown(&patient, history_for(90, &pairing)));
    let id = plan(&clinician, "sore_back", "Green Ladder");
    set(&clinician, &id, "why_private", json!(REASON));
    set(&clinician, &id, "why", json!(TOLD));
    let patient_id = of_name(&clinician, "Green")["id"].take();
    let kept = clinician.ask(json!({"do": "patient_note", "id": patient_id, "text": NOTE}));
    assert_eq!(of_name(&clinician, "Green")["notes"][0]["text"], NOTE);
    let stays = |form: &str, bytes: &[u8]| {
        for secret in [NOTE, REASON] {
            let found = bytes
                .windows(secret.len())
                .any(|part| part == secret.as_bytes());
            assert!(!found, "{form} holds {secret}");
        }
    };
    let tells = |form: &str, bytes: &[u8]| {
        let found = bytes
            .windows(TOLD.len())
            .any(|part| part == TOLD.as_bytes());
        assert!(
            found,
            "{form}: what is told is there, so it was looked for rightly"
        );
    };
    let asked = json!({"do": "show_summary", "what": "plan", "plan": id, "to": pairing});
    stays("the summary", clinician.ask(asked).to_string().as_bytes());
    // Once under eight words, so that what is sealed can be opened here.
    let show = clinician.ask(json!({"do": "show", "what": "plan", "plan": id, "to": null}));
    let code = clinician.ask(json!({"do": "show_code", "show": show["show"]}));
    let words = code["words"].as_array().expect("words").iter();
    let words: Vec<&str> = words.map(|word| word.as_str().expect("a word")).collect();
    let code = Code::typed(&words.join(" ")).expect("a code");
    let parcel = file(&clinician, &show);
    let opened = open_unpaired(&parcel, &code, 0).expect("it opens");
    stays("the parcel", &parcel);
    stays("what is sealed", &opened.payload);
    tells("what is sealed", &opened.payload);
    let page = json!({"do": "report_make", "form": "pdf", "plan": id, "to": pairing});
    let page = clinician.ask(page);
    let page = from_base64(page["base64"].as_str().expect("bytes"));
    stays("the page of paper", &page);
    tells("the page of paper", &page);
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    patient.walk(&Script::ordinary(), None);
    patient.ask(json!({"do": "lift_keep", "done": true, "way": "squat"}));
    taken(&clinician, &shown(&patient, history_for(90, &pairing)));
    for form in ["note", "csv", "fhir"] {
        let made = clinician.ask(json!({"do": "report_make", "form": form, "of": pairing}));
        stays(form, made["text"].as_str().expect("text").as_bytes());
        if form == "fhir" {
            tells(form, made["text"].as_str().expect("text").as_bytes());
        }
    }
    let page = clinician.ask(json!({"do": "report_make", "form": "pdf", "of": pairing}));
    stays(
        "the look back",
        &from_base64(page["base64"].as_str().expect("bytes")),
    );
    let now = patient.ask(json!({"do": "plan_now"})).to_string();
    stays("the plan that is followed", now.as_bytes());
    tells("the plan that is followed", now.as_bytes());
    let gone = json!({"do": "patient_note_remove", "id": patient_id, "note": kept["id"]});
    clinician.ask(gone.clone());
    assert_eq!(clinician.refused(gone), "not_found at note");
}

#[test]
fn a_private_reason_belongs_to_its_version() {
    let mut phone = clinician();
    let id = plan(&phone, "sore_back", "Green Ladder");
    set(&phone, &id, "why_private", json!("  They lift  at night. "));
    phone.kill_and_unlock();
    let private = |phone: &TestPhone| {
        let page = phone.ask(json!({"do": "plan_edit", "id": id}));
        let notes = page["sections"].as_array().expect("sections").last();
        let fields = notes.expect("notes")["fields"]
            .as_array()
            .expect("fields")
            .clone();
        let private = fields
            .into_iter()
            .find(|field| field["id"] == "why_private");
        private.expect("the field")["value"].take()
    };
    assert_eq!(private(&phone), "They lift at night.");
    let hand = || phone.ask(json!({"do": "show", "what": "plan", "plan": id, "to": null}));
    hand();
    // The next version has its own, and the old one stays as it is.
    assert_eq!(private(&phone), Value::Null);
    set(&phone, &id, "why_private", json!("A quarrel at work."));
    set(&phone, &id, "why_private", json!(null));
    set(&phone, &id, "ceiling", json!(9));
    hand();
    let page = of_name(&phone, "Green");
    let versions = &page["plans"][0]["versions"];
    assert_eq!(versions[0]["why_private"], Value::Null);
    assert_eq!(versions[1]["why_private"], "They lift at night.");
    assert_eq!(versions[1]["why"], Value::Null);
    let long =
        json!({"do": "plan_set", "id": id, "field": "why_private", "value": "x".repeat(701)});
    assert_eq!(phone.refused(long), "too_long at value");
}

#[test]
fn who_is_taken_off_the_list_is_gone_with_plans_and_notes() {
    let phone = clinician();
    plan(&phone, "sore_hip", "Quiet Lantern");
    let id = of_name(&phone, "Quiet")["id"].take();
    phone.ask(json!({"do": "patient_rename", "id": id, "alias": "Still Lantern"}));
    assert_eq!(names(&phone, ""), ["Still Lantern"]);
    phone.ask(json!({"do": "patient_note", "id": id, "text": "Invented."}));
    phone.ask(json!({"do": "patient_remove", "id": id}));
    assert_eq!(names(&phone, ""), Vec::<String>::new());
    assert_eq!(
        phone.refused(json!({"do": "patient", "id": id})),
        "not_found at id"
    );
}
