//! The reader in `docs/formats/read_vault.py`, which shares no code with this crate, reads what it wrote.
//!
//! It needs Python with a few packages, so it is not among the plain tests:
//! `python3 -m venv venv && venv/bin/pip install argon2-cffi pynacl cryptography cbor2`, then
//! `HEFTWELL_PYTHON=$PWD/venv/bin/python cargo nextest run -p vault --run-ignored all independent_reader`.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

mod support;

use std::ffi::OsString;
use std::io::Write;
use std::path::Path;
use std::process::{Command, Output, Stdio};

use record::{
    About, AgeBand, CareMove, CarePerson, CheckInKind, DepartureHow, Device, MoveEntry, MoveResult,
    SecretBytes, Settings, Shift, Units, UsedFor, WeightBearing,
};
use support::{Place, at, body, check_in, draft, handing, left, lift, saved, sign};

const READER: &str = concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../../../docs/formats/read_vault.py"
);

#[test]
#[ignore = "needs Python with packages: see the top of this file"]
fn independent_reader_prints_every_record() {
    let Some(python) = std::env::var_os("HEFTWELL_PYTHON") else {
        return;
    };
    let place = Place::new();
    let vault = place.create();
    let first = vault.lifts().add(&lift("Caja de peras, 6 kg")).unwrap();
    let removed = vault.lifts().add(&lift("removed again")).unwrap();
    vault.lifts().remove(removed).unwrap();
    vault.lifts().add(&left("Basket")).unwrap();
    vault
        .check_ins()
        .add(first, &check_in(CheckInKind::NextMorning, 3))
        .unwrap();
    vault.saved_tasks().add(&saved("Laundry basket")).unwrap();
    vault.draft().save(&draft("bag")).unwrap();
    vault.body_today().save(&body()).unwrap();
    vault
        .about()
        .save(&About {
            age: Some(AgeBand::From40To64),
            ..About::default()
        })
        .unwrap();
    vault
        .settings()
        .save(&Settings {
            used_for: UsedFor::Lift,
            units: Units::Kg,
        })
        .unwrap();
    vault.signs().raise(&sign("fever_unwell", at(1))).unwrap();

    let person = CarePerson {
        code: "A7".to_owned(),
        picture: "leaf".to_owned(),
        since: at(1),
        legs: Some(WeightBearing::Part),
        follows: None,
        arms_strong: None,
        mass_g: None,
        equipment: None,
        noted_at: None,
        moves: vec![CareMove::of("car".to_owned())],
        plans: None,
    };
    vault.care_people().add(&person).unwrap();
    let shift = Shift {
        began_at: at(1),
        handed_at: None,
        erased: None,
    };
    let shift = vault.shifts().begin(&shift).unwrap();
    let entry = MoveEntry {
        at: at(2),
        person: 1,
        code: "A7".to_owned(),
        what: "car".to_owned(),
        result: MoveResult::NearMiss,
        outcome: None,
        way: None,
        workers: None,
        equipment: Vec::new(),
        helped: Vec::new(),
        signs: Vec::new(),
        report: None,
        told: None,
        rule_version: "0.1.0".to_owned(),
    };
    vault.move_entries().add(shift, &entry).unwrap();

    let device = Device {
        keys: SecretBytes::new(vec![7; 64]),
        alias: Some("Green Ladder".to_owned()),
        made_at: at(1),
    };
    vault.device().save(&device).unwrap();
    vault
        .pairings()
        .add(&handing::paired(1, "Blue Kettle"))
        .unwrap();
    let plan = vault.plans().add(&handing::plan(1, 1)).unwrap();
    vault
        .plan_versions()
        .add(plan, &handing::plan(1, 1))
        .unwrap();
    let patient = vault
        .patients()
        .add(&handing::patient(Some(1), "Green Ladder"))
        .unwrap();
    vault.patients().link(plan, patient).unwrap();
    vault
        .patient_notes()
        .add(patient, &handing::note("Works at night."))
        .unwrap();
    vault
        .plan_whys()
        .save(plan, 2, &handing::note("Not told."))
        .unwrap();
    vault.followed().follow(&handing::followed(2, 3)).unwrap();
    vault.practice().add(&handing::practice(4, 1)).unwrap();
    vault
        .received()
        .add(None, &handing::received("Red Boat"))
        .unwrap();

    vault
        .departures()
        .add(&handing::departure(1, DepartureHow::Shown))
        .unwrap();

    // Once with everything still in the log, once after it was brought over.
    let from_the_log = read(&python, place.folder.path(), "a river under old snow");
    drop(vault);
    let from_the_file = read(&python, place.folder.path(), "a river under old snow");
    assert_eq!(from_the_log, from_the_file);

    let printed = String::from_utf8(from_the_file.stdout).unwrap();
    assert!(
        from_the_file.status.success(),
        "{}",
        String::from_utf8_lossy(&from_the_file.stderr)
    );
    for expected in [
        r#""call": "555 0100, mornings""#,
        r#""title": "Caja de peras, 6 kg", "task": {"what": "box", "mass": {"known_g": 6000}"#,
        r#""back": 8, "back_state": "volatile""#,
        r#""done": true, "way": "squat""#,
        r#""done": false, "instead": "ask_person""#,
        r#""of_lift": 1, "check_in": {"kind": "next_morning""#,
        r#""saved_task": {"name": "Laundry basket""#,
        r#""answers": [{"what": {"choice": "bag"}}]"#,
        r#""about": {"age": "40-64"}"#,
        r#""settings": {"used_for": "lift", "units": "kg"}"#,
        r#""open_sign": {"sign": "fever_unwell""#,
        r#""care_person": {"code": "A7", "picture": "leaf""#,
        r#""legs": "part", "moves": [{"what": "car"}]"#,
        r#""of_shift": 1, "move_entry": {"at""#,
        r#""result": "near_miss""#,
        r#""device": {"keys": "64 secret bytes", "alias": "Green Ladder""#,
        r#""paired": {"id": "01010101010101010101010101010101", "pairing": "40 bytes", "name": "Blue Kettle""#,
        r#""table": "plan_version", "plan": {"id": "01010101010101010101010101010101", "version": 1"#,
        r#""followed": {"plan": {"id": "02020202020202020202020202020202", "version": 3"#,
        r#""table": "practice", "id": 1, "practice": {"at""#,
        r#""event": "done", "way": "squat", "grams": 4000, "pain": 2"#,
        r#""received": {"history": {"from_": "Red Boat""#,
        r#""way": "squat", "advised": "lunge", "mass": {"known_g": 6000}, "start": "floor", "times": 1, "pain": [3, 0, null"#,
        r#""looks": [{"kind": "during", "after_min": 2, "pain": 4, "back_to_usual": null}]"#,
        r#""table": "patient", "id": 1, "of": 1, "patient": {"alias": "Green Ladder""#,
        r#""table": "patient_plan", "plan": 1, "of": 1"#,
        r#""table": "patient_note", "id": 1, "of": 1, "note": {"at""#,
        r#""table": "plan_why", "id": 1, "of": 2, "note": {"at""#,
        r#""table": "departure", "id": 1, "departure": {"at""#,
        r#""what": "plan", "how": ["shown"], "seal": "device", "to": "Blue Kettle", "about": "Green Ladder", "version": 2"#,
        r#"{"chain": "holds"}"#,
    ] {
        assert!(printed.contains(expected), "{expected} in:\n{printed}");
    }
    assert!(!printed.contains("removed again"));
    assert!(!printed.contains("\"key "), "every key has a name");

    let wrong = read(&python, place.folder.path(), "another passphrase");
    assert_eq!(
        String::from_utf8(wrong.stderr).unwrap().trim(),
        "wrong passphrase"
    );
}

fn read(python: &OsString, folder: &Path, passphrase: &str) -> Output {
    let mut child = Command::new(python)
        .arg(READER)
        .arg(folder)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    child
        .stdin
        .take()
        .unwrap()
        .write_all(passphrase.as_bytes())
        .unwrap();
    child.wait_with_output().unwrap()
}
