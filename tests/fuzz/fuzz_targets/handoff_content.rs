//! Any bytes as what a paired device signed and sealed, as a liar among the paired would: what opens is in
//! bounds, and the rest is refused. What was found is kept in
//! `corpus/handoff_content` and replayed by `handoff`'s own tests.

#![no_main]

#[path = "../sealing.rs"]
mod sealing;

use handoff::{DeviceKeys, LONGEST_VALIDITY_MS, MOST_PAYLOAD, Pairing, open};
use libfuzzer_sys::fuzz_target;
use sealing::seal;

/// The pairing of `tests/vectors/handoff/frozen/paired_by_an_independent_sealer.toml`: the recipient's secrets
/// are 64 bytes of 2, the sender's 64 bytes of 1.
const PAIRING: &[u8] = include_bytes!("handoff_pairing.bin");
const NOON: i64 = 1_795_597_920_000;

fuzz_target!(|content: &[u8]| {
    let keys = DeviceKeys::from_secret_bytes(&[2; 64]).expect("64 bytes");
    let pairing = Pairing::from_bytes(PAIRING).expect("a kept pairing");
    match open(&seal(content), &keys, &[pairing], NOON) {
        Ok(opened) => {
            assert!(opened.payload.len() <= MOST_PAYLOAD);
            assert!(NOON < opened.expires_at_ms);
            assert!(opened.expires_at_ms - opened.issued_at_ms <= LONGEST_VALIDITY_MS);
        }
        Err(error) => {
            use handoff::OpenError::{Expired, Newer, TooLong, Unreadable};
            assert!(
                matches!(error, Expired | Newer | TooLong | Unreadable),
                "{error}"
            );
        }
    }
});
