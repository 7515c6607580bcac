//! The scan screen: when it is open, what it takes, what it says of what it does not take.

use super::screens::{Picture, draw};
use crate::phone::TestPhone;
use chrono::Duration;
use serde_json::{Value, json};

fn open(phone: &TestPhone, wanted: &str) {
    phone.ask(json!({"do": "scan_start", "for": wanted}));
}

fn blank() -> Picture {
    Picture {
        side: 64,
        pixels: vec![255; 64 * 64],
    }
}

fn code(reply: &Value) -> String {
    let error = &reply["error"];
    let field = error["field"].as_str().map(|field| format!(" at {field}"));
    format!(
        "{}{}",
        error["code"].as_str().expect("a code"),
        field.unwrap_or_default()
    )
}

#[test]
fn the_camera_is_let_in_only_while_the_screen_is_open() {
    let phone = TestPhone::set_up("orchard");
    assert!(!phone.app().scanning());
    open(&phone, "parcel");
    assert!(phone.app().scanning());
    phone.ask(json!({"do": "scan_stop"}));
    assert!(!phone.app().scanning());
    open(&phone, "pair");
    phone.ask(json!({"do": "lock"}));
    assert!(!phone.app().scanning());
    phone.unlock();
    assert!(!phone.app().scanning(), "a lock closes the screen");
}

#[test]
fn nothing_is_taken_without_the_screen_or_while_locked() {
    let phone = TestPhone::set_up("orchard");
    assert_eq!(code(&phone.see(&blank())), "scan_not_started");
    open(&phone, "parcel");
    phone.ask(json!({"do": "lock"}));
    assert_eq!(code(&phone.see(&blank())), "locked");
    phone.unlock();
    assert_eq!(
        phone.refused(json!({"do": "scan_start", "for": "fun"})),
        "not_a_choice at for"
    );
}

#[test]
fn a_screen_left_lying_locks_although_the_camera_looks_on() {
    let phone = TestPhone::set_up("orchard");
    open(&phone, "parcel");
    for _ in 0..4 {
        phone.wait(Duration::seconds(50));
        phone.see(&blank());
    }
    assert_eq!(code(&phone.see(&blank())), "locked");
    assert!(!phone.app().scanning());
}

#[test]
fn a_picture_without_a_symbol_changes_nothing() {
    let phone = TestPhone::set_up("orchard");
    open(&phone, "parcel");
    let nothing = json!({"state": "nothing", "have": 0, "need": 0, "next": null, "text": null});
    assert_eq!(phone.scan(&blank()), nothing);
}

#[test]
fn a_frame_must_be_as_large_as_it_says() {
    let phone = TestPhone::set_up("orchard");
    open(&phone, "parcel");
    for (width, height, bytes, expected) in [
        (64, 64, 64 * 64 - 1, "wrong_type at bytes"),
        (64, 63, 64 * 64, "wrong_type at bytes"),
        (0, 64, 0, "out_of_range at width"),
        (64, 1921, 64 * 1921, "out_of_range at height"),
        (u32::MAX, u32::MAX, 1, "out_of_range at width"),
    ] {
        let reply = phone.take("frame", width, height, &vec![255; bytes]);
        assert_eq!(code(&reply), expected, "{width} x {height}");
    }
    assert_eq!(
        code(&phone.take("film", 64, 64, &[])),
        "not_a_choice at kind"
    );
    let long = vec![0; 12_000_001];
    assert_eq!(code(&phone.take("photo", 0, 0, &long)), "too_long at bytes");
    assert_eq!(code(&phone.take("file", 0, 0, &long)), "too_long at bytes");
}

#[test]
fn bridges_without_raw_bodies_send_base64() {
    let phone = TestPhone::set_up("orchard");
    let taken = |body: &str| -> Value {
        serde_json::from_str(&phone.app().take_json(body.as_bytes())).expect("a reply is JSON")
    };
    let frame = r#"{"kind":"frame","width":2,"height":2,"base64":"/////w=="}"#;
    assert_eq!(code(&taken(frame)), "scan_not_started");
    open(&phone, "parcel");
    assert_eq!(taken(frame)["ok"]["state"], "nothing");
    assert_eq!(code(&taken("{")), "bad_json");
    assert_eq!(
        code(&taken(r#"{"kind":"frame","base64":"-","more":1}"#)),
        "bad_json"
    );
    assert_eq!(
        code(&taken(
            r#"{"kind":"frame","width":2,"height":2,"base64":"_"}"#
        )),
        "wrong_type at base64"
    );
    assert_eq!(code(&taken(&" ".repeat(16_100_000))), "too_long");
}

#[test]
fn what_is_not_ours_is_told_apart() {
    let phone = TestPhone::of("orchard", "lift", "Green Ladder");
    let offer = draw(&phone.ask(json!({"do": "pair_start"}))["symbol"]);
    open(&phone, "parcel");
    let says = |reply: &Value| {
        assert_eq!(reply["ok"]["state"], "refused", "{reply}");
        reply["ok"]["text"].as_str().expect("a sentence").to_owned()
    };
    assert!(
        says(&phone.take("photo", 0, 0, b"no picture")).starts_with("This file is not a picture")
    );
    assert!(
        says(&phone.take("file", 0, 0, b"a letter")).starts_with("This code is not from this app")
    );
    assert!(says(&phone.take("file", 0, 0, b"HWHO")).starts_with("Part of this code is missing"));
    assert!(says(&phone.see(&offer)).starts_with("This code is for pairing"));
    let mut newer = b"HWHO\x02\x02\x01\x00\x00\x0e".to_vec();
    newer.extend(crc(&newer).to_be_bytes());
    assert!(
        says(&phone.take("file", 0, 0, &newer)).starts_with("This was made with a newer version")
    );
    let mut damaged = newer.clone();
    damaged[7] ^= 1;
    assert!(says(&phone.take("file", 0, 0, &damaged)).starts_with("This code is damaged"));
}

#[test]
fn pairing_wants_an_offer_and_ones_own_on_the_screen() {
    let phone = TestPhone::of("orchard", "lift", "Green Ladder");
    let other = TestPhone::of("surgery", "treat", "Blue Kettle");
    let offer = draw(&other.ask(json!({"do": "pair_start"}))["symbol"]);
    open(&phone, "pair");
    let reply = phone.scan(&offer);
    assert!(
        reply["text"]
            .as_str()
            .is_some_and(|text| text.starts_with("Your own code is not shown"))
    );
}

/// CRC-32 (ISO/IEC 3309), bit by bit.
fn crc(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| {
            if sum & 1 == 1 {
                sum >> 1 ^ 0xedb8_8320
            } else {
                sum >> 1
            }
        })
    })
}
