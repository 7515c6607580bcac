//! A photo of the screen, and a file that was shared.

use super::screens::{Picture, file, frames, history_for, pair, plan, plan_for};
use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};

fn paired() -> (TestPhone, TestPhone, String) {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    let pairing = pair(&clinician, &patient);
    (clinician, patient, pairing)
}

/// A PNG file (ISO/IEC 15948) with the pixels stored as they are.
fn png(picture: &Picture) -> Vec<u8> {
    let side = u32::try_from(picture.side).expect("small");
    let lines = picture.pixels.chunks(picture.side);
    let raw: Vec<u8> = lines.flat_map(|line| [&[0], line].concat()).collect();
    // Stored blocks (RFC 1951, section 3.2.4) in a zlib stream (RFC 1950).
    let mut stream = vec![0x78, 0x01];
    let mut blocks = raw.chunks(0xffff).peekable();
    while let Some(block) = blocks.next() {
        let length = u16::try_from(block.len()).expect("bounded");
        stream.push(u8::from(blocks.peek().is_none()));
        stream.extend(length.to_le_bytes());
        stream.extend((!length).to_le_bytes());
        stream.extend(block);
    }
    let (mut a, mut b) = (1_u32, 0_u32);
    for byte in &raw {
        a = (a + u32::from(*byte)) % 65_521;
        b = (b + a) % 65_521;
    }
    stream.extend((b << 16 | a).to_be_bytes());
    let mut head = [side.to_be_bytes(), side.to_be_bytes()].concat();
    head.extend([8, 0, 0, 0, 0]);
    let chunk = |kind: &[u8], data: &[u8]| {
        let body = [kind, data].concat();
        let length = u32::try_from(data.len()).expect("small").to_be_bytes();
        [&length[..], &body, &crc(&body).to_be_bytes()].concat()
    };
    let mark: &[u8] = b"\x89PNG\r\n\x1a\n";
    [
        mark,
        &chunk(b"IHDR", &head),
        &chunk(b"IDAT", &stream),
        &chunk(b"IEND", &[]),
    ]
    .concat()
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

fn now(phone: &TestPhone) -> Value {
    phone.ask(json!({"do": "plan_now"}))["plan"].take()
}

#[test]
fn a_photo_of_the_screen_will_do() {
    let (clinician, patient, pairing) = paired();
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let show = clinician.ask(plan_for(&id, &pairing));
    let photo = png(&frames(&clinician, &show, 0, 1)[0]);
    patient.ask(json!({"do": "scan_start", "for": "parcel"}));
    let reply = patient.take("photo", 0, 0, &photo);
    assert_eq!(reply["ok"]["next"], "accept", "{reply}");
    patient.ask(json!({"do": "parcel_accept"}));
    assert!(now(&patient).is_object());
}

#[test]
fn a_shared_file_will_do() {
    let (clinician, patient, pairing) = paired();
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let show = clinician.ask(plan_for(&id, &pairing));
    let shared = clinician.ask(json!({"do": "show_file", "show": show["show"]}));
    assert_eq!(shared["name"], "plan-2026-11-25.heft");
    let bytes = file(&clinician, &show);
    patient.ask(json!({"do": "scan_start", "for": "parcel"}));
    assert_eq!(patient.take("file", 0, 0, &bytes)["ok"]["next"], "accept");
    patient.ask(json!({"do": "parcel_accept"}));
    assert!(now(&patient).is_object());
}

#[test]
fn a_history_is_named_as_one_and_what_leaves_is_not_readable() {
    let (_, patient, pairing) = paired();
    let named = Script::ordinary();
    patient.lift(&named);
    let mut ask = history_for(90, &pairing);
    ask["notes"] = json!(true);
    let show = patient.ask(ask);
    let shared = patient.ask(json!({"do": "show_file", "show": show["show"]}));
    assert_eq!(shared["name"], "history-2026-11-25.heft");
    let bytes = file(&patient, &show);
    for clear in ["Box, 6", "Green Ladder", "Blue Kettle"] {
        let found = bytes
            .windows(clear.len())
            .any(|part| part == clear.as_bytes());
        assert!(!found, "{clear} can be read in the file");
    }
}

#[test]
fn a_photo_for_somebody_else_is_of_no_use() {
    let (clinician, _, pairing) = paired();
    let other = TestPhone::of("ditch", "lift", "Red Boat");
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let show = clinician.ask(plan_for(&id, &pairing));
    let photo = png(&frames(&clinician, &show, 0, 1)[0]);
    other.ask(json!({"do": "scan_start", "for": "parcel"}));
    let reply = other.take("photo", 0, 0, &photo);
    assert_eq!(reply["ok"]["state"], "refused");
    let text = reply["ok"]["text"].as_str().expect("a sentence");
    assert!(
        text.starts_with("This is meant for another phone"),
        "{text}"
    );
}
