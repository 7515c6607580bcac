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
