//! Any bytes as a card, a kept pairing, kept numbers: one value has one spelling. What was found is kept in
//! `corpus/handoff_card` and replayed by `handoff`'s own tests.

#![no_main]

use handoff::{Card, Pairing, Seen};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    if let Ok(card) = Card::from_bytes(bytes) {
        assert_eq!(Card::from_bytes(&card.to_bytes()), Ok(card));
    }
    if let Ok(pairing) = Pairing::from_bytes(bytes) {
        assert_eq!(Pairing::from_bytes(&pairing.to_bytes()), Ok(pairing));
    }
    if let Ok(seen) = Seen::from_bytes(bytes) {
        assert_eq!(Seen::from_bytes(&seen.to_bytes()), Ok(seen));
    }
});
