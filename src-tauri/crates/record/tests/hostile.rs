//! Bytes with one thing wrong each, and what is said about them.
#![allow(
    clippy::unwrap_used,
    clippy::string_slice,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

mod support;

use minicbor::{Decoder, Encoder};
use proptest::prelude::*;
use record::RecordError::{
    CodeUnknown, KeyTwice, MustUnderstand, Newer, NotCanonical, NotThisShape, OtherKind, Short,
    TooLong, Trailing,
};
use record::{
    About, Advice, BodyToday, CarePerson, CheckIn, Device, Draft, Followed, History, Lift,
    MAX_BYTES, MoveDraft, MoveEntry, Note, OpenSign, Paired, Patient, Plan, Received, Record,
    RecordError, SavedTask, Settings, Shift, Task, Worker,
};

/// Settings are the smallest record: `[4, 1, [], {1: 1, 2: 1}]`.
const SETTINGS: &str = "84 04 01 80 a2 01 01 02 01";

#[test]
fn the_sample_itself_is_read() {
    assert!(settings(SETTINGS).is_ok());
}

#[test]
fn one_thing_wrong_in_the_encoding() {
    let long_form = NotCanonical("a number in a longer form than needed");
    let simple = NotCanonical("a float or a simple value");
    for (what, hex, expected) in [
        ("nothing at all", "", Short),
        (
            "a byte after the record",
            "84 04 01 80 a2 01 01 02 01 00",
            Trailing,
        ),
        (
            "a second record after it",
            "84040180a201010201 84040180a201010201",
            Trailing,
        ),
        ("a key twice", "84 04 01 80 a2 01 01 01 02", KeyTwice),
        (
            "keys out of order",
            "84 04 01 80 a2 02 01 01 01",
            NotCanonical("keys out of order"),
        ),
        (
            "a text key",
            "84 04 01 80 a1 61 31 01",
            NotCanonical("a key that is not an unsigned integer"),
        ),
        (
            "a negative key",
            "84 04 01 80 a1 20 01",
            NotCanonical("a key that is not an unsigned integer"),
        ),
        ("1 in two bytes", "84 04 01 80 a2 01 18 01 02 01", long_form),
        (
            "1 in three bytes",
            "84 04 01 80 a2 01 19 0001 02 01",
            long_form,
        ),
        (
            "1 in nine bytes",
            "84 04 01 80 a2 01 1b 0000000000000001 02 01",
            long_form,
        ),
        (
            "a length in a long form",
            "98 04 04 01 80 a2 01 01 02 01",
            long_form,
        ),
        ("a half float", "84 04 01 80 a2 01 f9 3c00 02 01", simple),
        (
            "a double",
            "84 04 01 80 a2 01 fb 3ff0000000000000 02 01",
            simple,
        ),
        ("null", "84 04 01 80 a2 01 f6 02 01", simple),
        ("undefined", "84 04 01 80 a2 01 f7 02 01", simple),
        (
            "true in two bytes",
            "84 04 01 80 a2 01 f8 15 02 01",
            long_form,
        ),
        (
            "a tag",
            "84 04 01 80 a2 01 c1 01 02 01",
            NotCanonical("a tag"),
        ),
        (
            "an open-ended map",
            "84 04 01 80 bf 01 01 02 01 ff",
            NotCanonical("an indefinite or reserved length"),
        ),
        (
            "an open-ended list",
            "9f 04 01 80 a2 01 01 02 01 ff",
            NotCanonical("an indefinite or reserved length"),
        ),
        (
            "a reserved length",
            "84 04 01 80 a2 01 1c 02 01",
            NotCanonical("an indefinite or reserved length"),
        ),
        (
            "text that is not UTF-8",
            "84 04 01 80 a3 01 01 02 01 03 61 ff",
            NotCanonical("text that is not UTF-8"),
        ),
        (
            "below 64 bits",
            "84 04 01 80 a3 01 01 02 01 03 3b ffffffffffffffff",
            NotCanonical("a number below the 64-bit range"),
        ),
        (
            "a list longer than the bytes",
            "84 04 01 80 9b ffffffffffffffff",
            Short,
        ),
        (
            "a text longer than the bytes",
            "84 04 01 80 7b ffffffffffffffff",
            Short,
        ),
        (
            "a map longer than the bytes",
            "84 04 01 80 bb 00000000ffffffff 01 01",
            NotCanonical("a number in a longer form than needed"),
        ),
    ] {
        assert_eq!(settings(hex), Err(expected), "{what}");
    }
}

