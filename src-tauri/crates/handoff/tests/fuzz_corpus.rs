//! What the fuzz targets of `tests/fuzz` start from and have found, replayed with the same demands.
#![cfg(test)]

#[path = "../../../../tests/fuzz/sealing.rs"]
#[allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::cast_possible_truncation
)]
mod sealing;
mod support;

use std::fs;

use handoff::{
    Card, Code, Collector, DeviceKeys, LONGEST_VALIDITY_MS, MOST_BYTES, MOST_PAYLOAD, Offer,
    OpenError, Pairing, Seen, Taken, base45, inflate, open, open_unpaired, recognise,
};
use support::NOON;

const FUZZ: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../../tests/fuzz");

fn corpus(target: &str) -> Vec<Vec<u8>> {
    let folder = fs::read_dir(format!("{FUZZ}/corpus/{target}")).unwrap();
    let inputs: Vec<_> = folder
        .map(|file| fs::read(file.unwrap().path()).unwrap())
        .collect();
    assert!(!inputs.is_empty(), "{target}");
    inputs
}

#[test]
fn base45_gives_back_what_it_takes() {
    for bytes in corpus("handoff_base45") {
        let text = String::from_utf8_lossy(&bytes);
        if let Ok(decoded) = base45::decode(&text) {
            assert_eq!(base45::encode(&decoded), text);
        }
        assert_eq!(base45::decode(&base45::encode(&bytes)), Ok(bytes));
    }
}

#[test]
fn what_is_kept_has_one_spelling() {
    let mut read = 0;
    for bytes in corpus("handoff_card") {
        if let Ok(card) = Card::from_bytes(&bytes) {
            assert_eq!(card.to_bytes(), bytes);
            read += 1;
        }
        if let Ok(pairing) = Pairing::from_bytes(&bytes) {
            assert_eq!(pairing.to_bytes(), bytes);
            read += 1;
        }
        if let Ok(seen) = Seen::from_bytes(&bytes) {
            assert_eq!(seen.to_bytes(), bytes);
            read += 1;
        }
    }
    assert!(read >= 5, "{read}");
}

#[test]
fn frames_give_up_only_what_fits() {
    let mut whole = 0;
    for bytes in corpus("handoff_frames") {
        let mut collector = Collector::new();
        let mut rest = bytes.as_slice();
        while let Some((&eights, after)) = rest.split_first() {
            let (piece, after) = after.split_at(after.len().min(12 + usize::from(eights) * 8));
            rest = after;
            let frame = [piece, &crc32fast::hash(piece).to_be_bytes()].concat();
            if let Ok(Taken::Whole(parcel)) = collector.take(&base45::encode(&frame)) {
                assert!(parcel.len() <= MOST_BYTES);
                whole += 1;
            }
            let _ = collector.take(&base45::encode(piece));
        }
    }
    assert!(whole >= 2, "{whole}");
}

#[test]
fn nothing_unpacks_past_its_bound() {
    for bytes in corpus("handoff_inflate") {
        let (most, packed) = bytes
            .split_first()
            .map_or((0, &[][..]), |(n, rest)| (*n, rest));
        let most = usize::from(most) * 16;
        if let Ok(plain) = inflate(packed, most) {
            assert!(plain.len() <= most);
        }
    }
}

#[test]
fn nothing_opens_that_is_not_recognised() {
    let keys = DeviceKeys::from_secret_bytes(&[2; 64]).unwrap();
    let pairing = fs::read(format!("{FUZZ}/fuzz_targets/handoff_pairing.bin")).unwrap();
    let pairing = [Pairing::from_bytes(&pairing).unwrap()];
    for bytes in corpus("handoff_parcel") {
        let opened = open(&bytes, &keys, &pairing, NOON);
        let offer = Offer::from_bytes(&bytes);
        assert!(opened.is_err() || offer.is_err());
        if opened.is_ok() || offer.is_ok() {
            assert!(recognise(&bytes).is_ok());
        }
    }
}

#[test]
fn what_a_paired_device_seals_opens_in_bounds_or_is_refused() {
    let keys = DeviceKeys::from_secret_bytes(&[2; 64]).unwrap();
    let pairing = fs::read(format!("{FUZZ}/fuzz_targets/handoff_pairing.bin")).unwrap();
    let pairing = [Pairing::from_bytes(&pairing).unwrap()];
    let mut whole = 0;
    for content in corpus("handoff_content") {
        match open(&sealing::seal(&content), &keys, &pairing, NOON) {
            Ok(opened) => {
                assert!(opened.payload.len() <= MOST_PAYLOAD);
                assert!(opened.expires_at_ms - opened.issued_at_ms <= LONGEST_VALIDITY_MS);
                whole += 1;
            }
            Err(error) => assert!(
                matches!(
                    error,
                    OpenError::Expired
                        | OpenError::Newer
                        | OpenError::TooLong
                        | OpenError::Unreadable
                ),
                "{error}"
            ),
        }
    }
    assert!(whole >= 2, "{whole}");
}

#[test]
fn nothing_opens_with_a_code_that_is_not_recognised() {
    let words = fs::read_to_string(format!("{FUZZ}/fuzz_targets/handoff_unpaired_words.txt"));
    let code = Code::typed(words.unwrap().trim()).unwrap();
    for bytes in corpus("handoff_unpaired") {
        if open_unpaired(&bytes, &code, NOON).is_ok() {
            assert!(recognise(&bytes).is_ok());
        }
    }
}
