//! The bytes of sample records, pinned for ever, both ways. They were made by an independent encoder:
//! see `frozen/make_frozen.py`.

#![allow(
    clippy::unwrap_used,
    clippy::string_slice,
    reason = "a test may stop at the first surprise"
)]

mod support;

use std::fmt::Debug;

use record::{Mass, Moment, Received, Record, Task};

const FROZEN: &str = include_str!("frozen/frozen.txt");

#[test]
fn task() {
    holds("task_full", &support::task());
    holds("task_nothing_asked", &Task::default());
    holds("task_mass_known", &with_mass(Mass::Known { grams: 6_000 }));
    holds("task_mass_unknown", &with_mass(Mass::Unknown));
}

#[test]
fn body_today() {
    holds("body_full", &support::body());
    holds(
        "body_nothing_asked",
        &support::body_nothing_asked(Moment {
            at_ms: -1,
            offset_min: -300,
        }),
    );
}

#[test]
fn about_and_settings() {
    holds("about_full", &support::about());
    holds("settings", &support::settings());
}

#[test]
fn advice() {
    holds("advice_full", &support::advice());
    holds("advice_spare", &support::spare_advice());
}

#[test]
fn lift() {
    holds("lift_done", &support::lift_done());
    holds("lift_left", &support::lift_left());
}

#[test]
fn check_in() {
    holds("check_in_told", &support::check_in_told());
    holds("check_in_skipped", &support::check_in_skipped());
}

#[test]
fn draft() {
    holds("draft_full", &support::draft());
    holds("draft_empty", &support::draft_empty());
}

#[test]
fn open_sign() {
    holds("sign_open", &support::sign(None));
    holds(
        "sign_cleared",
        &support::sign(Some(support::cleared_next_day())),
    );
}

#[test]
fn patient() {
    holds("patient", &support::handoff::patient());
    holds("patient_new", &support::handoff::patient_new());
    holds("note", &support::handoff::note());
}

#[test]
fn departure() {
    holds("departure", &support::handoff::departure());
    holds("departure_bare", &support::handoff::departure_bare());
}

#[test]
fn saved_task() {
    holds("saved_task", &support::saved_task());
}

#[test]
fn moving_people() {
    use support::care;
    holds("care_person_full", &care::person());
    holds("care_person_new", &care::person_new());
    holds("care_person_planned", &care::person_planned());
    holds("person_plan", &care::person_plan());
    holds("move_entry_near_miss", &care::entry());
    holds("move_entry_refused", &care::entry_refused());
    holds("shift_handed_over", &care::shift());
    holds("shift_open", &care::shift_open());
    holds("move_draft", &care::draft());
    holds("worker", &care::worker());
    holds("worker_not_asked", &record::Worker::default());
}

#[test]
fn device_and_paired() {
    holds("device", &support::handoff::device());
    holds("paired", &support::handoff::paired());
}

#[test]
fn plan() {
    holds("plan_full", &support::handoff::plan());
    holds("plan_bare", &support::handoff::plan_bare());
    holds("plan_with_why", &support::handoff::plan_with_why());
    holds("followed", &support::handoff::followed());
}

#[test]
fn history() {
    holds("history_aid", &support::handoff::history());
    holds("history_empty", &support::handoff::history_empty());
    holds("received_aid", &support::handoff::received());
}

/// Histories of before the last place of a lift came.
#[test]
fn a_history_without_the_last_place_of_a_lift() {
    let mut first_form = support::handoff::history();
    for lift in &mut first_form.lifts {
        lift.aid_first = None;
    }
    holds("history_full", &first_form);
    let received = Received {
        history: first_form,
        ..support::handoff::received()
    };
    holds("received", &received);
}

#[test]
fn practice() {
    holds("plan_flare", &support::handoff::plan_flare());
    holds("plan_call", &support::handoff::plan_call());
    holds("history_practice", &support::handoff::history_practice());
    holds("practice_done", &support::handoff::practice());
    holds("practice_flare", &support::handoff::practice_bare());
}

fn with_mass(mass: Mass) -> Task {
    Task {
        mass: Some(mass),
        ..Task::default()
    }
}

/// The record gives the pinned bytes, and the pinned bytes give the record.
fn holds<R: Record + PartialEq + Debug>(name: &str, record: &R) {
    let pinned = pinned(name);
    assert_eq!(hex(&record.to_bytes().unwrap()), pinned, "{name}: written");
    assert_eq!(
        R::from_bytes(&bytes(pinned)).unwrap(),
        *record,
        "{name}: read"
    );
}

fn pinned(name: &str) -> &'static str {
    FROZEN
        .lines()
        .filter_map(|line| line.split_once(' '))
        .find(|(found, _)| *found == name)
        .unwrap()
        .1
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

fn bytes(hex: &str) -> Vec<u8> {
    (0..hex.len())
        .step_by(2)
        .map(|at| u8::from_str_radix(&hex[at..at + 2], 16).unwrap())
        .collect()
}
