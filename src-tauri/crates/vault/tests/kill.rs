//! What was acknowledged is on the disk, though the process is killed at once.
//!
//! The parent runs this very test program again as a child, reads the ids that the child says it has
//! kept, kills it, and opens the vault. A power cut is not tried here: that it holds then too rests on
//! `synchronous = FULL`, which is read back at every open.
#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    reason = "a test may stop at the first surprise"
)]

mod support;

use std::env;
use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};

use support::{Place, draft, lift};
use vault::{Folder, LiftFilter, LiftId, Vault};

const FOLDER: &str = "HEFTWELL_TEST_FOLDER";

#[test]
fn an_acknowledged_lift_survives_a_kill() {
    let place = Place::new();
    drop(place.create());
    let mut kept: Vec<LiftId> = Vec::new();
    for acknowledged in [1, 2, 3, 10, 40] {
        kept.extend(killed_after(&place, acknowledged));
        let vault = place.open().unwrap();
        let there = vault
            .lifts()
            .newest(&LiftFilter {
                limit: 10_000,
                ..LiftFilter::default()
            })
            .unwrap();
        for id in &kept {
            assert!(
                there.iter().any(|(found, _)| found == id),
                "{id:?} was acknowledged and is gone"
            );
        }
        assert!(
            there
                .iter()
                .all(|(_, lift)| lift.title == "kept by the child")
        );
        // The draft is saved and cleared together with the lift: never one without the other.
        assert_eq!(vault.draft().load().unwrap().unwrap().answers.len(), 1);
    }
    assert!(kept.len() >= 56);
}

/// Runs the child, kills it once it has acknowledged so many lifts, and returns all it acknowledged.
fn killed_after(place: &Place, acknowledged: usize) -> Vec<LiftId> {
    let mut child = Command::new(env::current_exe().unwrap())
        .args([
            "--exact",
            "the_child",
            "--ignored",
            "--nocapture",
            "--test-threads=1",
        ])
        .env(FOLDER, place.folder.path())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut lines = BufReader::new(child.stdout.take().unwrap()).lines();
    let id = |line: String| {
        line.strip_prefix("kept ")
            .map(|id| LiftId(id.parse().unwrap()))
    };
    let mut ids: Vec<LiftId> = lines
        .by_ref()
        .filter_map(|line| id(line.unwrap()))
        .take(acknowledged)
        .collect();
    child.kill().unwrap();
    // What it managed to say before the kill reached it counts as well.
    ids.extend(lines.map_while(Result::ok).filter_map(id));
    assert!(!child.wait().unwrap().success());
    assert!(ids.len() >= acknowledged);
    ids
}

#[test]
#[ignore = "run by the test above, as a process of its own"]
fn the_child() {
    let Some(folder) = env::var_os(FOLDER) else {
        return;
    };
    let vault = Vault::open(&Folder::new(folder), &support::passphrase()).unwrap();
    vault.draft().save(&draft("box")).unwrap();
    // An end, in case nobody kills it.
    for _ in 0..5_000 {
        let id = vault
            .together(|vault| {
                vault.draft().clear()?;
                let id = vault.lifts().add(&lift("kept by the child"))?;
                vault.draft().save(&draft("box"))?;
                Ok(id)
            })
            .unwrap();
        // On a line of its own even after the harness's "test the_child ... ".
        println!("\nkept {}", id.0);
    }
}
