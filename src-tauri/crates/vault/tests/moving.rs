//! People who are helped to move, the log of moves, and shifts.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod support;

use record::{CarePerson, Erased, MoveDraft, MoveEntry, MoveResult, Shift, Worker};
use support::{Place, at};
use vault::{CarePersonId, ShiftId, Vault, VaultError};

fn person(code: &str) -> CarePerson {
    CarePerson {
        code: code.to_owned(),
        picture: "kettle".to_owned(),
        since: at(0),
        legs: None,
        follows: None,
        arms_strong: None,
        mass_g: None,
        equipment: None,
        noted_at: None,
        moves: Vec::new(),
        plans: None,
    }
}

fn entry(result: MoveResult) -> MoveEntry {
    MoveEntry {
        at: at(1),
        person: 1,
        code: "A7".to_owned(),
        what: "bed_to_chair".to_owned(),
        result,
        outcome: None,
        way: None,
        workers: None,
        equipment: Vec::new(),
        helped: Vec::new(),
        signs: Vec::new(),
        report: None,
        told: None,
        rule_version: "0.1.0".to_owned(),
    }
}

fn open_shift() -> Shift {
    Shift {
        began_at: at(0),
        handed_at: None,
        erased: None,
    }
}

fn with_a_shift(place: &Place) -> (Vault, ShiftId) {
    let vault = place.create();
    let shift = vault.shifts().begin(&open_shift()).unwrap();
    for result in MoveResult::ALL {
        vault.move_entries().add(shift, &entry(*result)).unwrap();
    }
    (vault, shift)
}

#[test]
fn people_come_back_in_the_order_they_were_written_down() {
    let place = Place::new();
    let vault = place.create();
    let first = vault.care_people().add(&person("A7")).unwrap();
    let second = vault.care_people().add(&person("B2")).unwrap();
    vault.care_people().save(first, &person("A8")).unwrap();
    drop(vault);

    let vault = place.open().unwrap();
    let people = vault.care_people().all().unwrap();
    assert_eq!(people, [(first, person("A8")), (second, person("B2"))]);
    assert!(vault.care_people().remove(second).unwrap());
    assert!(!vault.care_people().remove(second).unwrap());
    assert_eq!(vault.care_people().find(second).unwrap(), None);
    assert_eq!(
        vault.care_people().save(CarePersonId(99), &person("C3")),
        Err(VaultError::NotFound)
    );
}

#[test]
fn one_shift_is_open_at_a_time() {
    let place = Place::new();
    let (vault, shift) = with_a_shift(&place);
    assert!(vault.shifts().begin(&open_shift()).is_err());
    let handed = Shift {
        handed_at: Some(at(2)),
        ..open_shift()
    };
    vault.shifts().save(shift, &handed).unwrap();
    assert_eq!(vault.shifts().open().unwrap(), None);
    assert_eq!(
        vault.shifts().last_handed_over().unwrap(),
        Some((shift, handed))
    );
    assert!(vault.shifts().begin(&open_shift()).is_ok());
}

#[test]
fn proofs_are_erased_only_when_they_are_asked_for() {
    let place = Place::new();
    let (vault, shift) = with_a_shift(&place);
    assert_eq!(vault.move_entries().erase(shift, false).unwrap(), 2);
    let left = vault.move_entries().of(shift).unwrap();
    assert!(left.iter().all(|(_, entry)| entry.result.is_proof()));
    assert_eq!(left.len(), 2);
    assert_eq!(vault.move_entries().erase(shift, true).unwrap(), 2);
    assert!(vault.move_entries().of(shift).unwrap().is_empty());
}

#[test]
fn what_was_erased_is_still_counted() {
    let place = Place::new();
    let (vault, shift) = with_a_shift(&place);
    let counted = Shift {
        handed_at: Some(at(2)),
        erased: Some(Erased {
            at: at(3),
            plain: 2,
            proofs: 0,
        }),
        ..open_shift()
    };
    vault.shifts().save(shift, &counted).unwrap();
    drop(vault);
    let vault = place.open().unwrap();
    assert_eq!(vault.shifts().find(shift).unwrap(), Some(counted));
}

#[test]
fn an_entry_belongs_to_a_shift_that_is_there() {
    let place = Place::new();
    let vault = place.create();
    let nowhere = vault
        .move_entries()
        .add(ShiftId(9), &entry(MoveResult::Done));
    assert!(matches!(nowhere, Err(VaultError::Storage(_))));
}

#[test]
fn the_walk_and_the_training_come_back() {
    let place = Place::new();
    let vault = place.create();
    let draft = MoveDraft {
        opened_at: at(0),
        person: 1,
        what: "car".to_owned(),
        answers: Vec::new(),
        open_question: None,
    };
    vault.move_draft().save(&draft).unwrap();
    let worker = Worker {
        trained: Some(vec!["belt".to_owned()]),
    };
    vault.worker().save(&worker).unwrap();
    drop(vault);
    let vault = place.open().unwrap();
    assert_eq!(vault.move_draft().load().unwrap(), Some(draft));
    assert_eq!(vault.worker().load().unwrap(), Some(worker));
}
