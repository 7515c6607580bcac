//! What is not taken, each with a sentence of its own; and nothing is changed by it.

use super::screens::{file, pair, plan, plan_for, refusal, shown, taken};
use crate::phone::TestPhone;
use chrono::Duration;
use serde_json::{Value, json};

struct Visit {
    clinician: TestPhone,
    patient: TestPhone,
    pairing: String,
    plan: Value,
}

fn visit() -> Visit {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    let pairing = pair(&clinician, &patient);
    let plan = plan(&clinician, "sore_back", "Green Ladder");
    Visit {
        clinician,
        patient,
        pairing,
        plan,
    }
}

impl Visit {
    /// The next version of the plan, as bytes of a file.
    fn version(&self, ceiling: u32) -> Vec<u8> {
        // A second later, so that each version has a time of its own.
        self.clinician.set_clock_by(Duration::seconds(2));
        self.clinician.ask(json!({
            "do": "plan_set", "id": self.plan, "field": "ceiling", "value": ceiling,
        }));
        let show = self.clinician.ask(plan_for(&self.plan, &self.pairing));
        file(&self.clinician, &show)
    }
}

/// Everything that a refusal must leave as it is.
fn state(phone: &TestPhone) -> [Value; 3] {
    ["plan_now", "pairings", "home"].map(|command| phone.ask(json!({"do": command})))
}

/// Hands a file in, which must be refused and change nothing; gives the sentence.
#[track_caller]
fn refused(phone: &TestPhone, bytes: &[u8]) -> String {
    let before = state(phone);
    phone.ask(json!({"do": "scan_start", "for": "parcel"}));
    let reply = phone.take("file", 0, 0, bytes);
    phone.ask(json!({"do": "scan_stop"}));
    assert_eq!(reply["ok"]["state"], "refused", "{reply}");
    assert_eq!(phone.refused(json!({"do": "parcel_accept"})), "no_parcel");
    assert_eq!(state(phone), before);
    reply["ok"]["text"].as_str().expect("a sentence").to_owned()
}

#[track_caller]
fn take(phone: &TestPhone, bytes: &[u8]) {
    phone.ask(json!({"do": "scan_start", "for": "parcel"}));
    let reply = phone.take("file", 0, 0, bytes);
    assert_eq!(reply["ok"]["next"], "accept", "{reply}");
    phone.ask(json!({"do": "parcel_accept"}));
}

#[track_caller]
fn says(text: &str, start: &str) {
    assert!(text.starts_with(start), "{text}");
}

#[test]
fn the_same_again() {
    let visit = visit();
    let first = visit.version(9);
    take(&visit.patient, &first);
    says(&refused(&visit.patient, &first), "You have this already");
}

#[test]
fn an_older_one_that_was_never_taken() {
    let visit = visit();
    let (first, second) = (visit.version(9), visit.version(8));
    take(&visit.patient, &second);
    says(
        &refused(&visit.patient, &first),
        "You have something newer from them",
    );
}

#[test]
fn one_that_was_taken_before_a_newer_one() {
    let visit = visit();
    let (first, second) = (visit.version(9), visit.version(8));
    take(&visit.patient, &first);
    take(&visit.patient, &second);
    says(
        &refused(&visit.patient, &first),
        "You took this once before, and a newer one since",
    );
}

#[test]
fn one_for_somebody_else() {
    let visit = visit();
    let other = TestPhone::of("ditch", "lift", "Red Boat");
    pair(&visit.clinician, &other);
    says(
        &refused(&other, &visit.version(9)),
        "This is meant for another phone",
    );
}

#[test]
fn one_from_somebody_who_is_not_paired_any_more() {
    let visit = visit();
    let bytes = visit.version(9);
    let end = json!({"do": "pairing_end", "id": visit.pairing});
    visit.patient.ask(end);
    says(
        &refused(&visit.patient, &bytes),
        "This comes from a phone you are not paired with",
    );
}

#[test]
fn one_whose_pairing_ends_while_it_waits() {
    let visit = visit();
    visit
        .patient
        .ask(json!({"do": "scan_start", "for": "parcel"}));
    visit.patient.take("file", 0, 0, &visit.version(9));
    visit
        .patient
        .ask(json!({"do": "pairing_end", "id": visit.pairing}));
    assert_eq!(
        visit.patient.refused(json!({"do": "parcel_accept"})),
        "no_parcel"
    );
    assert_eq!(
        visit.patient.ask(json!({"do": "plan_now"}))["plan"],
        json!(null)
    );
}

