//! Any bytes as something handed over, as they are and with a fitting length and checksum: nothing that was
//! not sealed opens. What was found is kept in `corpus/handoff_parcel` and replayed by `handoff`'s own tests.

#![no_main]

use handoff::{DeviceKeys, Offer, Pairing, open, recognise};
use libfuzzer_sys::fuzz_target;

/// The pairing of `tests/vectors/handoff/frozen/paired_by_an_independent_sealer.toml`, whose recipient's
/// secrets are 64 bytes of 2.
const PAIRING: &[u8] = include_bytes!("handoff_pairing.bin");
const NOON: i64 = 1_795_597_920_000;

fuzz_target!(|bytes: &[u8]| {
    let keys = DeviceKeys::from_secret_bytes(&[2; 64]).expect("64 bytes");
    let pairing = Pairing::from_bytes(PAIRING).expect("a kept pairing");
    let mut fitted = bytes.to_vec();
    let length = (bytes.len() as u32).to_be_bytes();
    if bytes.len() >= 14 {
        fitted[7..10].copy_from_slice(&length[1..]);
        let covered = bytes.len() - 4;
        let checksum = crc32fast::hash(&fitted[..covered]).to_be_bytes();
        fitted[covered..].copy_from_slice(&checksum);
    }
    for bytes in [bytes, &fitted] {
        let recognised = recognise(bytes);
        let offer = Offer::from_bytes(bytes);
        let opened = open(bytes, &keys, std::slice::from_ref(&pairing), NOON);
        if opened.is_ok() || offer.is_ok() {
            assert!(recognised.is_ok());
        }
        assert!(opened.is_err() || offer.is_err());
    }
});
