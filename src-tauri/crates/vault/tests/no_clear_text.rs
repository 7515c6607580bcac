//! After a session, no file of the vault holds a word of what was stored, nor the passphrase.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

mod support;

use std::fs;

use record::{About, CarePerson, CheckInKind, Settings, Units, UsedFor};
use support::{MARKER, Place, at, body, check_in, draft, lift, saved, sign};
use vault::Vault;

/// Words of ours that stored records and queries are full of, besides the marker.
const WORDS: [&str; 6] = [
    "back_severe",
    "ask_person",
    "CREATE TABLE",
    "lift_log",
    "river under old snow",
    "SQLite",
];

fn session(vault: &Vault) {
    let id = vault.lifts().add(&lift(MARKER)).unwrap();
    vault
        .check_ins()
        .add(id, &check_in(CheckInKind::After, 3))
        .unwrap();
    vault.saved_tasks().add(&saved(MARKER)).unwrap();
    let person = CarePerson {
        code: MARKER.to_owned(),
        picture: "leaf".to_owned(),
        since: at(1),
        legs: None,
        follows: None,
        arms_strong: None,
        mass_g: None,
        equipment: None,
        noted_at: None,
        moves: Vec::new(),
        plans: None,
    };
    vault.care_people().add(&person).unwrap();
    vault.draft().save(&draft(MARKER)).unwrap();
    vault.body_today().save(&body()).unwrap();
    let conditions = Some(vec![MARKER.to_owned()]);
    vault
        .about()
        .save(&About {
            conditions,
            ..About::default()
        })
        .unwrap();
    vault
        .settings()
        .save(&Settings {
            used_for: UsedFor::Lift,
            units: Units::Kg,
        })
        .unwrap();
    vault.signs().raise(&sign(MARKER, at(1))).unwrap();
    vault.lifts().add(&lift(&MARKER.repeat(500))).unwrap();
}

/// Every file, and that none holds a word it must not.
fn names_of_clean_files(place: &Place) -> Vec<String> {
    let mut names = Vec::new();
    for entry in fs::read_dir(place.folder.path()).unwrap() {
        let entry = entry.unwrap();
        let name = entry.file_name().into_string().unwrap();
        let bytes = fs::read(entry.path()).unwrap();
        for word in WORDS.iter().chain(&[MARKER]) {
            let found = bytes
                .windows(word.len())
                .any(|window| window == word.as_bytes());
            assert!(!found, "{word:?} in {name}");
        }
        names.push(name);
    }
    names.sort();
    names
}

#[test]
fn while_open_with_the_log_full_and_after_closing() {
    let place = Place::new();
    let vault = place.create();
    session(&vault);
    assert!(
        fs::metadata(place.file("vault.db-wal")).unwrap().len() > 8_000,
        "the log holds the session"
    );
    assert_eq!(
        names_of_clean_files(&place),
        [
            "slots",
            "slots.copy",
            "vault.db",
            "vault.db-shm",
            "vault.db-wal"
        ]
    );

    vault.settle().unwrap();
    assert_eq!(fs::metadata(place.file("vault.db-wal")).unwrap().len(), 0);
    names_of_clean_files(&place);

    drop(vault);
    assert_eq!(
        names_of_clean_files(&place),
        ["slots", "slots.copy", "vault.db"]
    );
}

#[cfg(unix)]
#[test]
fn only_the_user_may_read_the_files() {
    use std::os::unix::fs::PermissionsExt;
    let place = Place::new();
    let vault = place.create();
    session(&vault);
    let mode = |path: std::path::PathBuf| fs::metadata(path).unwrap().permissions().mode() & 0o777;
    assert_eq!(mode(place.folder.path().to_owned()), 0o700);
    for name in ["slots", "slots.copy", "vault.db", "vault.db-wal"] {
        assert_eq!(mode(place.file(name)), 0o600, "{name}");
    }
}
