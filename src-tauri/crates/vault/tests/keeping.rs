//! What is put in comes out, after closing and opening again.

#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

mod support;

use record::{About, AgeBand, CheckInKind, Cleared, ClearedBy, Settings, Units, UsedFor, Way};
use support::{Place, at, body, check_in, draft, left, lift, saved, sign};
use vault::{LiftFilter, LiftId, Vault, VaultError, VaultState};

#[test]
fn a_folder_is_absent_then_present() {
    let place = Place::new();
    assert_eq!(Vault::state(&place.folder).unwrap(), VaultState::Absent);
    drop(place.create());
    assert_eq!(Vault::state(&place.folder).unwrap(), VaultState::Present);
    assert_eq!(place.create_again().err(), Some(VaultError::Exists));
}

#[test]
fn every_kind_of_record_comes_back() {
    let place = Place::new();
    let vault = place.create();
    let first = vault.lifts().add(&lift("Box, 6 kg")).unwrap();
    let second = vault.lifts().add(&left("Basket, 9 kg")).unwrap();
    vault
        .check_ins()
        .add(first, &check_in(CheckInKind::After, 3))
        .unwrap();
    vault
        .check_ins()
        .add(first, &check_in(CheckInKind::NextMorning, 2))
        .unwrap();
    let basket = vault.saved_tasks().add(&saved("Laundry basket")).unwrap();
    vault.draft().save(&draft("box")).unwrap();
    vault.body_today().save(&body()).unwrap();
    let about = About {
        age: Some(AgeBand::From40To64),
        ..About::default()
    };
    vault.about().save(&about).unwrap();
    let settings = Settings {
        used_for: UsedFor::Lift,
        units: Units::Kg,
    };
    vault.settings().save(&settings).unwrap();
    vault.signs().raise(&sign("fever_unwell", at(1))).unwrap();
    drop(vault);

    let vault = place.open().unwrap();
    assert_eq!(vault.lifts().find(first).unwrap(), Some(lift("Box, 6 kg")));
    assert_eq!(
        vault.lifts().find(second).unwrap(),
        Some(left("Basket, 9 kg"))
    );
    assert_eq!(vault.lifts().find(LiftId(99)).unwrap(), None);
    assert_eq!(
        vault.check_ins().of(first).unwrap(),
        [
            check_in(CheckInKind::After, 3),
            check_in(CheckInKind::NextMorning, 2)
        ]
    );
    assert_eq!(
        vault.saved_tasks().all().unwrap(),
        [(basket, saved("Laundry basket"))]
    );
    assert_eq!(vault.draft().load().unwrap(), Some(draft("box")));
    assert_eq!(vault.body_today().load().unwrap(), Some(body()));
    assert_eq!(vault.about().load().unwrap(), Some(about));
    assert_eq!(vault.settings().load().unwrap(), Some(settings));
    assert_eq!(vault.signs().open().unwrap(), [sign("fever_unwell", at(1))]);
}

#[test]
fn the_newest_draft_takes_the_place_of_the_one_before() {
    let place = Place::new();
    let vault = place.create();
    assert_eq!(vault.draft().load().unwrap(), None);
    vault.draft().save(&draft("box")).unwrap();
    vault.draft().save(&draft("bag")).unwrap();
    assert_eq!(vault.draft().load().unwrap(), Some(draft("bag")));
    vault.draft().clear().unwrap();
    assert_eq!(vault.draft().load().unwrap(), None);
}

#[test]
fn history_is_filtered_and_paged_newest_first() {
    let place = Place::new();
    let vault = place.create();
    let lunge = record::Lift {
        way: Some(Way::Lunge),
        at: at(2_000),
        ..lift("three")
    };
    let lifts = [lift("one"), left("two"), lunge, lift("four")];
    let ids: Vec<LiftId> = lifts
        .iter()
        .map(|lift| vault.lifts().add(lift).unwrap())
        .collect();
    let titles = |filter: LiftFilter| -> Vec<String> {
        vault
            .lifts()
            .newest(&filter)
            .unwrap()
            .into_iter()
            .map(|(_, lift)| lift.title)
            .collect()
    };
    let all = LiftFilter::default();
    assert_eq!(titles(all), ["four", "three", "two", "one"]);
    assert_eq!(
        titles(LiftFilter {
            done: Some(false),
            ..all
        }),
        ["two"]
    );
    assert_eq!(
        titles(LiftFilter {
            way: Some(Way::Squat),
            ..all
        }),
        ["four", "one"]
    );
    assert_eq!(
        titles(LiftFilter {
            since_ms: Some(2_001),
            ..all
        }),
        ["four", "two", "one"]
    );
    assert_eq!(
        titles(LiftFilter {
            before: Some(ids[2]),
            limit: 1,
            ..all
        }),
        ["two"]
    );
}

#[test]
fn a_removed_lift_takes_its_check_ins_along_and_its_id_is_not_used_again() {
    let place = Place::new();
    let vault = place.create();
    let id = vault.lifts().add(&lift("one")).unwrap();
    vault
        .check_ins()
        .add(id, &check_in(CheckInKind::After, 3))
        .unwrap();
    assert!(vault.lifts().remove(id).unwrap());
    assert!(!vault.lifts().remove(id).unwrap());
    assert_eq!(vault.check_ins().of(id).unwrap(), []);
    assert_eq!(
        vault.check_ins().add(id, &check_in(CheckInKind::After, 3)),
        Err(VaultError::NotFound)
    );
    assert!(vault.lifts().add(&lift("two")).unwrap() > id);
    drop(vault);
    assert!(place.open().is_ok());
}

#[test]
fn several_changes_are_kept_together_or_not_at_all() {
    let place = Place::new();
    let vault = place.create();
    vault.draft().save(&draft("box")).unwrap();
    let stopped: Result<(), VaultError> = vault.together(|vault| {
        vault.lifts().add(&lift("one"))?;
        vault.draft().clear()?;
        Err(VaultError::NotFound)
    });
    assert_eq!(stopped, Err(VaultError::NotFound));
    assert_eq!(vault.lifts().newest(&LiftFilter::default()).unwrap(), []);
    assert_eq!(vault.draft().load().unwrap(), Some(draft("box")));

    vault
        .together(|vault| {
            vault
                .lifts()
                .add(&lift("one"))
                .and_then(|_| vault.draft().clear())
        })
        .unwrap();
    assert_eq!(
        vault.lifts().newest(&LiftFilter::default()).unwrap().len(),
        1
    );
    assert_eq!(vault.draft().load().unwrap(), None);
}

#[test]
fn a_sign_is_open_once_until_it_is_cleared() {
    let place = Place::new();
    let vault = place.create();
    let cleared = Cleared {
        at: at(9),
        by: ClearedBy::Me,
    };
    vault.signs().raise(&sign("night_pain", at(1))).unwrap();
    vault.signs().raise(&sign("night_pain", at(2))).unwrap();
    assert_eq!(vault.signs().open().unwrap(), [sign("night_pain", at(1))]);
    assert!(vault.signs().clear("night_pain", cleared).unwrap());
    assert!(!vault.signs().clear("night_pain", cleared).unwrap());
    vault.signs().raise(&sign("night_pain", at(20))).unwrap();
    assert_eq!(vault.signs().open().unwrap(), [sign("night_pain", at(20))]);
    assert_eq!(vault.signs().all().unwrap().len(), 2);
    assert_eq!(vault.signs().all().unwrap()[0].cleared, Some(cleared));
}
