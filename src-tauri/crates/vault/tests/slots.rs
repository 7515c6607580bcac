//! Two copies of the key slots, and a new passphrase that touches nothing else.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

mod support;

use std::fs;

use sha2::{Digest, Sha256};
use support::{Place, lift, passphrase, random};
use vault::{Cost, Damage, ForeignFile, Passphrase, Vault, VaultError, VaultState};

/// Bytes before the first slot: magic 8, layout 1, vault id 16, count 1.
const BEFORE_SLOTS: usize = 26;

fn new_passphrase() -> Passphrase {
    Passphrase::new("eleven quiet lanterns".to_owned())
}

fn closed() -> Place {
    let place = Place::new();
    drop(place.create());
    place
}

fn change(place: &Place) {
    let mut vault = place.open().unwrap();
    vault
        .change_passphrase_at_cost(&passphrase(), &new_passphrase(), Cost::FLOOR, &mut random)
        .unwrap();
}

/// Writes both copies with `edit` made to the bytes and the checksum made to fit again.
fn rewrite(place: &Place, edit: impl Fn(&mut Vec<u8>)) {
    let mut bytes = fs::read(place.file("slots")).unwrap();
    bytes.truncate(bytes.len() - 32);
    edit(&mut bytes);
    bytes.extend(Sha256::digest(&bytes));
    fs::write(place.file("slots"), &bytes).unwrap();
    fs::write(place.file("slots.copy"), &bytes).unwrap();
}

#[test]
fn the_file_has_the_documented_length_and_start() {
    let place = closed();
    let bytes = fs::read(place.file("slots")).unwrap();
    assert_eq!(bytes.len(), BEFORE_SLOTS + 102 + 32);
    assert!(bytes.starts_with(b"HFTWSLOT\x01"));
    assert_eq!(
        bytes[9..25],
        fs::read(place.file("vault.db")).unwrap()[..16],
        "the vault id is the database's salt"
    );
    assert_eq!(
        bytes[BEFORE_SLOTS..BEFORE_SLOTS + 14],
        [1, 1, 0, 0, 76, 0, 0, 0, 0, 2, 0, 0, 0, 1]
    );
    assert_eq!(bytes, fs::read(place.file("slots.copy")).unwrap());
}

#[test]
fn the_standard_cost_is_used_where_none_is_chosen() {
    let place = Place::new();
    drop(Vault::create(&place.folder, &passphrase(), &mut random).unwrap());
    let bytes = fs::read(place.file("slots")).unwrap();
    assert_eq!(
        bytes[BEFORE_SLOTS + 2..BEFORE_SLOTS + 14],
        [0, 1, 0, 0, 0, 0, 0, 3, 0, 0, 0, 1]
    );
    assert!(place.open().is_ok());
}

#[test]
fn one_copy_lost_or_damaged_the_other_opens_and_brings_it_back() {
    for name in ["slots", "slots.copy"] {
        let place = closed();
        let whole = fs::read(place.file("slots")).unwrap();
        fs::remove_file(place.file(name)).unwrap();
        assert!(place.open().is_ok(), "{name} lost");
        assert_eq!(fs::read(place.file(name)).unwrap(), whole);
        for at in 0..whole.len() {
            let mut damaged = whole.clone();
            damaged[at] ^= 0x40;
            fs::write(place.file(name), damaged).unwrap();
            // A changed layout byte, too: the checksum is looked at first.
            if at % 20 == 8 || at == whole.len() - 1 {
                assert!(place.open().is_ok(), "{name} damaged at {at}");
                assert_eq!(fs::read(place.file(name)).unwrap(), whole);
            }
        }
    }
}

#[test]
fn both_copies_damaged_is_said_and_not_taken_for_a_wrong_passphrase() {
    let place = closed();
    let whole = fs::read(place.file("slots")).unwrap();
    for at in 8..whole.len() {
        let mut damaged = whole.clone();
        damaged[at] ^= 1;
        fs::write(place.file("slots"), &damaged).unwrap();
        fs::write(place.file("slots.copy"), &damaged).unwrap();
        assert_eq!(
            place.open().err(),
            Some(VaultError::Damaged(Damage::Slots)),
            "byte {at}"
        );
    }
    for length in 8..whole.len() {
        fs::write(place.file("slots"), &whole[..length]).unwrap();
        fs::write(place.file("slots.copy"), &whole[..length]).unwrap();
        assert_eq!(
            place.open().err(),
            Some(VaultError::Damaged(Damage::Slots)),
            "{length} bytes"
        );
    }
    fs::write(place.file("slots"), b"something else altogether").unwrap();
    fs::write(place.file("slots.copy"), b"").unwrap();
    assert_eq!(
        place.open().err(),
        Some(VaultError::Foreign(ForeignFile::Slots))
    );
}