#[test]
fn one_thing_wrong_in_the_frame() {
    for (what, hex, expected) in [
        (
            "another kind",
            "84 07 01 80 a2 01 01 02 01",
            OtherKind {
                wanted: 4,
                found: 7,
            },
        ),
        (
            "a newer layout",
            "84 04 02 80 a2 01 01 02 01",
            Newer { major: 2 },
        ),
        (
            "a newer layout with more parts",
            "85 04 02 80 a2 01 01 02 01 00",
            Newer { major: 2 },
        ),
        ("layout 0", "84 04 00 80 a2 01 01 02 01", NotThisShape),
        (
            "a part too many",
            "85 04 01 80 a2 01 01 02 01 00",
            NotThisShape,
        ),
        ("a part too few", "83 04 01 80", NotThisShape),
        ("not a list", "a2 01 01 02 01", NotThisShape),
        (
            "a body that is a list",
            "84 04 01 80 82 01 01",
            NotThisShape,
        ),
        (
            "a must list of bare keys",
            "84 04 01 81 01 a2 01 01 02 01",
            NotThisShape,
        ),
    ] {
        assert_eq!(settings(hex), Err(expected), "{what}");
    }
}

#[test]
fn one_thing_wrong_in_the_body() {
    assert_eq!(
        settings("84 04 01 80 a1 01 01"),
        Err(NotThisShape),
        "a field is missing"
    );
    assert_eq!(
        settings("84 04 01 80 a2 01 01 02 61 61"),
        Err(NotThisShape),
        "text where a code belongs"
    );
    assert_eq!(
        settings("84 04 01 80 a2 01 04 02 01"),
        Err(CodeUnknown),
        "a code from later"
    );
    let body = |hex: &str| BodyToday::from_bytes(&bytes(hex)).map(|_| ());
    assert_eq!(body("84 02 01 80 a2 01 82 00 00 02 0a"), Ok(()), "pain 10");
    assert_eq!(
        body("84 02 01 80 a2 01 82 00 00 02 0b"),
        Err(NotThisShape),
        "pain 11"
    );
    assert_eq!(
        body("84 02 01 80 a2 01 82 00 00 02 20"),
        Err(NotThisShape),
        "pain -1"
    );
    assert_eq!(
        body("84 02 01 80 a1 01 82 00 19 059f"),
        Ok(()),
        "an offset of 23:59"
    );
    assert_eq!(
        body("84 02 01 80 a1 01 82 00 19 05a0"),
        Err(NotThisShape),
        "an offset of 24:00"
    );
    assert_eq!(
        body("84 02 01 80 a1 01 83 00 00 00"),
        Err(NotThisShape),
        "a moment of three parts"
    );
}

#[test]
fn a_key_from_later_is_skipped_unless_it_must_be_understood() {
    let key_nine = "a3 01 01 02 01 09 82 61 78 f5";
    assert!(settings(&format!("84 04 01 80 {key_nine}")).is_ok());
    assert_eq!(
        settings(&format!("84 04 01 81 81 09 {key_nine}")),
        Err(MustUnderstand)
    );
    assert!(
        settings(&format!("84 04 01 81 81 02 {key_nine}")).is_ok(),
        "a key that is understood"
    );
    assert_eq!(
        settings(&format!("84 04 01 81 80 {key_nine}")),
        Err(MustUnderstand),
        "a path of no keys"
    );
}

#[test]
fn every_key_that_is_written_can_be_marked_and_no_other() {
    marks_hold(&support::task());
    marks_hold(&support::body());
    marks_hold(&support::about());
    marks_hold(&support::settings());
    marks_hold(&support::advice());
    marks_hold(&support::lift_done());
    marks_hold(&support::lift_left());
    marks_hold(&support::check_in_told());
    marks_hold(&support::draft());
    marks_hold(&support::sign(Some(support::cleared_next_day())));
    marks_hold(&support::saved_task());
    marks_hold(&support::care::person());
    marks_hold(&support::care::person_planned());
    marks_hold(&support::care::person_plan());
    marks_hold(&support::care::entry());
    marks_hold(&support::care::shift());
    marks_hold(&support::care::draft());
    marks_hold(&support::care::worker());
    marks_hold(&support::handoff::device());
    marks_hold(&support::handoff::paired());
    marks_hold(&support::handoff::plan());
    marks_hold(&support::handoff::followed());
    marks_hold(&support::handoff::history());
    marks_hold(&support::handoff::received());
    marks_hold(&support::handoff::patient());
    marks_hold(&support::handoff::note());
    marks_hold(&support::handoff::departure());
}

#[test]
fn too_long_is_neither_written_nor_read() {
    let mut lift = support::lift_left();
    lift.title = "x".repeat(MAX_BYTES);
    assert_eq!(lift.to_bytes(), Err(TooLong));
    assert_eq!(Settings::from_bytes(&vec![0; MAX_BYTES + 1]), Err(TooLong));
}

#[test]
fn nesting_is_bounded() {
    let deep = [vec![0x81; 40_000], vec![0x00]].concat();
    assert_eq!(
        Settings::from_bytes(&deep),
        Err(NotCanonical("nested too deep"))
    );
}

#[test]
fn no_start_of_a_record_is_a_record() {
    for sample in samples() {
        for length in 0..sample.len() {
            assert_eq!(
                read_as_every_kind(&sample[..length]),
                0,
                "{length} of {} bytes",
                sample.len()
            );
        }
    }
}

