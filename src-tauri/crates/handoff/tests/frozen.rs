//! Parcels that must open for ever. Those named "independent" were sealed by code that is not ours
//! (`tests/vectors/handoff/make_vectors.py`), the others by this crate. A file is never changed.
#![cfg(test)]

mod support;

use std::fs;

use handoff::{
    Code, Collector, DeviceKeys, Offer, Opened, Pairing, Shown, Taken, open, open_unpaired,
};
use serde::Deserialize;
use support::{NOON, bytes, hex};

const FOLDER: &str = concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../../../tests/vectors/handoff/frozen/"
);

#[derive(Deserialize)]
struct Sealed {
    parcel: String,
    keys: Option<String>,
    pairing: Option<String>,
    code: Option<String>,
    payload: String,
    purpose: u8,
    counter: u64,
    issued_at_ms: i64,
    expires_at_ms: i64,
}

#[derive(Deserialize)]
struct Offers {
    offers: Vec<String>,
    words: Vec<String>,
    pairing_id: String,
}

#[derive(Deserialize)]
struct Frames {
    frames: Vec<String>,
    mixtures: Vec<String>,
    parcel: String,
}

fn load<T: for<'d> Deserialize<'d>>(name: &str) -> T {
    toml::from_str(&fs::read_to_string(format!("{FOLDER}{name}.toml")).unwrap()).unwrap()
}

fn open_paired(sealed: &Sealed) -> Opened {
    let keys = DeviceKeys::from_secret_bytes(&bytes(sealed.keys.as_ref().unwrap())).unwrap();
    let pairing = Pairing::from_bytes(&bytes(sealed.pairing.as_ref().unwrap())).unwrap();
    open(&bytes(&sealed.parcel), &keys, &[pairing], NOON).unwrap()
}

#[test]
fn paired_parcels_open() {
    for name in [
        "paired_by_an_independent_sealer",
        "paired_with_a_field_of_tomorrow",
        "care_plan_by_an_independent_sealer",
        "paired",
    ] {
        let sealed: Sealed = load(name);
        let opened = open_paired(&sealed);
        assert_eq!(hex(&opened.payload), sealed.payload, "{name}");
        assert_eq!(opened.purpose as u8, sealed.purpose, "{name}");
        assert_eq!(opened.counter, sealed.counter, "{name}");
        assert_eq!(opened.issued_at_ms, sealed.issued_at_ms, "{name}");
        assert_eq!(opened.expires_at_ms, sealed.expires_at_ms, "{name}");
    }
}

#[test]
fn parcels_under_a_code_open() {
    for name in [
        "unpaired_by_an_independent_sealer",
        "care_plan_under_a_code",
        "unpaired",
    ] {
        let sealed: Sealed = load(name);
        let code = Code::typed(sealed.code.as_ref().unwrap()).unwrap();
        let opened = open_unpaired(&bytes(&sealed.parcel), &code, NOON).unwrap();
        assert_eq!(hex(&opened.payload), sealed.payload, "{name}");
        assert_eq!(opened.purpose as u8, sealed.purpose, "{name}");
        assert_eq!(opened.issued_at_ms, sealed.issued_at_ms, "{name}");
        assert_eq!(opened.expires_at_ms, sealed.expires_at_ms, "{name}");
    }
}

/// The words and the id were derived by an independent Argon2id. The first offer is the clinician's:
/// keys of 1s, number of 7s.
#[test]
fn offers_give_their_words() {
    let frozen: Offers = load("offers");
    let [one, other] = [0, 1].map(|at| bytes(&frozen.offers[at]));
    let shown = Shown::begin(
        &support::clinician().keys,
        Offer::from_bytes(&one).unwrap().card().alias().clone(),
        handoff::Role::Treat,
        NOON,
        &mut support::fixed(7),
    )
    .unwrap();
    assert_eq!(shown.offer(), one, "made by us as by the independent maker");
    let compared = shown
        .scan(&other, &[], NOON)
        .unwrap()
        .compare(NOON)
        .unwrap();
    assert_eq!(compared.words().to_vec(), frozen.words);
    assert_eq!(compared.theirs().alias().as_str(), "Mañana");
    let handoff::Agreed::One(half) = compared.agree(handoff::By::Other, NOON).unwrap() else {
        panic!("one side")
    };
    let handoff::Agreed::Both(pairing) = half.agree(handoff::By::Holder, NOON).unwrap() else {
        panic!("both")
    };
    assert_eq!(hex(pairing.id()), frozen.pairing_id);
}

#[test]
fn frames_join_whether_plain_or_mixed() {
    let frozen: Frames = load("frames");
    for texts in [&frozen.frames, &frozen.mixtures] {
        let mut collector = Collector::new();
        let whole = texts.iter().find_map(|text| match collector.take(text) {
            Ok(Taken::Whole(whole)) => Some(hex(&whole)),
            _ => None,
        });
        assert_eq!(whole.as_ref(), Some(&frozen.parcel));
    }
}