#[test]
fn one_whose_time_has_run_out() {
    let visit = visit();
    let bytes = visit.version(9);
    // The pattern is to be looked at after 28 days; it can be taken until that day ends.
    visit.patient.later(28 * 24 * 60);
    let patient = &visit.patient;
    patient.ask(json!({"do": "scan_start", "for": "parcel"}));
    assert_eq!(patient.take("file", 0, 0, &bytes)["ok"]["next"], "accept");
    patient.ask(json!({"do": "parcel_decline"}));
    patient.later(24 * 60);
    says(
        &refused(patient, &bytes),
        "The time to take this has run out",
    );
}

#[test]
fn one_whose_time_runs_out_while_it_waits() {
    let visit = visit();
    let bytes = visit.version(9);
    visit
        .patient
        .ask(json!({"do": "scan_start", "for": "parcel"}));
    visit.patient.take("file", 0, 0, &bytes);
    visit.patient.set_clock_by(Duration::days(40));
    assert_eq!(
        visit.patient.refused(json!({"do": "parcel_accept"})),
        "no_parcel"
    );
    assert_eq!(
        visit.patient.ask(json!({"do": "plan_now"}))["plan"],
        json!(null)
    );
}

#[test]
fn one_that_was_cut_short() {
    let visit = visit();
    let bytes = visit.version(9);
    for length in [4, 13, 60, bytes.len() - 1] {
        says(
            &refused(&visit.patient, &bytes[..length]),
            "Part of this code is missing",
        );
    }
}

#[test]
fn one_with_a_bit_turned_is_never_taken() {
    let visit = visit();
    let bytes = visit.version(9);
    for at in (0..bytes.len()).step_by(37) {
        let mut turned = bytes.clone();
        turned[at] ^= 1 << (at % 8);
        refused(&visit.patient, &turned);
    }
    take(&visit.patient, &bytes);
}

#[test]
fn one_that_was_changed_with_a_checksum_that_fits() {
    let visit = visit();
    let mut bytes = visit.version(9);
    let body = bytes.len() - 4;
    // Inside what is sealed, so only the seal can tell.
    bytes[body - 20] ^= 1;
    let sum = crc(&bytes[..body]).to_be_bytes();
    bytes[body..].copy_from_slice(&sum);
    says(
        &refused(&visit.patient, &bytes),
        "This is not what the sender made",
    );
}

#[test]
fn one_of_a_newer_version() {
    let visit = visit();
    let mut bytes = visit.version(9);
    let body = bytes.len() - 4;
    bytes[4] = 2;
    let sum = crc(&bytes[..body]).to_be_bytes();
    bytes[body..].copy_from_slice(&sum);
    says(
        &refused(&visit.patient, &bytes),
        "This was made with a newer version",
    );
}

#[test]
fn an_offer_to_pair() {
    let visit = visit();
    let offer = visit.clinician.ask(json!({"do": "pair_start"}));
    let picture = super::screens::draw(&offer["symbol"]);
    says(
        &refusal(&visit.patient, &[picture]),
        "This code is for pairing",
    );
}

#[test]
fn every_refusal_is_said_in_spanish_too() {
    let visit = visit();
    let bytes = visit.version(9);
    take(&visit.patient, &bytes);
    visit
        .patient
        .ask(json!({"do": "language_set", "language": "es"}));
    says(&refused(&visit.patient, &bytes), "Usted ya tiene esto");
}

#[test]
fn a_plan_past_its_day_is_not_shown() {
    let visit = visit();
    visit.clinician.later(29 * 24 * 60);
    let ask = plan_for(&visit.plan, &visit.pairing);
    assert_eq!(visit.clinician.refused(ask), "plan_contradiction at plan");
}

#[test]
fn what_cannot_be_shown() {
    let visit = visit();
    let show = |ask: Value| visit.clinician.refused(ask);
    assert_eq!(
        show(json!({"do": "show", "what": "poem"})),
        "not_a_choice at what"
    );
    assert_eq!(
        show(json!({"do": "show", "what": "plan"})),
        "missing_field at plan"
    );
    assert_eq!(
        show(json!({"do": "show", "what": "plan", "plan": 9})),
        "unknown_plan at plan"
    );
    let mut ask = plan_for(&visit.plan, "00");
    assert_eq!(show(ask.clone()), "unknown_pairing at to");
    ask["density"] = json!("fine");
    assert_eq!(show(ask), "not_a_choice at density");
    let shown = visit.clinician.ask(plan_for(&visit.plan, &visit.pairing));
    for count in [0, 33] {
        let frames = json!({"do": "show_frames", "show": shown["show"], "from": 0, "count": count});
        assert_eq!(show(frames), "out_of_range at count");
    }
}

#[test]
fn a_plan_is_still_taken_after_all_of_that() {
    let visit = visit();
    let pictures = shown(&visit.clinician, plan_for(&visit.plan, &visit.pairing));
    taken(&visit.patient, &pictures);
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
