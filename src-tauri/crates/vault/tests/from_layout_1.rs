//! A vault that the version with layout 1 wrote, on the day before there was a layout 2: it opens, with all that
//! is in it, comes up to the newest layout, and can do what is new. Everything in it is invented; its passphrase
//! is that of `support`.
#![cfg(test)]
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

mod support;

use std::fs;
use std::path::PathBuf;

use record::{CheckInKind, Device, Identity, Paired, SecretBytes};
use support::{Place, at};
use vault::{Damage, LiftFilter, LiftId, Passphrase, Vault, VaultError};

const FILES: [&str; 3] = ["slots", "slots.copy", "vault.db"];

fn frozen(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("tests/frozen/layout_1")
        .join(name)
}

/// A folder with the vault as it was written.
fn place() -> Place {
    let place = Place::new();
    fs::create_dir_all(place.folder.path()).unwrap();
    for name in FILES {
        fs::copy(frozen(name), place.file(name)).unwrap();
    }
    place
}

fn copies(place: &Place) -> Vec<String> {
    let names = place.folder.path().read_dir().unwrap();
    names
        .map(|entry| entry.unwrap().file_name().to_string_lossy().into_owned())
        .filter(|name| name.contains("before"))
        .collect()
}

#[test]
fn everything_in_it_is_there() {
    let place = place();
    let vault = place.open().unwrap();
    let lifts = vault.lifts().newest(&LiftFilter::default()).unwrap();
    let titles: Vec<&str> = lifts.iter().map(|(_, lift)| lift.title.as_str()).collect();
    assert_eq!(titles, ["Basket", "Box of pears, 6 kg"]);
    let looks = vault.check_ins().of(LiftId(1)).unwrap();
    assert_eq!(looks[0].kind, CheckInKind::NextMorning);
    assert_eq!(
        vault.saved_tasks().all().unwrap()[0].1.name,
        "Laundry basket"
    );
    assert_eq!(vault.draft().load(), Ok(Some(support::draft("bag"))));
    assert_eq!(vault.body_today().load(), Ok(Some(support::body())));
    assert_eq!(vault.signs().open().unwrap()[0].sign, "fever_unwell");
}

#[test]
fn what_is_new_can_be_kept_in_it_and_no_copy_is_left() {
    let place = place();
    let device = Device {
        keys: SecretBytes::new(vec![7; 64]),
        alias: None,
        made_at: at(0),
    };
    let paired = Paired {
        id: Identity([1; 16]),
        pairing: SecretBytes::new(vec![1]),
        name: "Blue Kettle".to_owned(),
        since: at(1),
    };
    let vault = place.open().unwrap();
    assert_eq!(vault.followed().active(), Ok(None));
    vault.device().save(&device).unwrap();
    vault.pairings().add(&paired).unwrap();
    drop(vault);
    let vault = place.open().unwrap();
    assert_eq!(vault.device().load(), Ok(Some(device)));
    assert_eq!(vault.pairings().all(), Ok(vec![paired]));
    assert!(copies(&place).is_empty(), "the new layout is proven");
}

#[test]
fn a_wrong_passphrase_and_a_damaged_page_change_nothing() {
    let place = place();
    let wrong = Passphrase::new("another river".to_owned());
    let refused = Vault::open(&place.folder, &wrong).err();
    assert_eq!(refused, Some(VaultError::WrongPassphrase));
    assert_eq!(
        fs::read(place.file("vault.db")).unwrap(),
        fs::read(frozen("vault.db")).unwrap()
    );

    let mut bytes = fs::read(frozen("vault.db")).unwrap();
    let middle = bytes.len() / 2;
    bytes[middle] ^= 1;
    fs::write(place.file("vault.db"), &bytes).unwrap();
    let refused = place.open().err();
    assert_eq!(refused, Some(VaultError::Damaged(Damage::Page)));
    assert_eq!(fs::read(place.file("vault.db")).unwrap(), bytes);
    assert!(copies(&place).is_empty(), "nothing was begun");
}
