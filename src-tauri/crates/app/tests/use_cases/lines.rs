//! Lines that are not what they should be.

use crate::phone::{PASSPHRASE, TestPhone};
use serde_json::json;

#[test]
fn every_bad_line_gets_its_own_code() {
    let phone = TestPhone::set_up("orchard");
    for (line, code) in [
        ("", "bad_json"),
        ("{", "bad_json"),
        ("[]", "not_an_object"),
        ("{}", "missing_field"),
        (r#"{"do":7}"#, "wrong_type"),
        (r#"{"do":"fly"}"#, "unknown_command"),
        (r#"{"do":"home","home":1}"#, "unknown_field"),
        (r#"{"do":"home","do":"home"}"#, "duplicate_key"),
        (r#"{"do":"unlock"}"#, "missing_field"),
        (r#"{"do":"lift_pain","id":1,"pain":-3}"#, "out_of_range"),
    ] {
        let reply = phone.line(line);
        assert!(
            reply.contains(&format!(r#""code":"{code}""#)),
            "{line} gave {reply}"
        );
    }
    let long = format!(r#"{{"do":"home","note":"{}"}}"#, "x".repeat(70_000));
    assert!(phone.line(&long).contains(r#""code":"too_long""#));
}

#[test]
fn nothing_that_was_sent_comes_back_in_an_error() {
    let phone = TestPhone::set_up("orchard");
    phone.ask(json!({"do": "lock"}));
    for line in [
        json!({"do": "unlock", "passphrase": [PASSPHRASE]}),
        json!({"do": "unlock", "passphrase": "sesame opens nothing"}),
        json!({"do": "unlock", "passphrase": PASSPHRASE, "sesame": "sesame"}),
        json!({"do": "first_start", "use": "sesame opens", "units": "kg", "passphrase": PASSPHRASE, "again": "x"}),
    ] {
        let reply = phone.line(&line.to_string());
        assert!(reply.starts_with(r#"{"error":"#), "{reply}");
        for secret in [PASSPHRASE, "sesame opens"] {
            assert!(!reply.contains(secret), "{reply}");
        }
    }
}

#[test]
fn the_commands_of_the_door_answer_with_sentences_in_the_language() {
    let phone = TestPhone::set_up("orchard");
    let command = json!({
        "do": "advise", "task": "object",
        "person": {"back_nrs": 8, "back_state": "volatile", "knee_left_nrs": 0, "knee_right_nrs": 0,
                   "balance": "good", "can_kneel": "yes", "flags": []},
        "object": {"mass_known": true, "mass_kg": 6, "start_height": "floor", "reach": "close", "reps": 1},
    });
    let english = phone.ask(command.clone());
    let said = english["reasons"][0]["text"]
        .as_str()
        .expect("a sentence")
        .to_owned();
    phone.ask(json!({"do": "language_set", "language": "es"}));
    let spanish = phone.ask(command);
    assert_ne!(spanish["reasons"][0]["text"], said);
    assert_eq!(spanish["ways"], english["ways"]);
    assert_eq!(
        phone.refused(json!({"do": "advise", "task": "object"})),
        "missing_field at person"
    );
}
