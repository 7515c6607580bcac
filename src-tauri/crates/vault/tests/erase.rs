//! Erasing on purpose: nothing of the vault is left, and a stop half way is carried through.
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod support;

use std::fs;

use support::{Place, lift, passphrase};
use vault::{MissingFile, Vault, VaultError, VaultState};

/// A closed vault with a lift in it, files that are left over from a kill, and a file that is not a vault's.
fn with_something_in_it() -> Place {
    let place = Place::new();
    let vault = place.create();
    vault.lifts().add(&lift("Box, 6 kg")).unwrap();
    drop(vault);
    for name in [
        "vault.db-wal",
        "vault.db.before-2",
        "vault.db.new",
        "slots.tmp",
    ] {
        fs::write(place.file(name), b"left over").unwrap();
    }
    fs::write(place.file("device.json"), b"{}").unwrap();
    fs::write(place.file("vault.dbx"), b"not ours").unwrap();
    place
}

fn names(place: &Place) -> Vec<String> {
    let mut names: Vec<String> = fs::read_dir(place.folder.path())
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

#[test]
fn nothing_of_the_vault_is_left_and_nothing_else_is_touched() {
    let place = with_something_in_it();
    Vault::erase(&place.folder).unwrap();
    assert_eq!(names(&place), ["device.json", "vault.dbx"]);
    assert_eq!(Vault::state(&place.folder).unwrap(), VaultState::Absent);
    assert_eq!(
        place.open().err(),
        Some(VaultError::Missing(MissingFile::Database))
    );
}

#[test]
fn the_slots_are_overwritten_in_their_place() {
    let place = with_something_in_it();
    // A second name for the same bytes on the disk shows what becomes of them.
    fs::hard_link(place.file("slots"), place.file("witness")).unwrap();
    Vault::erase(&place.folder).unwrap();
    let left = fs::read(place.file("witness")).unwrap();
    assert!(!left.is_empty() && left.iter().all(|byte| *byte == 0));
}

#[test]
fn a_new_vault_can_be_made_and_holds_nothing_of_the_old_one() {
    let place = with_something_in_it();
    Vault::erase(&place.folder).unwrap();
    let vault = place.create();
    assert!(
        vault
            .lifts()
            .newest(&Default::default())
            .unwrap()
            .is_empty()
    );
}

#[test]
fn an_erase_that_was_stopped_counts_as_done_and_is_carried_through() {
    for (what, gone) in [
        ("right after the mark", &[][..]),
        ("after one copy of the slots", &["slots"]),
        ("after the slots", &["slots", "slots.copy", "slots.tmp"]),
        ("after the database", &["slots", "slots.copy", "vault.db"]),
    ] {
        let place = with_something_in_it();
        fs::write(place.file("erase"), b"").unwrap();
        for name in gone {
            fs::remove_file(place.file(name)).unwrap();
        }
        assert_eq!(
            Vault::state(&place.folder).unwrap(),
            VaultState::Absent,
            "{what}"
        );
        assert!(place.open().is_err(), "{what}");
        Vault::finish_erase(&place.folder).unwrap();
        assert_eq!(names(&place), ["device.json", "vault.dbx"], "{what}");
    }
}

#[test]
fn making_a_vault_carries_a_stopped_erase_through_first() {
    let place = with_something_in_it();
    fs::write(place.file("erase"), b"").unwrap();
    drop(place.create());
    assert!(!place.file("erase").exists());
    assert!(!place.file("vault.db.before-2").exists());
    assert!(place.open().is_ok());
}

#[test]
fn where_there_is_nothing_to_erase_nothing_happens() {
    let place = Place::new();
    Vault::erase(&place.folder).unwrap();
    Vault::finish_erase(&place.folder).unwrap();
    drop(place.create());
    Vault::finish_erase(&place.folder).unwrap();
    assert!(place.open().is_ok(), "no erase was asked for");
}

#[test]
fn a_passphrase_is_checked_without_opening_anything() {
    let place = with_something_in_it();
    let other = vault::Passphrase::new("eleven quiet lanterns".to_owned());
    assert_eq!(
        Vault::check_passphrase(&place.folder, &passphrase()),
        Ok(())
    );
    assert_eq!(
        Vault::check_passphrase(&place.folder, &other),
        Err(VaultError::WrongPassphrase)
    );
}
