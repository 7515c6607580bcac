//! Locking, unlocking, and waiting after wrong passphrases.

use crate::phone::{PASSPHRASE, TestPhone};
use chrono::Duration;
use serde_json::{Value, json};

fn unlock(passphrase: &str) -> Value {
    json!({"do": "unlock", "passphrase": passphrase})
}

fn wrong(phone: &TestPhone, times: usize) {
    for _ in 0..times {
        assert_eq!(
            phone.refused(unlock("seven wet bears in a row")),
            "wrong_passphrase at passphrase"
        );
    }
}

#[test]
fn what_was_locked_opens_with_the_passphrase() {
    let phone = TestPhone::set_up("orchard");
    phone.ask(json!({"do": "lock"}));
    assert_eq!(phone.refused(json!({"do": "home"})), "locked");
    assert_eq!(phone.ask(unlock(PASSPHRASE)), json!({"use": "lift"}));
    phone.ask(json!({"do": "home"}));
}

#[test]
fn before_the_first_start_there_is_nothing_to_unlock() {
    assert_eq!(
        TestPhone::new("orchard").refused(unlock(PASSPHRASE)),
        "not_set_up"
    );
}

#[test]
fn while_locked_no_advice_is_given_and_warning_signs_are_readable() {
    let phone = TestPhone::set_up("orchard");
    phone.ask(json!({"do": "lock"}));
    for command in [
        "advise",
        "task_limit",
        "pose",
        "walk_start",
        "history",
        "settings",
    ] {
        assert_eq!(phone.refused(json!({"do": command})), "locked", "{command}");
    }
    let signs = phone.ask(json!({"do": "signs"}));
    assert_eq!(signs["groups"][0]["id"], "emergency");
    assert!(signs["whom"][0]["text"].is_string());
}

#[test]
fn three_tries_are_free_then_there_is_a_wait() {
    let phone = TestPhone::set_up("orchard");
    phone.ask(json!({"do": "lock"}));
    wrong(&phone, 3);
    assert_eq!(
        phone.refused(unlock(PASSPHRASE)),
        "try_later",
        "even with the right one"
    );
    assert_eq!(phone.ask(json!({"do": "hello"}))["wait_s"], 2);
    phone.wait(Duration::seconds(2));
    wrong(&phone, 1);
    assert_eq!(phone.ask(json!({"do": "hello"}))["wait_s"], 4);
    phone.wait(Duration::seconds(4));
    phone.ask(unlock(PASSPHRASE));
    phone.ask(json!({"do": "lock"}));
    wrong(&phone, 3);
}

#[test]
fn a_restart_and_a_clock_set_back_do_not_shorten_the_wait() {
    let mut phone = TestPhone::set_up("orchard");
    phone.ask(json!({"do": "lock"}));
    wrong(&phone, 3);
    phone.kill_and_start();
    assert_eq!(phone.refused(unlock(PASSPHRASE)), "try_later");
    phone.set_clock_by(Duration::days(-400));
    assert_eq!(phone.refused(unlock(PASSPHRASE)), "try_later");
    // From here the wait runs anew: nobody is kept out for as long as the clock was wrong.
    phone.wait(Duration::seconds(2));
    phone.ask(unlock(PASSPHRASE));
}

#[test]
fn left_alone_it_locks_itself() {
    let phone = TestPhone::set_up("orchard");
    let idle = phone.ask(json!({"do": "hello"}))["idle_lock_s"]
        .as_i64()
        .expect("seconds");
    phone.wait(Duration::seconds(idle - 1));
    phone.ask(json!({"do": "home"}));
    phone.wait(Duration::seconds(idle - 1));
    phone.timer();
    phone.ask(json!({"do": "home"}));
    phone.wait(Duration::seconds(idle));
    phone.timer();
    assert_eq!(phone.refused(json!({"do": "home"})), "locked");
}

#[test]
fn a_clock_that_is_set_neither_locks_it_nor_keeps_it_open() {
    let phone = TestPhone::set_up("orchard");
    for days in [1, -3] {
        phone.set_clock_by(Duration::days(days));
        phone.timer();
        phone.ask(json!({"do": "home"}));
    }
    phone.wait(Duration::minutes(3));
    phone.set_clock_by(Duration::hours(-1));
    assert_eq!(phone.refused(json!({"do": "home"})), "locked");
}

#[test]
fn asking_how_things_stand_does_not_keep_it_open() {
    let phone = TestPhone::set_up("orchard");
    for _ in 0..4 {
        phone.wait(Duration::minutes(1));
        phone.ask(json!({"do": "hello"}));
    }
    assert_eq!(phone.ask(json!({"do": "hello"}))["locked"], true);
}

#[test]
fn a_vault_that_is_gone_or_damaged_is_told_apart_from_a_wrong_passphrase() {
    let mut phone = TestPhone::set_up("orchard");
    phone.ask(json!({"do": "lock"}));
    phone.kill_and_start();
    let database = phone.folder().join("vault.db");
    let aside = phone.folder().join("aside");
    std::fs::rename(&database, &aside).expect("moved aside");
    assert_eq!(phone.refused(unlock(PASSPHRASE)), "vault_missing");
    #[allow(
        clippy::disallowed_methods,
        reason = "a test writes a damaged file on purpose"
    )]
    std::fs::write(&database, vec![7_u8; 8192]).expect("written");
    let refused = phone.refused(unlock(PASSPHRASE));
    assert!(
        ["vault_foreign", "vault_damaged"].contains(&refused.as_str()),
        "{refused}"
    );
    std::fs::rename(&aside, &database).expect("moved back");
    // None of these counts as a wrong try.
    assert_eq!(phone.ask(json!({"do": "hello"}))["wait_s"], 0);
    phone.unlock();
}
