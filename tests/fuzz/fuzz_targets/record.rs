//! Any bytes as a record, as they are and as the body of every kind: what is read can be written, and comes
//! back the same. What was found is kept in `corpus/record` and replayed by `record`'s own tests.

#![no_main]

use std::fmt::Debug;

use libfuzzer_sys::fuzz_target;
use record::*;

fuzz_target!(|bytes: &[u8]| {
    as_any(bytes);
    // Kinds have one byte up to 23, two after that.
    for kind in 1..=23_u8 {
        as_any(&[&[0x84, kind, 1, 0x80], bytes].concat());
    }
    for kind in 24..=26_u8 {
        as_any(&[&[0x84, 0x18, kind, 1, 0x80], bytes].concat());
    }
});

fn as_any(bytes: &[u8]) {
    as_one::<Task>(bytes);
    as_one::<BodyToday>(bytes);
    as_one::<About>(bytes);
    as_one::<Settings>(bytes);
    as_one::<Advice>(bytes);
    as_one::<Lift>(bytes);
    as_one::<CheckIn>(bytes);
    as_one::<Draft>(bytes);
    as_one::<OpenSign>(bytes);
    as_one::<SavedTask>(bytes);
    as_one::<Device>(bytes);
    as_one::<Paired>(bytes);
    as_one::<Plan>(bytes);
    as_one::<Followed>(bytes);
    as_one::<PersonPlan>(bytes);
    as_one::<PracticeEntry>(bytes);
    as_one::<History>(bytes);
    as_one::<Received>(bytes);
    as_one::<CarePerson>(bytes);
    as_one::<MoveEntry>(bytes);
    as_one::<Shift>(bytes);
    as_one::<MoveDraft>(bytes);
    as_one::<Worker>(bytes);
    as_one::<Patient>(bytes);
    as_one::<Note>(bytes);
    as_one::<Departure>(bytes);
}

fn as_one<R: Record + PartialEq + Debug>(bytes: &[u8]) {
    if let Ok(record) = R::from_bytes(bytes) {
        // What is passed over is not written again, so the bytes may be fewer, never more.
        let written = record.to_bytes().expect("what was read can be written");
        assert!(written.len() <= bytes.len());
        assert_eq!(R::from_bytes(&written), Ok(record));
    }
}