#[test]
fn no_changed_byte_panics_or_reads_as_another_kind() {
    for sample in samples() {
        for at in 0..sample.len() {
            // Each single bit, and the heads that a parser is most likely to trip over.
            for flip in (0..8).map(|bit| 1 << bit).chain([0x7f, 0xff, 0x1b, 0x1f]) {
                let mut changed = sample.clone();
                changed[at] ^= flip;
                assert!(read_as_every_kind(&changed) <= 1);
            }
        }
    }
}

proptest! {
    #[test]
    fn no_bytes_panic(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        read_as_every_kind(&bytes);
    }

    #[test]
    fn no_bytes_behind_a_good_frame_panic(kind in 1_u8..=23, body in prop::collection::vec(any::<u8>(), 0..200)) {
        read_as_every_kind(&[&[0x84, kind, 1, 0x80][..], &body].concat());
    }
}

fn settings(hex: &str) -> Result<Settings, RecordError> {
    Settings::from_bytes(&bytes(hex))
}

fn bytes(hex: &str) -> Vec<u8> {
    let hex: String = hex.split_whitespace().collect();
    (0..hex.len())
        .step_by(2)
        .map(|at| u8::from_str_radix(&hex[at..at + 2], 16).unwrap())
        .collect()
}

fn samples() -> Vec<Vec<u8>> {
    let samples = include_str!("frozen/frozen.txt")
        .lines()
        .filter_map(|line| line.split_once(' '));
    samples.map(|(_, hex)| bytes(hex)).collect()
}

/// How many kinds of record these bytes are.
fn read_as_every_kind(bytes: &[u8]) -> usize {
    [
        Task::from_bytes(bytes).is_ok(),
        BodyToday::from_bytes(bytes).is_ok(),
        About::from_bytes(bytes).is_ok(),
        Settings::from_bytes(bytes).is_ok(),
        Advice::from_bytes(bytes).is_ok(),
        Lift::from_bytes(bytes).is_ok(),
        CheckIn::from_bytes(bytes).is_ok(),
        Draft::from_bytes(bytes).is_ok(),
        OpenSign::from_bytes(bytes).is_ok(),
        SavedTask::from_bytes(bytes).is_ok(),
        CarePerson::from_bytes(bytes).is_ok(),
        MoveEntry::from_bytes(bytes).is_ok(),
        Shift::from_bytes(bytes).is_ok(),
        MoveDraft::from_bytes(bytes).is_ok(),
        Worker::from_bytes(bytes).is_ok(),
        Device::from_bytes(bytes).is_ok(),
        Paired::from_bytes(bytes).is_ok(),
        Plan::from_bytes(bytes).is_ok(),
        Followed::from_bytes(bytes).is_ok(),
        History::from_bytes(bytes).is_ok(),
        Received::from_bytes(bytes).is_ok(),
        Patient::from_bytes(bytes).is_ok(),
        Note::from_bytes(bytes).is_ok(),
    ]
    .into_iter()
    .filter(|&read| read)
    .count()
}

/// Marks each key of a record as one that must be understood: it is. Marks a key that none has: it is not.
fn marks_hold<R: Record>(record: &R) {
    let written = record.to_bytes().unwrap();
    // The frame is `84 kind 01 80`, where a kind from 24 on takes two bytes (RFC 8949, section 3); the body follows.
    let body = &written[if R::KIND < 24 { 4 } else { 5 }..];
    let mut paths = Vec::new();
    collect_paths(&mut Decoder::new(body), &[], &mut paths);
    for path in paths {
        let beyond = path
            .split_last()
            .map(|(_, parent)| [parent, &[30]].concat())
            .unwrap();
        assert!(
            R::from_bytes(&marked(R::KIND, &path, body)).is_ok(),
            "kind {} path {path:?}",
            R::KIND
        );
        let refused = R::from_bytes(&marked(R::KIND, &beyond, body)).err();
        assert_eq!(
            refused,
            Some(MustUnderstand),
            "kind {} path {beyond:?}",
            R::KIND
        );
    }
}

fn marked(kind: u32, path: &[u32], body: &[u8]) -> Vec<u8> {
    let mut frame = Encoder::new(Vec::new());
    frame
        .array(4)
        .unwrap()
        .u32(kind)
        .unwrap()
        .u32(1)
        .unwrap()
        .array(1)
        .unwrap()
        .encode(path)
        .unwrap();
    [frame.into_writer(), body.to_vec()].concat()
}

fn collect_paths(decoder: &mut Decoder<'_>, parent: &[u32], paths: &mut Vec<Vec<u32>>) {
    match decoder.datatype().unwrap() {
        minicbor::data::Type::Map => {
            for _ in 0..decoder.map().unwrap().unwrap() {
                let path = [parent, &[decoder.u32().unwrap()]].concat();
                paths.push(path.clone());
                collect_paths(decoder, &path, paths);
            }
        }
        minicbor::data::Type::Array => {
            for _ in 0..decoder.array().unwrap().unwrap() {
                collect_paths(decoder, parent, paths);
            }
        }
        _ => decoder.skip().unwrap(),
    }
}
