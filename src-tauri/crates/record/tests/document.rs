//! `docs/formats/record.md` lists exactly the keys and codes that this crate knows.
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod support;

use record::*;

const DOCUMENT: &str = include_str!("../../../../docs/formats/record.md");

macro_rules! lists_codes {
    ($($name:ident)+) => {
        $(
            let codes: Vec<String> =
                $name::ALL.iter().map(|value| format!("{} `{}`", value.code(), value.id())).collect();
            let row = format!("| {} | {} |", stringify!($name), codes.join(", "));
            assert!(DOCUMENT.lines().any(|line| line == row), "no row {row}");
        )+
    };
}

#[test]
fn every_code_is_listed() {
    lists_codes! {
        Ability AgeBand Authority BackState BackToUsual Balance CameBy CheckInKind ClearedBy Coupling DepartureHow
        DepartureWhat DraftPurpose Follows HeightWord Help Hold Kneel Limb MoveResult NextMorning Outcome
        ParcelPurpose PracticeEvent ReachWord Region Seal Sex Sure Told Unit Units Urgency UsedFor Way WayStanding WeightBearing
    }
}

#[test]
fn every_key_is_listed() {
    lists_keys(&support::task());
    lists_keys(&support::body());
    lists_keys(&support::about());
    lists_keys(&support::settings());
    lists_keys(&support::advice());
    lists_keys(&support::lift_done());
    lists_keys(&support::check_in_told());
    lists_keys(&support::draft());
    lists_keys(&support::sign(None));
    lists_keys(&support::saved_task());
    lists_keys(&support::care::person());
    lists_keys(&support::care::person_plan());
    lists_keys(&support::care::entry());
    lists_keys(&support::care::shift());
    lists_keys(&support::care::draft());
    lists_keys(&support::care::worker());
    lists_keys(&support::handoff::device());
    lists_keys(&support::handoff::paired());
    lists_keys(&support::handoff::plan());
    lists_keys(&support::handoff::followed());
    lists_keys(&support::handoff::history());
    lists_keys(&support::handoff::received());
    lists_keys(&support::handoff::practice());
    lists_keys(&support::handoff::patient());
    lists_keys(&support::handoff::note());
    lists_keys(&support::handoff::departure());
}

/// The rows of the kind's section are the keys that can be marked "must be understood".
fn lists_keys<R: Record>(sample: &R) {
    let heading = format!("\n## {} ", R::KIND);
    let section = DOCUMENT.split_once(&heading).unwrap().1;
    let section = section
        .split_once("\n## ")
        .map_or(section, |(section, _)| section);
    let listed: Vec<u8> = section
        .lines()
        .filter_map(|line| line.strip_prefix("| ")?.split_once(" |")?.0.parse().ok())
        .collect();
    // A kind from 24 on takes two bytes (RFC 8949, section 3).
    let frame = if R::KIND < 24 { 4 } else { 5 };
    let body = sample.to_bytes().unwrap().split_off(frame);
    let known: Vec<u8> = (0..=60)
        .filter(|&key| R::from_bytes(&marked(R::KIND, key, &body)).is_ok())
        .collect();
    assert_eq!(listed, known, "kind {}", R::KIND);
}

/// A record whose frame says that the top-level `key` must be understood.
fn marked(kind: u32, key: u8, body: &[u8]) -> Vec<u8> {
    let mut frame = minicbor::Encoder::new(Vec::new());
    frame.array(4).unwrap().u32(kind).unwrap().u32(1).unwrap();
    frame.array(1).unwrap().array(1).unwrap().u8(key).unwrap();
    [frame.into_writer(), body.to_vec()].concat()
}
