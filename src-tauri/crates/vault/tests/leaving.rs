//! The list of what left this device.
#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod support;

use record::DepartureHow;
use support::Place;
use support::handing::{departure, note};
use vault::{MOST_DEPARTURES, PatientId, VaultError};

#[test]
fn the_newest_come_first_a_page_at_a_time() {
    let place = Place::new();
    let vault = place.create();
    let kept: Vec<_> = (0..5)
        .map(|at| departure(at, DepartureHow::Shown))
        .map(|one| (vault.departures().add(&one).unwrap(), one))
        .collect();
    drop(vault);

    let vault = place.open().unwrap();
    let first = vault.departures().newest(None, 3).unwrap();
    let next = vault.departures().newest(first.last().map(|one| one.0), 3);
    let mut all = [first, next.unwrap()].concat();
    all.reverse();
    assert_eq!(all, kept);
}

#[test]
fn an_entry_is_changed_removed_and_the_list_cleared() {
    let vault = Place::new().create();
    let shown = departure(1, DepartureHow::Shown);
    let id = vault.departures().add(&shown).unwrap();
    let saved = departure(1, DepartureHow::Saved);
    assert!(vault.departures().save(id, &saved).unwrap());
    assert_eq!(vault.departures().newest(None, 9).unwrap(), [(id, saved)]);
    assert!(vault.departures().remove(id).unwrap());
    assert!(!vault.departures().remove(id).unwrap());
    assert!(!vault.departures().save(id, &shown).unwrap());
    vault.departures().add(&shown).unwrap();
    let last = vault.departures().add(&shown).unwrap();
    vault.departures().clear().unwrap();
    assert!(vault.departures().newest(None, 9).unwrap().is_empty());
    assert!(
        vault.departures().add(&shown).unwrap() > last,
        "no number is used twice"
    );
}

#[test]
fn it_is_kept_together_with_what_left_or_not_at_all() {
    let vault = Place::new().create();
    let kept: Result<(), VaultError> = vault.together(|vault| {
        vault.departures().add(&departure(1, DepartureHow::Shown))?;
        // There is no such patient.
        vault.patient_notes().add(PatientId(7), &note("one"))?;
        Ok(())
    });
    assert!(matches!(kept, Err(VaultError::Storage(_))));
    assert!(vault.departures().newest(None, 9).unwrap().is_empty());
}

#[test]
fn the_oldest_make_room() {
    let vault = Place::new().create();
    vault
        .together(|vault| {
            for at in 0..=i64::from(MOST_DEPARTURES) {
                vault
                    .departures()
                    .add(&departure(at, DepartureHow::Shown))?;
            }
            Ok(())
        })
        .unwrap();
    let all = vault.departures().newest(None, u32::MAX).unwrap();
    assert_eq!(u32::try_from(all.len()), Ok(MOST_DEPARTURES));
    assert_eq!(
        all.last().map(|(_, oldest)| oldest.at),
        Some(departure(1, DepartureHow::Shown).at)
    );
}
