//! Pairings, numbers, plans and histories: kept, found again, and gone with what they belong to.
#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod support;

use record::{Device, Identity, MorningAfter, ParcelPurpose, SecretBytes};
use support::handing::{followed, paired, plan, practice, received};
use support::{Place, at};
use vault::{PlanId, PracticeId, VaultError};

#[test]
fn keys_of_the_device_are_kept_once() {
    let place = Place::new();
    let vault = place.create();
    assert_eq!(vault.device().load(), Ok(None));
    let device = Device {
        keys: SecretBytes::new(vec![7; 64]),
        alias: None,
        made_at: at(0),
    };
    vault.device().save(&device).unwrap();
    drop(vault);
    assert_eq!(place.open().unwrap().device().load(), Ok(Some(device)));
}

#[test]
fn a_pairing_is_kept_renamed_and_ended_with_its_numbers() {
    let place = Place::new();
    let vault = place.create();
    let (one, other) = (paired(1, "Blue Kettle"), paired(2, "Red Boat"));
    vault.pairings().add(&one).unwrap();
    vault.pairings().add(&other).unwrap();
    assert!(matches!(
        vault.pairings().add(&one),
        Err(VaultError::Storage(_))
    ));
    assert_eq!(vault.pairings().all(), Ok(vec![one.clone(), other.clone()]));

    let renamed = paired(1, "Old Kettle");
    assert_eq!(vault.pairings().save(&renamed), Ok(true));
    assert_eq!(vault.pairings().save(&paired(3, "Nobody")), Ok(false));
    assert_eq!(vault.pairings().find(one.id), Ok(Some(renamed)));

    let plan = ParcelPurpose::Plan;
    vault.sent().save(one.id, plan, 5).unwrap();
    vault.sent().save(one.id, plan, u64::MAX).unwrap();
    vault.seen().save(one.id, plan, b"seen").unwrap();
    assert_eq!(vault.sent().last(one.id, plan), Ok(Some(u64::MAX)));
    assert_eq!(vault.sent().last(one.id, ParcelPurpose::History), Ok(None));
    assert_eq!(vault.seen().load(one.id, plan), Ok(Some(b"seen".to_vec())));
    assert_eq!(vault.seen().load(other.id, plan), Ok(None));

    assert_eq!(vault.pairings().remove(one.id), Ok(true));
    assert_eq!(vault.pairings().remove(one.id), Ok(false));
    assert_eq!(vault.sent().last(one.id, plan), Ok(None));
    assert_eq!(vault.seen().load(one.id, plan), Ok(None));
    assert!(
        vault.seen().save(one.id, plan, b"seen").is_err(),
        "no numbers without a pairing"
    );
}

#[test]
fn what_a_code_opened_is_taken_once() {
    let place = Place::new();
    let vault = place.create();
    assert_eq!(vault.opened().has(&[1; 32]), Ok(false));
    vault.opened().add(&[1; 32], 5).unwrap();
    assert_eq!(vault.opened().has(&[1; 32]), Ok(true));
    assert!(vault.opened().add(&[1; 32], 6).is_err());
}

#[test]
fn a_plan_made_here_keeps_every_version_that_was_handed_over() {
    let place = Place::new();
    let vault = place.create();
    let id = vault.plans().add(&plan(1, 1)).unwrap();
    assert_eq!(vault.plan_versions().newest(id), Ok(None));
    vault.plan_versions().add(id, &plan(1, 1)).unwrap();
    vault.plan_versions().add(id, &plan(1, 2)).unwrap();
    assert!(vault.plan_versions().add(id, &plan(1, 2)).is_err());
    assert!(vault.plan_versions().add(PlanId(99), &plan(1, 1)).is_err());
    assert_eq!(vault.plan_versions().newest(id), Ok(Some(plan(1, 2))));
    assert_eq!(
        vault.plan_versions().of(id),
        Ok(vec![plan(1, 1), plan(1, 2)])
    );
    assert_eq!(vault.plans().save(id, &plan(1, 3)), Ok(true));
    assert_eq!(vault.plans().all(), Ok(vec![(id, plan(1, 3))]));
    assert_eq!(vault.plans().remove(id), Ok(true));
    assert_eq!(vault.plans().find(id), Ok(None));
    assert_eq!(vault.plan_versions().of(id), Ok(Vec::new()));
}

