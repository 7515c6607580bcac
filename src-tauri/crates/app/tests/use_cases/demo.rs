//! Invented demo data: marked as that, and never over somebody's own.

use crate::phone::TestPhone;
use app::demo::{self, DemoError};
use serde_json::json;

#[test]
fn demo_data_fills_home_and_history_and_is_marked_as_invented() {
    let phone = TestPhone::new("orchard");
    demo::fill(phone.app()).expect("an empty phone can be filled");
    assert_eq!(phone.ask(json!({"do": "hello"}))["demo"], true);
    let home = phone.ask(json!({"do": "home"}));
    let note = home["notes"][0].as_str().expect("a note");
    assert!(note.starts_with("Invented demo data.") && note.contains(demo::PASSPHRASE));
    assert_eq!(home["saved"].as_array().map(Vec::len), Some(2));
    assert_eq!(
        home["morning"].as_array().map(Vec::len),
        Some(1),
        "yesterday's lift is to be asked about"
    );
    assert_eq!(home["draft"], json!(null));
    assert_eq!(home["body_kept"], json!(null), "today was not asked yet");
    let history = phone.ask(json!({"do": "history"}));
    let entries = history["entries"].as_array().expect("entries");
    assert_eq!(entries.len(), 6);
    assert!(entries.iter().any(|entry| entry["done"] == false));
    assert_eq!(entries[0]["day_text"], "Yesterday");
}

/// Three people by code; care plans with the day on which they are looked at again; a shift that waits to be handed over.
#[test]
fn demo_data_holds_people_who_are_helped_and_a_shift() {
    let phone = TestPhone::new("orchard");
    demo::fill(phone.app()).expect("filled");
    let people = phone.ask(json!({"do": "people"}));
    let codes: Vec<&str> = people["people"]
        .as_array()
        .expect("people")
        .iter()
        .map(|one| one["code"].as_str().expect("a code"))
        .collect();
    assert_eq!(codes, ["A7", "K3", "M9"]);
    let plan = phone.ask(json!({"do": "care_plan", "person": 2, "move": "bed_to_chair"}));
    assert_eq!(plan["plan"]["review_on"], "2026-11-30");
    let open = phone.ask(json!({"do": "shift"}))["open"].take();
    let told = open["text"].as_str().expect("a text");
    assert_eq!(
        (&open["plain"], &open["proofs"]),
        (&json!(3), &json!(1)),
        "{told}"
    );
    for line in [
        "A7, From bed to chair: done. Stand aid",
        "K3, From bed to chair: refused, and the office was asked",
        "14:20 M9, ",
        "14:20 A7, ",
    ] {
        assert!(told.contains(line), "{line} in\n{told}");
    }
}

#[test]
fn the_passphrase_that_is_shown_opens_it() {
    let mut phone = TestPhone::new("harbour");
    demo::fill(phone.app()).expect("filled");
    phone.kill_and_start();
    phone.ask(json!({"do": "unlock", "passphrase": demo::PASSPHRASE}));
    demo::fill(phone.app()).expect("once more changes nothing");
    assert_eq!(
        phone.ask(json!({"do": "history"}))["entries"]
            .as_array()
            .map(Vec::len),
        Some(6)
    );
}

#[test]
fn somebodys_own_vault_is_never_filled() {
    let phone = TestPhone::set_up("orchard");
    assert_eq!(demo::fill(phone.app()), Err(DemoError::NotEmpty));
    assert_eq!(phone.ask(json!({"do": "home"}))["notes"], json!([]));
}
