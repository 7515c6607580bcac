//! Plans and histories with one thing wrong each, and what is said about them.
#![allow(
    clippy::unwrap_used,
    clippy::string_slice,
    reason = "a test may stop at the first surprise"
)]

mod support;

use record::RecordError::{CodeUnknown, NotThisShape};
use record::{History, Plan, Record};

#[test]
fn one_thing_wrong_in_a_plan_or_a_history() {
    // {1: id, 2: 1, 3: [0, 0], 4: "A", 5: "B", 6: [2, "C"], 8: 0, 9: 0, 11: [], 16: …}
    let plan = |ways: &str| {
        let id = "00".repeat(16);
        let start =
            format!("84 0d 01 80 af 01 50 {id} 02 01 03 82 00 00 04 61 41 05 61 42 06 82 02 61 43");
        let end = "11 80 12 80 13 a1 05 f4 14 80 15 80";
        Plan::from_bytes(&bytes(&format!(
            "{start} 08 00 09 00 0b 80 10 {ways} {end}"
        )))
        .map(|_| ())
    };
    assert_eq!(plan("81 a2 01 03 02 03"), Ok(()), "a way that is ruled out");
    assert_eq!(
        plan("81 a2 01 07 02 03"),
        Err(CodeUnknown),
        "a way from later"
    );
    assert_eq!(
        plan("81 a2 01 03 02 04"),
        Err(CodeUnknown),
        "a standing from later"
    );
    assert_eq!(
        plan("81 a1 01 03"),
        Err(NotThisShape),
        "a way without a standing"
    );
    let lift = |places: &str| {
        let start = "84 0f 01 80 a7 01 61 41 02 82 00 00 04 f4 06 00 07 81";
        History::from_bytes(&bytes(&format!("{start} {places} 08 80 09 80"))).map(|_| ())
    };
    let nothing = "46 00 00 00 00 00 00";
    let first = "00 f4 03 00 00 80 00 00";
    let last = "00 80 00 00";
    assert_eq!(
        lift(&format!("8d {first} {nothing} {last}")),
        Ok(()),
        "nothing told"
    );
    assert_eq!(
        lift(&format!("8f {first} {nothing} {last} f5 82 01 02")),
        Ok(()),
        "a place from later"
    );
    assert!(
        lift(&format!("8e {first} {nothing} {last} 02")).is_err(),
        "a number for a yes"
    );
    assert_eq!(
        lift(&format!("8c {first} {nothing} 00 80 00")),
        Err(NotThisShape),
        "a place too few"
    );
    assert_eq!(
        lift(&format!("8d {first} 46 00 00 0c 00 00 00 {last}")),
        Err(NotThisShape),
        "pain 11"
    );
    assert_eq!(
        lift(&format!("8d {first} 45 00 00 00 00 00 {last}")),
        Err(NotThisShape),
        "five regions"
    );
    assert_eq!(
        lift(&format!("8d 00 f4 03 07 00 80 00 00 {nothing} {last}")),
        Err(CodeUnknown),
        "a way from later"
    );
}

#[test]
fn secrets_are_not_shown() {
    assert!(!format!("{:?}", support::handoff::device()).contains("7, 7"));
    assert!(!format!("{:?}", support::handoff::paired()).contains("9, 8"));
}

fn bytes(hex: &str) -> Vec<u8> {
    let hex: String = hex.split_whitespace().collect();
    (0..hex.len())
        .step_by(2)
        .map(|at| u8::from_str_radix(&hex[at..at + 2], 16).unwrap())
        .collect()
}