#[test]
fn one_plan_is_followed_at_a_time_and_none_is_lost() {
    let place = Place::new();
    let vault = place.create();
    assert_eq!(vault.followed().active(), Ok(None));
    assert_eq!(vault.followed().stop(at(0)), Ok(false));
    vault.followed().follow(&followed(1, 1)).unwrap();
    vault.followed().follow(&followed(1, 2)).unwrap();
    vault.followed().follow(&followed(2, 3)).unwrap();
    assert_eq!(vault.followed().active(), Ok(Some(followed(2, 3))));
    let newest = vault.followed().newest_of(Identity([1; 16])).unwrap();
    let newest = newest.unwrap();
    assert_eq!((newest.plan.version, newest.stopped_at), (2, Some(at(3))));
    assert_eq!(vault.followed().stop(at(9)), Ok(true));
    assert_eq!(vault.followed().active(), Ok(None));
    let versions: Vec<u32> = vault
        .followed()
        .all()
        .unwrap()
        .iter()
        .map(|followed| followed.plan.version)
        .collect();
    assert_eq!(versions, [1, 2, 3]);
}

#[test]
fn histories_stay_when_a_pairing_ends_and_go_to_the_one_that_takes_its_place() {
    let place = Place::new();
    let vault = place.create();
    let (old, new) = (paired(1, "Green Ladder"), paired(2, "Green Ladder"));
    vault.pairings().add(&old).unwrap();
    let id = vault
        .received()
        .add(Some(old.id), &received("Green Ladder"))
        .unwrap();
    let unknown = vault.received().add(None, &received("Somebody")).unwrap();
    vault.pairings().remove(old.id).unwrap();
    vault.received().hand_on(old.id, new.id).unwrap();
    assert_eq!(vault.received().of(Some(old.id)), Ok(Vec::new()));
    assert_eq!(
        vault.received().of(Some(new.id)),
        Ok(vec![(id, received("Green Ladder"))])
    );
    assert_eq!(
        vault.received().of(None),
        Ok(vec![(unknown, received("Somebody"))])
    );
}

#[test]
fn numbers_and_what_they_stand_for_are_kept_together_or_not_at_all() {
    let place = Place::new();
    let vault = place.create();
    vault.pairings().add(&paired(1, "Blue Kettle")).unwrap();
    let plan = ParcelPurpose::Plan;
    let kept = vault.together(|vault| {
        vault.followed().follow(&followed(1, 1))?;
        vault.seen().save(Identity([1; 16]), plan, b"seen")?;
        vault.seen().save(Identity([9; 16]), plan, b"nobody")
    });
    assert!(kept.is_err());
    assert_eq!(vault.followed().active(), Ok(None));
    assert_eq!(vault.seen().load(Identity([1; 16]), plan), Ok(None));
}

#[test]
fn the_log_of_a_plan_is_kept_told_more_and_taken_back() {
    let place = Place::new();
    let vault = place.create();
    let first = vault.practice().add(&practice(4, 1)).unwrap();
    let second = vault.practice().add(&practice(5, 30)).unwrap();
    let mut told = practice(4, 1);
    told.morning = Some(MorningAfter {
        at: at(20),
        pain: None,
        back_to_usual: None,
    });
    assert_eq!(vault.practice().save(first, &told), Ok(true));
    assert_eq!(vault.practice().save(PracticeId(9), &told), Ok(false));
    assert_eq!(vault.practice().find(first), Ok(Some(told.clone())));
    assert_eq!(vault.practice().remove(second), Ok(true));
    assert_eq!(vault.practice().remove(second), Ok(false));
    drop(vault);
    let vault = place.open().unwrap();
    assert_eq!(vault.practice().all(), Ok(vec![(first, told)]));
    let third = vault.practice().add(&practice(6, 40)).unwrap();
    assert_ne!(third, second, "an id is never used twice");
}
