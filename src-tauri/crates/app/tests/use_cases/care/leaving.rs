//! What a worker hands over is on the list of what left the phone.

use super::parcels::team;
use super::*;

fn newest(phone: &TestPhone) -> Value {
    phone.ask(json!({"do": "departures"}))["entries"][0].take()
}

fn told(phone: &TestPhone, what: &str, how: &str) {
    phone.ask(json!({"do": "departure_note", "what": what, "how": how}));
}

#[test]
fn the_log_of_a_shift_is_on_it_with_its_number_of_moves_alone() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    for what in ["shift", "office"] {
        let asked = json!({"do": "departure_note", "what": what, "how": "copied"});
        assert!(["not_found", "no_draft"].contains(&phone.refused(asked).as_str()));
    }
    super::log::done(&phone, person);
    told(&phone, "shift", "copied");
    phone.ask(json!({"do": "shift_hand_over"}));
    let entry = newest(&phone);
    assert_eq!(entry["what"], "Log of a shift");
    assert_eq!(entry["parts"], json!(["1 entry"]));
    assert_eq!(entry["how"], "Copied. You said it was handed over.");
    let all = phone.ask(json!({"do": "departures"})).to_string();
    assert!(!all.contains("A7"), "{all}");
}

#[test]
fn a_text_for_the_office_names_the_code_until_the_person_is_taken_off() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    phone.ask(json!({"do": "move_start", "person": person, "move": "bed_to_chair"}));
    told(&phone, "office", "shared");
    let entry = newest(&phone);
    assert_eq!(entry["what"], "Text for the office: A7");
    assert_eq!(entry["how"], "Given to another app.");
    let sung = json!({"do": "departure_note", "what": "office", "how": "printed"});
    assert_eq!(phone.refused(sung), "not_a_choice at how");
    phone.ask(json!({"do": "person_drop", "id": person}));
    assert_eq!(newest(&phone)["what"], "Text for the office");
}

#[test]
fn a_care_plan_is_on_it_with_its_version() {
    let team = team();
    team.shown();
    let entry = newest(&team.office);
    assert_eq!(entry["what"], "Care plan: A7");
    assert_eq!(entry["parts"], json!(["Version 1"]));
    assert_eq!(entry["how"], "Shown on the screen.");
    team.office
        .ask(json!({"do": "person_drop", "id": team.person}));
    assert_eq!(newest(&team.office)["what"], "Care plan");
}
