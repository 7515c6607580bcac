//! Hostile input: every file of `tests/vectors/handoff` has one fault, named by the file, and says which
//! refusal is expected. The files are made by `make_vectors.py` there, with code that is not ours.
#![cfg(test)]

mod support;

use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;

use handoff::{
    CardError, Code, Collector, FrameError, Offer, OfferError, OpenError, OpenUnpairedError,
    Pairing, open, open_unpaired,
};
use serde::Deserialize;
use support::{NOON, bytes, patient};

const FOLDER: &str = concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../../../tests/vectors/handoff"
);
const CODE: &str = "legal winner thank year wave sausage worth useful";

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Vector {
    read_as: String,
    #[serde(default)]
    bytes: String,
    #[serde(default)]
    text: String,
    refused: String,
}

#[derive(Deserialize)]
struct Frozen {
    pairing: String,
}

fn vectors() -> Vec<(String, Vector)> {
    let mut paths: Vec<PathBuf> = fs::read_dir(FOLDER)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "toml"))
        .collect();
    paths.sort();
    paths
        .into_iter()
        .map(|path| {
            let name = path.file_stem().unwrap().to_string_lossy().into_owned();
            let vector = toml::from_str(&fs::read_to_string(&path).unwrap());
            let vector = vector.unwrap_or_else(|error| panic!("{name}: {error}"));
            (name, vector)
        })
        .collect()
}

/// The pairing that the paired vectors were made for.
fn pairing() -> Pairing {
    let frozen = fs::read_to_string(format!(
        "{FOLDER}/frozen/paired_by_an_independent_sealer.toml"
    ));
    let frozen: Frozen = toml::from_str(&frozen.unwrap()).unwrap();
    Pairing::from_bytes(&bytes(&frozen.pairing)).unwrap()
}

fn refusal(vector: &Vector, pairing: &Pairing) -> &'static str {
    let input = bytes(&vector.bytes);
    match vector.read_as.as_str() {
        "paired" => {
            let opened = open(&input, &patient().keys, std::slice::from_ref(pairing), NOON);
            opened.err().map_or("accepted", name_open)
        }
        "unpaired" => {
            let opened = open_unpaired(&input, &Code::typed(CODE).unwrap(), NOON);
            opened.err().map_or("accepted", name_unpaired)
        }
        "offer" => Offer::from_bytes(&input)
            .err()
            .map_or("accepted", name_offer),
        "text" => Collector::new()
            .take(&vector.text)
            .err()
            .map_or("accepted", name_frame),
        other => panic!("{other}"),
    }
}

fn name_open(error: OpenError) -> &'static str {
    match error {
        OpenError::Foreign => "foreign",
        OpenError::Newer => "newer",
        OpenError::Truncated => "truncated",
        OpenError::Damaged => "damaged",
        OpenError::OtherKind => "other_kind",
        OpenError::WrongRecipient => "wrong_recipient",
        OpenError::UnknownSender => "unknown_sender",
        OpenError::NotAuthentic => "not_authentic",
        OpenError::Expired => "expired",
        OpenError::TooLong => "too_long",
        OpenError::Unreadable => "unreadable",
        _ => "?",
    }
}

fn name_unpaired(error: OpenUnpairedError) -> &'static str {
    match error {
        OpenUnpairedError::Foreign => "foreign",
        OpenUnpairedError::Newer => "newer",
        OpenUnpairedError::Truncated => "truncated",
        OpenUnpairedError::Damaged => "damaged",
        OpenUnpairedError::OtherKind => "other_kind",
        OpenUnpairedError::WrongCode => "wrong_code",
        OpenUnpairedError::Expired => "expired",
        OpenUnpairedError::TooLong => "too_long",
        OpenUnpairedError::Unreadable => "unreadable",
        _ => "?",
    }
}

fn name_offer(error: OfferError) -> &'static str {
    match error {
        OfferError::Foreign => "foreign",
        OfferError::Newer => "newer",
        OfferError::Truncated => "truncated",
        OfferError::Damaged => "damaged",
        OfferError::OtherKind => "other_kind",
        OfferError::Card(CardError::Malformed) => "malformed",
        OfferError::Card(CardError::WeakKey) => "weak_key",
        OfferError::Card(CardError::Alias(_)) => "alias",
        _ => "?",
    }
}

fn name_frame(error: FrameError) -> &'static str {
    match error {
        FrameError::Foreign => "foreign",
        FrameError::Newer => "newer",
        FrameError::Truncated => "truncated",
        FrameError::Damaged => "damaged",
        FrameError::OutOfBounds => "out_of_bounds",
        _ => "?",
    }
}

#[test]
fn every_fault_has_its_refusal() {
    let (vectors, pairing) = (vectors(), pairing());
    let wrong: Vec<String> = vectors
        .iter()
        .map(|(name, vector)| (name, &vector.refused, refusal(vector, &pairing)))
        .filter(|(_, expected, found)| expected != found)
        .map(|(name, expected, found)| format!("{name}: expected {expected}, found {found}"))
        .collect();
    println!(
        "{} hostile files, {} refused otherwise",
        vectors.len(),
        wrong.len()
    );
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
    assert!(vectors.len() >= 60);
}

#[test]
fn every_refusal_is_met_by_some_file() {
    let found: BTreeSet<(String, String)> = vectors()
        .into_iter()
        .map(|(_, vector)| (vector.read_as, vector.refused))
        .collect();
    let expected = [
        (
            "paired",
            "foreign newer truncated damaged other_kind wrong_recipient unknown_sender not_authentic expired too_long unreadable",
        ),
        (
            "unpaired",
            "truncated damaged other_kind wrong_code expired too_long unreadable",
        ),
        (
            "offer",
            "newer truncated damaged other_kind malformed weak_key alias",
        ),
        ("text", "foreign newer truncated damaged out_of_bounds"),
    ];
    for (read_as, refusals) in expected {
        for refused in refusals.split(' ') {
            let pair = (read_as.to_owned(), refused.to_owned());
            assert!(found.contains(&pair), "{read_as}: {refused}");
        }
    }
}
