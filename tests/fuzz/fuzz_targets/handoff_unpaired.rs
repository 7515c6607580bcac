//! Any bytes as a parcel under a code, as they are and with a fitting head and checksum: nothing that was not
//! sealed opens. Each one that gets as far as the seal costs a slow hash, so few a second come by. What was
//! found is kept in `corpus/handoff_unpaired` and replayed by `handoff`'s own tests.

#![no_main]

use handoff::{Code, open_unpaired, recognise};
use libfuzzer_sys::fuzz_target;

/// The words of `tests/vectors/handoff/frozen/unpaired_by_an_independent_sealer.toml`.
const WORDS: &str = include_str!("handoff_unpaired_words.txt");
/// A time at which that parcel holds.
const NOON: i64 = 1_795_597_920_000;

fuzz_target!(|bytes: &[u8]| {
    let code = Code::typed(WORDS.trim()).expect("eight words");
    let mut fitted = bytes.to_vec();
    if let Some(covered) = bytes.len().checked_sub(4).filter(|length| *length >= 10) {
        fitted[..6].copy_from_slice(b"HWHO\x01\x03");
        let length = (bytes.len() as u32).to_be_bytes();
        fitted[7..10].copy_from_slice(&length[1..]);
        let checksum = crc32fast::hash(&fitted[..covered]).to_be_bytes();
        fitted[covered..].copy_from_slice(&checksum);
    }
    for bytes in [bytes, &fitted] {
        if open_unpaired(bytes, &code, NOON).is_ok() {
            assert!(recognise(bytes).is_ok());
        }
    }
});
