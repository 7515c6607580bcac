//! Any bytes as a packed payload: never more than asked for. What was found is kept in
//! `corpus/handoff_inflate` and replayed by `handoff`'s own tests.

#![no_main]

use handoff::inflate;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let (most, packed) = match bytes.split_first() {
        Some((most, packed)) => (usize::from(*most) * 16, packed),
        None => (0, bytes),
    };
    if let Ok(plain) = inflate(packed, most) {
        assert!(plain.len() <= most);
        assert_eq!(inflate(packed, 1 << 18).map(|p| p.to_vec()), Ok(plain.to_vec()));
    }
});
