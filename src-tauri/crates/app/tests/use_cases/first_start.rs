//! The first start: what the app is for, and a passphrase.

use crate::phone::{PASSPHRASE, TestPhone};
use serde_json::{Value, json};

fn first_start(passphrase: &str, again: &str) -> Value {
    json!({"do": "first_start", "use": "lift", "units": "kg", "passphrase": passphrase, "again": again})
}

#[test]
fn a_new_phone_says_that_nothing_is_set_up() {
    let hello = TestPhone::new("orchard").ask(json!({"do": "hello"}));
    assert_eq!(hello["first_start"], true);
    assert_eq!(hello["locked"], true);
    assert_eq!(hello["language"], "en");
    assert_eq!(
        hello["languages"][1],
        json!({"id": "es", "name": "Español"})
    );
    assert_eq!(hello["wait_s"], 0);
}

#[test]
fn after_the_first_start_it_is_open_and_knows_what_it_is_for() {
    let phone = TestPhone::new("orchard");
    let opened = phone.ask(json!({
        "do": "first_start", "use": "help", "units": "lb", "passphrase": PASSPHRASE, "again": PASSPHRASE,
    }));
    assert_eq!(opened, json!({"use": "help"}));
    assert_eq!(phone.ask(json!({"do": "hello"}))["locked"], false);
    let home = phone.ask(json!({"do": "home"}));
    assert_eq!(
        (&home["use"], &home["units"]),
        (&json!("help"), &json!("lb"))
    );
}

#[test]
fn a_passphrase_has_ten_characters_or_more() {
    let phone = TestPhone::new("orchard");
    assert_eq!(
        phone.refused(first_start("nine char", "nine char")),
        "passphrase_short at passphrase"
    );
    // Ten characters, whatever they weigh in bytes.
    phone.ask(first_start("ñandúñandú", "ñandúñandú"));
}

#[test]
fn a_passphrase_is_typed_the_same_twice() {
    let phone = TestPhone::new("orchard");
    assert_eq!(
        phone.refused(first_start(PASSPHRASE, "seven wet pears in a bow")),
        "passphrase_mismatch at again"
    );
    assert_eq!(
        phone.ask(json!({"do": "hello"}))["first_start"],
        true,
        "nothing was made"
    );
}

#[test]
fn it_is_set_up_once() {
    let phone = TestPhone::set_up("orchard");
    assert_eq!(
        phone.refused(first_start(PASSPHRASE, PASSPHRASE)),
        "already_set_up"
    );
}

#[test]
fn words_that_are_no_choice_are_refused_by_name() {
    let phone = TestPhone::new("orchard");
    let mut command = first_start(PASSPHRASE, PASSPHRASE);
    command["units"] = json!("stone");
    assert_eq!(phone.refused(command), "not_a_choice at units");
}

#[test]
fn the_language_is_kept_before_there_is_a_vault() {
    let mut phone = TestPhone::new("harbour");
    assert_eq!(
        phone.ask(json!({"do": "language_set", "language": "es"})),
        json!({"language": "es"})
    );
    phone.kill_and_start();
    assert_eq!(phone.ask(json!({"do": "hello"}))["language"], "es");
    assert_eq!(
        phone.refused(json!({"do": "language_set", "language": "xx"})),
        "not_a_choice at language"
    );
}

#[test]
fn errors_are_said_in_the_language_of_the_phone() {
    let phone = TestPhone::new("harbour");
    let said = |phone: &TestPhone| phone.line(r#"{"do":"home"}"#);
    assert!(said(&phone).contains("Your notes are locked."));
    phone.ask(json!({"do": "language_set", "language": "es"}));
    assert!(said(&phone).contains("Sus notas están cerradas."));
}
