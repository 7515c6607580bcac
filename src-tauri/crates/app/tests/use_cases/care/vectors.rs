//! What a care plan's parcel may carry, made by an encoder that is not ours: kept ones and ones with a fault.

use super::parcels::{hand_in, state};
use super::worker;
use serde::Deserialize;
use serde_json::json;

#[derive(Deserialize)]
struct Vector {
    payload: String,
    refused: String,
}

#[derive(Deserialize)]
struct Frozen {
    payload: String,
}

fn vectors(path: &str) -> std::path::PathBuf {
    std::path::Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../../../tests/vectors")
        .join(path)
}

fn hex(text: &str) -> Vec<u8> {
    let digits: Vec<u32> = text
        .chars()
        .filter_map(|digit| digit.to_digit(16))
        .collect();
    digits
        .chunks_exact(2)
        .map(|pair| u8::try_from(pair[0] * 16 + pair[1]).expect("a byte"))
        .collect()
}

// Made by an encoder that is not ours: `tests/vectors/care_plan/make_vectors.py`.
#[test]
fn each_fault_has_its_refusal_and_changes_nothing() {
    let phone = worker("bicycle");
    let catalog = std::fs::read_to_string(
        std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("words/en/handoff.ftl"),
    )
    .expect("words");
    let mut read = 0;
    for entry in std::fs::read_dir(vectors("care_plan")).expect("a folder") {
        let path = entry.expect("a file").path();
        if path.extension().is_none_or(|kind| kind != "toml") {
            continue;
        }
        let text = std::fs::read_to_string(&path).expect("a vector");
        let vector: Vector = toml::from_str(&text).expect("a vector");
        let before = state(&phone);
        let reply = hand_in(&phone, &hex(&vector.payload));
        let message = reply["error"]["message"].as_str();
        let expected = format!(
            "handoff-refused-{} = {}",
            vector.refused,
            message.unwrap_or("taken")
        );
        assert!(
            catalog.lines().any(|line| line == expected),
            "{}: {reply}",
            path.display()
        );
        assert_eq!(state(&phone), before, "{}", path.display());
        read += 1;
    }
    assert!(read >= 30, "{read}");
}

#[test]
fn a_kept_care_plan_is_taken_for_ever() {
    let phone = worker("bicycle");
    let text = std::fs::read_to_string(vectors(
        "handoff/frozen/care_plan_by_an_independent_sealer.toml",
    ));
    let frozen: Frozen = toml::from_str(&text.expect("a vector")).expect("a vector");
    let question = hand_in(&phone, &hex(&frozen.payload));
    assert_eq!(
        question["ok"]["text"],
        "A care plan for A7, from Blue Kettle, version 3."
    );
    phone.ask(json!({"do": "parcel_accept"}));
    let person = state(&phone).remove(1);
    assert_eq!(person["moves"][0]["what"], "bed_to_chair");
    assert_eq!(person["moves"][1]["what"], "up_in_bed");
}
