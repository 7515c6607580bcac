//! Patients, their plans and the notes about them.
#![cfg(test)]
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

mod support;

use record::{CheckInKind, Identity};
use support::handing::{note, patient, plan, received};
use support::{Place, check_in, lift};
use vault::{PlanId, VaultError};

#[test]
fn a_patient_comes_back_with_plans_and_notes() {
    let place = Place::new();
    let vault = place.create();
    let first = vault.patients().add(&patient(Some(1), "Ladder")).unwrap();
    let second = vault.patients().add(&patient(None, "Boat")).unwrap();
    let older = vault.plans().add(&plan(1, 1)).unwrap();
    let newer = vault.plans().add(&plan(2, 1)).unwrap();
    assert_eq!(vault.patients().loose_plans().unwrap(), [older, newer]);
    vault.patients().link(older, second).unwrap();
    vault.patients().link(older, first).unwrap();
    vault.patients().link(newer, first).unwrap();
    let one = vault.patient_notes().add(first, &note("one")).unwrap();
    let two = vault.patient_notes().add(first, &note("two")).unwrap();
    vault.plan_whys().save(older, 2, &note("why")).unwrap();
    vault
        .plan_whys()
        .save(older, 2, &note("better why"))
        .unwrap();
    drop(vault);

    let vault = place.open().unwrap();
    assert_eq!(
        vault.patients().all().unwrap(),
        [
            (first, patient(Some(1), "Ladder")),
            (second, patient(None, "Boat"))
        ]
    );
    assert_eq!(
        vault.patients().by_pairing(Identity([1; 16])).unwrap(),
        Some((first, patient(Some(1), "Ladder")))
    );
    assert_eq!(
        vault.patients().by_pairing(Identity([2; 16])).unwrap(),
        None
    );
    assert_eq!(vault.patients().plans(first).unwrap(), [newer, older]);
    assert_eq!(vault.patients().of_plan(older).unwrap(), Some(first));
    assert_eq!(vault.patients().of_plan(PlanId(9)).unwrap(), None);
    assert!(vault.patients().loose_plans().unwrap().is_empty());
    assert_eq!(
        vault.patient_notes().of(first).unwrap(),
        [(two, note("two")), (one, note("one"))]
    );
    assert!(vault.patient_notes().of(second).unwrap().is_empty());
    assert_eq!(
        vault.plan_whys().find(older, 2).unwrap(),
        Some(note("better why"))
    );
    assert_eq!(vault.plan_whys().find(older, 1).unwrap(), None);
}

#[test]
fn a_phone_belongs_to_one_patient() {
    let vault = Place::new().create();
    let first = vault.patients().add(&patient(Some(1), "Ladder")).unwrap();
    assert!(matches!(
        vault.patients().add(&patient(Some(1), "Boat")),
        Err(VaultError::Storage(_))
    ));
    assert!(
        vault
            .patients()
            .save(first, &patient(None, "Ladder"))
            .unwrap()
    );
    assert!(vault.patients().add(&patient(Some(1), "Boat")).is_ok());
}

#[test]
fn what_is_removed_is_gone() {
    let place = Place::new();
    let vault = place.create();
    let id = vault.patients().add(&patient(Some(1), "Ladder")).unwrap();
    let other = vault.patients().add(&patient(None, "Boat")).unwrap();
    let plan = vault.plans().add(&plan(1, 1)).unwrap();
    vault.patients().link(plan, id).unwrap();
    let kept = vault.patient_notes().add(id, &note("one")).unwrap();
    assert!(!vault.patient_notes().remove(other, kept).unwrap());
    assert!(vault.patient_notes().remove(id, kept).unwrap());
    vault.patient_notes().add(id, &note("two")).unwrap();
    vault.plan_whys().save(plan, 2, &note("why")).unwrap();
    vault.plan_whys().remove(plan, 2).unwrap();
    assert_eq!(vault.plan_whys().find(plan, 2).unwrap(), None);
    assert!(vault.patients().remove(id).unwrap());
    assert!(!vault.patients().remove(id).unwrap());
    assert!(vault.patient_notes().of(id).unwrap().is_empty());
    assert_eq!(vault.patients().loose_plans().unwrap(), [plan]);
    assert!(matches!(
        vault.patient_notes().add(id, &note("three")),
        Err(VaultError::Storage(_))
    ));
    vault.plan_whys().save(plan, 2, &note("why")).unwrap();
    vault.plans().remove(plan).unwrap();
    assert_eq!(vault.plan_whys().find(plan, 2).unwrap(), None);
}

#[test]
fn histories_of_one_phone_are_removed_alone() {
    let place = Place::new();
    let vault = place.create();
    let one = Some(Identity([1; 16]));
    vault.received().add(one, &received("Ladder")).unwrap();
    vault.received().add(None, &received("Boat")).unwrap();
    vault.received().remove_of(Identity([1; 16])).unwrap();
    assert!(vault.received().of(one).unwrap().is_empty());
    assert_eq!(vault.received().of(None).unwrap().len(), 1);
}

#[test]
fn thousands_of_lifts_are_looked_back_at_with_two_questions() {
    let place = Place::new();
    let vault = place.create();
    let mut ids = Vec::new();
    for number in 0..3_i64 {
        let mut kept = lift("Box");
        kept.at.at_ms = number * 1000;
        let id = vault.lifts().add(&kept).unwrap();
        vault
            .check_ins()
            .add(id, &check_in(CheckInKind::During, 3))
            .unwrap();
        ids.push(id);
    }
    vault
        .check_ins()
        .add(ids[0], &check_in(CheckInKind::NextMorning, 2))
        .unwrap();
    let all = vault.check_ins().since(None).unwrap();
    assert_eq!(all.len(), 3);
    for id in &ids {
        assert_eq!(all[id], vault.check_ins().of(*id).unwrap());
    }
    let late = vault.check_ins().since(Some(1000)).unwrap();
    assert_eq!(late.keys().copied().collect::<Vec<_>>(), ids[1..]);
    let facts = vault.lifts().facts_since(None).unwrap();
    assert_eq!(facts.iter().map(|(id, _)| *id).collect::<Vec<_>>(), ids);
    for (id, facts) in facts {
        let whole = vault.lifts().find(id).unwrap().unwrap();
        assert_eq!((facts.at, facts.title), (whole.at, whole.title));
        assert_eq!((facts.body, facts.way), (whole.body, whole.way));
    }
    assert_eq!(vault.lifts().facts_since(Some(1001)).unwrap().len(), 1);
}
