//! Any bytes as a run of frames, each with a fitting checksum, as a liar would make them: whatever they
//! say, the collector only gives up what recognises itself. The first byte of each piece says how long it
//! is, in eights. What was found is kept in `corpus/handoff_frames` and replayed by `handoff`'s own tests.

#![no_main]

use handoff::{Collector, Taken, base45};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let mut collector = Collector::new();
    let mut rest = bytes;
    while let Some((&eights, after)) = rest.split_first() {
        let (piece, after) = after.split_at(after.len().min(12 + usize::from(eights) * 8));
        rest = after;
        let checksum = crc32fast::hash(piece).to_be_bytes();
        let frame = [piece, &checksum].concat();
        if let Ok(Taken::Whole(whole)) = collector.take(&base45::encode(&frame)) {
            assert!(whole.len() <= handoff::MOST_BYTES);
        }
        let _ = collector.take(&base45::encode(piece));
    }
});