#[test]
fn a_layout_from_later_is_newer_even_where_an_older_copy_lies_beside_it() {
    let place = closed();
    let older = fs::read(place.file("slots.copy")).unwrap();
    rewrite(&place, |bytes| bytes[8] = 2);
    fs::write(place.file("slots.copy"), older).unwrap();
    let newer = fs::read(place.file("slots")).unwrap();
    assert_eq!(place.open().err(), Some(VaultError::Newer));
    assert_eq!(fs::read(place.file("slots")).unwrap(), newer);
}

#[test]
fn a_cost_out_of_bounds_is_refused_before_any_memory_is_taken() {
    for cost in [
        [u32::MAX, 3, 1],
        [262_145, 3, 1],
        [19_455, 2, 1],
        [65_536, 11, 1],
        [65_536, 1, 1],
        [65_536, 3, 0],
    ] {
        let place = closed();
        let fields: Vec<u8> = cost
            .iter()
            .flat_map(|number| number.to_be_bytes())
            .collect();
        rewrite(&place, |bytes| {
            bytes[BEFORE_SLOTS + 2..BEFORE_SLOTS + 14].copy_from_slice(&fields);
        });
        assert_eq!(
            place.open().err(),
            Some(VaultError::Damaged(Damage::Slots)),
            "{cost:?}"
        );
    }
}

#[test]
fn every_byte_of_the_header_is_bound_to_the_key() {
    // Vault id, salt, nonce and wrapped key; version and kind only select, and cost has its own test.
    for at in (9..25)
        .chain(BEFORE_SLOTS + 14..BEFORE_SLOTS + 102)
        .step_by(7)
    {
        let place = closed();
        rewrite(&place, |bytes| bytes[at] ^= 1);
        assert_eq!(
            place.open().err(),
            Some(VaultError::WrongPassphrase),
            "byte {at}"
        );
    }
}

#[test]
fn slots_of_kinds_not_known_yet_are_passed_over_and_carried_along() {
    let place = closed();
    let later = [&[1, 3][..], &[0xaa; 100]].concat();
    rewrite(&place, |bytes| {
        bytes[25] = 2;
        bytes.splice(BEFORE_SLOTS..BEFORE_SLOTS, later.clone());
    });
    change(&place);
    assert!(Vault::open(&place.folder, &new_passphrase()).is_ok());
    let bytes = fs::read(place.file("slots")).unwrap();
    assert!(bytes.windows(later.len()).any(|window| window == later));
}

#[test]
fn a_new_passphrase_leaves_the_database_as_it_is() {
    let place = Place::new();
    let vault = place.create();
    let id = vault.lifts().add(&lift("Box, 6 kg")).unwrap();
    drop(vault);
    let before = fs::read(place.file("vault.db")).unwrap();
    change(&place);
    assert_eq!(fs::read(place.file("vault.db")).unwrap(), before);
    assert_eq!(place.open().err(), Some(VaultError::WrongPassphrase));
    let vault = Vault::open(&place.folder, &new_passphrase()).unwrap();
    assert_eq!(vault.lifts().find(id).unwrap(), Some(lift("Box, 6 kg")));
}

#[test]
fn a_wrong_old_passphrase_changes_nothing() {
    let place = closed();
    let before = fs::read(place.file("slots")).unwrap();
    let mut vault = place.open().unwrap();
    let changed = vault.change_passphrase(&new_passphrase(), &new_passphrase(), &mut random);
    assert_eq!(changed, Err(VaultError::WrongPassphrase));
    assert_eq!(fs::read(place.file("slots")).unwrap(), before);
}

#[test]
fn a_change_stopped_between_the_two_copies_is_finished_at_the_next_open() {
    let place = closed();
    let old = fs::read(place.file("slots.copy")).unwrap();
    change(&place);
    let new = fs::read(place.file("slots")).unwrap();
    fs::write(place.file("slots.copy"), old).unwrap();
    fs::write(place.file("slots.tmp"), b"half a file").unwrap();
    assert_eq!(
        place.open().err(),
        Some(VaultError::WrongPassphrase),
        "the old one is gone"
    );
    assert!(Vault::open(&place.folder, &new_passphrase()).is_ok());
    assert_eq!(fs::read(place.file("slots.copy")).unwrap(), new);
}

#[test]
fn making_a_vault_that_was_stopped_before_its_end_starts_over() {
    for stopped_before_slots in [true, false] {
        let place = closed();
        fs::rename(place.file("vault.db"), place.file("vault.db.new")).unwrap();
        fs::write(place.file("vault.db.new-wal"), b"left behind").unwrap();
        if stopped_before_slots {
            fs::remove_file(place.file("slots")).unwrap();
            fs::remove_file(place.file("slots.copy")).unwrap();
        }
        assert_eq!(Vault::state(&place.folder).unwrap(), VaultState::Absent);
        drop(place.create());
        assert!(place.open().is_ok());
        assert!(!place.file("vault.db.new").exists());
        assert!(!place.file("vault.db.new-wal").exists());
    }
}
