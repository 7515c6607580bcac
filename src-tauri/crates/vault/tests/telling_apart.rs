//! What went wrong is told apart, and nothing is changed by a failed open.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

mod support;

use std::collections::BTreeMap;
use std::fs;

use support::{Place, lift, passphrase};
use vault::{Damage, ForeignFile, MissingFile, Passphrase, Vault, VaultError};

const PAGE_BYTES: usize = 4096;

/// A closed vault with a hundred lifts in it.
fn filled() -> Place {
    let place = Place::new();
    let vault = place.create();
    vault
        .together(|vault| {
            (0..100).try_for_each(|number| {
                vault
                    .lifts()
                    .add(&lift(&format!("lift {number}")))
                    .map(|_| ())
            })
        })
        .unwrap();
    place
}

/// Opens the vault, which must fail, and makes sure that no file was changed.
fn fails(place: &Place) -> VaultError {
    let before = files(place);
    let failure = place.open().err().unwrap();
    assert_eq!(files(place), before, "a failed open changed a file");
    failure
}

/// Contents of every file but SQLite's own index of the log, which holds no data.
fn files(place: &Place) -> BTreeMap<String, Vec<u8>> {
    let entries = fs::read_dir(place.folder.path())
        .unwrap()
        .map(|entry| entry.unwrap());
    let named = entries.map(|entry| {
        (
            entry.file_name().into_string().unwrap(),
            fs::read(entry.path()).unwrap(),
        )
    });
    named
        .filter(|(name, bytes)| {
            !(name.ends_with("-shm") || name.ends_with("-wal") && bytes.is_empty())
        })
        .collect()
}

fn flip(place: &Place, file: &str, at: usize) {
    let mut bytes = fs::read(place.file(file)).unwrap();
    bytes[at] ^= 1;
    fs::write(place.file(file), bytes).unwrap();
}

#[test]
fn a_wrong_passphrase() {
    let place = filled();
    let before = files(&place);
    for wrong in [
        "A river under old snow",
        "a river under old snow ",
        "",
        &"x".repeat(10_000),
    ] {
        let opened = Vault::open(&place.folder, &Passphrase::new(wrong.to_owned()));
        assert_eq!(opened.err(), Some(VaultError::WrongPassphrase));
    }
    assert_eq!(files(&place), before);
    assert!(place.open().is_ok());
}

#[test]
fn no_vault_and_a_missing_database() {
    let place = Place::new();
    assert_eq!(
        place.open().err(),
        Some(VaultError::Missing(MissingFile::Database))
    );
    let place = filled();
    fs::remove_file(place.file("vault.db")).unwrap();
    assert_eq!(fails(&place), VaultError::Missing(MissingFile::Database));
    assert!(
        !place.file("vault.db").exists(),
        "no empty database is put in its place"
    );
    assert_eq!(place.create_again().err(), Some(VaultError::Exists));
}

#[test]
fn both_copies_of_the_slots_missing() {
    let place = filled();
    fs::remove_file(place.file("slots")).unwrap();
    fs::remove_file(place.file("slots.copy")).unwrap();
    assert_eq!(fails(&place), VaultError::Missing(MissingFile::Slots));
    assert_eq!(
        place.create_again().err(),
        Some(VaultError::Exists),
        "the database may yet be opened"
    );
}

#[test]
fn a_damaged_page_anywhere() {
    let place = filled();
    let length = fs::metadata(place.file("vault.db")).unwrap().len();
    let pages = usize::try_from(length).unwrap() / PAGE_BYTES;
    assert!(pages > 10);
    for page in 0..pages {
        let at = page * PAGE_BYTES + 2_000;
        flip(&place, "vault.db", at);
        assert_eq!(
            fails(&place),
            VaultError::Damaged(Damage::Page),
            "page {page}"
        );
        flip(&place, "vault.db", at);
    }
    assert!(place.open().is_ok(), "with every byte as it was, it opens");
}

#[test]
fn a_database_cut_short() {
    let place = filled();
    let whole = fs::read(place.file("vault.db")).unwrap();
    for length in [
        0,
        1,
        100,
        PAGE_BYTES - 1,
        PAGE_BYTES,
        3 * PAGE_BYTES,
        whole.len() - PAGE_BYTES,
        whole.len() - 1,
    ] {
        fs::write(place.file("vault.db"), &whole[..length]).unwrap();
        assert_eq!(
            fails(&place),
            VaultError::Damaged(Damage::Page),
            "{length} bytes"
        );
    }
}

#[test]
fn another_vaults_database() {
    let (ours, other) = (filled(), filled());
    fs::copy(other.file("vault.db"), ours.file("vault.db")).unwrap();
    assert_eq!(fails(&ours), VaultError::Foreign(ForeignFile::Database));
}

#[test]
fn a_file_that_is_no_database_of_ours() {
    let place = filled();
    fs::write(
        place.file("vault.db"),
        [&b"SQLite format 3\0"[..], &[0; 8_176]].concat(),
    )
    .unwrap();
    assert_eq!(fails(&place), VaultError::Foreign(ForeignFile::Database));
    fs::write(place.file("vault.db"), vec![b'%'; 8_192]).unwrap();
    assert_eq!(fails(&place), VaultError::Foreign(ForeignFile::Database));
}

#[test]
fn a_folder_where_a_file_should_be_is_a_storage_failure() {
    let place = filled();
    fs::remove_file(place.file("vault.db")).unwrap();
    fs::create_dir(place.file("vault.db")).unwrap();
    assert!(matches!(place.open().err(), Some(VaultError::Storage(_))));
}

#[test]
fn no_randomness_leaves_no_vault_and_a_second_try_works() {
    for calls in 0..3 {
        let place = Place::new();
        let mut left = calls;
        let mut runs_dry = |bytes: &mut [u8]| {
            left -= 1;
            if left < 0 {
                Err(vault::NoRandomness)
            } else {
                support::random(bytes)
            }
        };
        let made = Vault::create_at_cost(
            &place.folder,
            &passphrase(),
            vault::Cost::FLOOR,
            &mut runs_dry,
        );
        assert_eq!(made.err(), Some(VaultError::Randomness));
        assert_eq!(
            Vault::state(&place.folder).unwrap(),
            vault::VaultState::Absent
        );
        drop(place.create());
        assert!(place.open().is_ok());
    }
}
