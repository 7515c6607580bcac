//! What the fuzz target `record` of `tests/fuzz` starts from and has found, replayed with the same demands.
#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use std::fmt::Debug;
use std::fs;

use record::*;

const CORPUS: &str = concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../../../tests/fuzz/corpus/record"
);

#[test]
fn what_is_read_can_be_written_and_comes_back() {
    let mut read = 0;
    for file in fs::read_dir(CORPUS).unwrap() {
        let bytes = fs::read(file.unwrap().path()).unwrap();
        read += as_any(&bytes);
        for kind in 1..=23_u8 {
            read += as_any(&[&[0x84, kind, 1, 0x80], bytes.as_slice()].concat());
        }
        for kind in 24..=26_u8 {
            read += as_any(&[&[0x84, 0x18, kind, 1, 0x80], bytes.as_slice()].concat());
        }
    }
    assert!(read >= 41, "{read}");
}

fn as_any(bytes: &[u8]) -> u32 {
    as_one::<Task>(bytes)
        + as_one::<BodyToday>(bytes)
        + as_one::<About>(bytes)
        + as_one::<Settings>(bytes)
        + as_one::<Advice>(bytes)
        + as_one::<Lift>(bytes)
        + as_one::<CheckIn>(bytes)
        + as_one::<Draft>(bytes)
        + as_one::<OpenSign>(bytes)
        + as_one::<SavedTask>(bytes)
        + as_one::<Device>(bytes)
        + as_one::<Paired>(bytes)
        + as_one::<Plan>(bytes)
        + as_one::<Followed>(bytes)
        + as_one::<History>(bytes)
        + as_one::<Received>(bytes)
        + as_one::<PersonPlan>(bytes)
        + as_one::<PracticeEntry>(bytes)
        + as_one::<CarePerson>(bytes)
        + as_one::<MoveEntry>(bytes)
        + as_one::<Shift>(bytes)
        + as_one::<MoveDraft>(bytes)
        + as_one::<Worker>(bytes)
        + as_one::<Patient>(bytes)
        + as_one::<Note>(bytes)
        + as_one::<Departure>(bytes)
}

fn as_one<R: Record + PartialEq + Debug>(bytes: &[u8]) -> u32 {
    let Ok(record) = R::from_bytes(bytes) else {
        return 0;
    };
    let written = record.to_bytes().unwrap();
    assert!(written.len() <= bytes.len());
    assert_eq!(R::from_bytes(&written), Ok(record));
    1
}
