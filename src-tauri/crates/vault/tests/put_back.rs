//! An older page put back passes every check of the file itself; the chain over the lifts finds it.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

mod support;

use std::fs;

use record::Lift;
use support::{Place, left, lift};
use vault::{Damage, LiftFilter, LiftId, Vault, VaultError};

const PAGE_BYTES: usize = 4096;

fn history(vault: &Vault) -> Vec<(LiftId, Lift)> {
    vault
        .lifts()
        .newest(&LiftFilter {
            limit: 1_000,
            ..LiftFilter::default()
        })
        .unwrap()
}

#[test]
fn no_page_put_back_changes_the_history_unnoticed() {
    let place = Place::new();
    let vault = place.create();
    for number in 0..40 {
        vault
            .lifts()
            .add(&lift(&format!("before {number}")))
            .unwrap();
    }
    drop(vault);
    let older = fs::read(place.file("vault.db")).unwrap();

    let vault = place.open().unwrap();
    vault.lifts().remove(LiftId(7)).unwrap();
    for number in 0..10 {
        vault
            .lifts()
            .add(&left(&format!("after {number}")))
            .unwrap();
    }
    let expected = history(&vault);
    drop(vault);
    let newer = fs::read(place.file("vault.db")).unwrap();

    let mut noticed_by_the_chain = 0;
    let mut changed_pages = 0;
    for start in (0..older.len().min(newer.len())).step_by(PAGE_BYTES) {
        let page = start..start + PAGE_BYTES;
        if older[page.clone()] == newer[page.clone()] {
            continue;
        }
        changed_pages += 1;
        let mut mixed = newer.clone();
        mixed[page.clone()].copy_from_slice(&older[page]);
        fs::write(place.file("vault.db"), mixed).unwrap();
        match place.open() {
            Ok(vault) => assert_eq!(history(&vault), expected, "page at {start}"),
            Err(VaultError::Damaged(Damage::Log)) => noticed_by_the_chain += 1,
            Err(VaultError::Damaged(Damage::Page)) => {}
            Err(other) => panic!("page at {start}: {other}"),
        }
    }
    assert!(changed_pages >= 4, "{changed_pages}");
    assert!(
        noticed_by_the_chain >= 3,
        "{noticed_by_the_chain} of {changed_pages}"
    );
    fs::write(place.file("vault.db"), newer).unwrap();
    assert!(place.open().is_ok());
}
