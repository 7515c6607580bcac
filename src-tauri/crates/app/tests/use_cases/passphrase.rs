//! A new passphrase, and erasing everything.

use crate::phone::{PASSPHRASE, TestPhone};
use crate::script::Script;
use chrono::Duration;
use serde_json::{Value, json};

const NEW: &str = "eleven quiet lanterns";

fn change(old: &str, new: &str, again: &str) -> Value {
    json!({"do": "passphrase_change", "old": old, "new": new, "again": again})
}

fn unlock(passphrase: &str) -> Value {
    json!({"do": "unlock", "passphrase": passphrase})
}

fn erase(passphrase: &str) -> Value {
    json!({"do": "erase_everything", "passphrase": passphrase})
}

#[test]
fn the_new_passphrase_opens_what_the_old_one_kept() {
    let mut phone = TestPhone::with_an_owner("orchard");
    let id = phone.lift(&Script::ordinary());
    assert_eq!(phone.ask(change(PASSPHRASE, NEW, NEW)), json!({}));
    phone.ask(json!({"do": "history_entry", "id": id}));
    phone.kill_and_start();
    assert_eq!(
        phone.refused(unlock(PASSPHRASE)),
        "wrong_passphrase at passphrase"
    );
    phone.ask(unlock(NEW));
    phone.ask(json!({"do": "history_entry", "id": id}));
}

#[test]
fn what_does_not_fit_changes_nothing() {
    let phone = TestPhone::set_up("orchard");
    for (command, refused) in [
        (
            change(PASSPHRASE, "nine char", "nine char"),
            "passphrase_short at new",
        ),
        (
            change(PASSPHRASE, NEW, "eleven quiet lamps"),
            "passphrase_mismatch at again",
        ),
        (
            change("not the old one", NEW, NEW),
            "wrong_passphrase at old",
        ),
    ] {
        assert_eq!(phone.refused(command), refused);
    }
    phone.ask(json!({"do": "lock"}));
    phone.ask(unlock(PASSPHRASE));
}

#[test]
fn guessing_at_the_old_one_waits_like_unlocking() {
    let phone = TestPhone::set_up("orchard");
    for _ in 0..3 {
        phone.refused(change("not the old one", NEW, NEW));
    }
    assert_eq!(phone.refused(change(PASSPHRASE, NEW, NEW)), "try_later");
    assert_eq!(phone.refused(erase(PASSPHRASE)), "try_later");
    phone.wait(Duration::seconds(2));
    phone.ask(change(PASSPHRASE, NEW, NEW));
    assert_eq!(phone.ask(json!({"do": "hello"}))["wait_s"], 0);
}

#[test]
fn neither_can_be_done_while_locked() {
    let phone = TestPhone::set_up("orchard");
    phone.ask(json!({"do": "lock"}));
    assert_eq!(phone.refused(change(PASSPHRASE, NEW, NEW)), "locked");
    assert_eq!(phone.refused(erase(PASSPHRASE)), "locked");
}

#[test]
fn erased_it_is_as_before_the_first_start() {
    let mut phone = TestPhone::with_an_owner("orchard");
    phone.ask(json!({"do": "language_set", "language": "es"}));
    phone.lift(&Script::ordinary());
    assert_eq!(phone.ask(erase(PASSPHRASE)), json!({}));
    let hello = phone.ask(json!({"do": "hello"}));
    assert_eq!(
        (&hello["first_start"], &hello["locked"], &hello["language"]),
        (&json!(true), &json!(true), &json!("es"))
    );
    assert_eq!(phone.refused(json!({"do": "home"})), "locked");
    assert_eq!(phone.refused(unlock(PASSPHRASE)), "not_set_up");
    let left: Vec<_> = std::fs::read_dir(phone.folder())
        .expect("the folder")
        .filter_map(|entry| entry.ok()?.file_name().into_string().ok())
        .collect();
    assert_eq!(left, ["device.json"]);
    phone.kill_and_start();
    phone.ask(json!({
        "do": "first_start", "use": "lift", "units": "kg", "passphrase": NEW, "again": NEW,
    }));
    let history = phone.ask(json!({"do": "history"}));
    assert_eq!(history["entries"], json!([]));
}

#[test]
fn with_a_wrong_passphrase_nothing_is_erased() {
    let phone = TestPhone::with_an_owner("orchard");
    let id = phone.lift(&Script::ordinary());
    assert_eq!(
        phone.refused(erase("not the old one")),
        "wrong_passphrase at passphrase"
    );
    phone.ask(json!({"do": "history_entry", "id": id}));
}

#[test]
fn an_erase_that_was_stopped_goes_on_at_the_next_start() {
    let mut phone = TestPhone::set_up("orchard");
    #[allow(
        clippy::disallowed_methods,
        reason = "a test leaves the mark of a stopped erase"
    )]
    std::fs::write(phone.folder().join("erase"), b"").expect("written");
    phone.kill_and_start();
    assert_eq!(phone.ask(json!({"do": "hello"}))["first_start"], true);
    assert!(!phone.folder().join("vault.db").exists());
    assert!(!phone.folder().join("erase").exists());
}
