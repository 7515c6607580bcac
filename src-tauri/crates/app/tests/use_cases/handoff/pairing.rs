//! Two phones pair by looking at each other's screens.

use super::screens::{draw, look_at_each_other, pair};
use crate::phone::TestPhone;
use chrono::Duration;
use serde_json::{Value, json};

fn clinician() -> TestPhone {
    TestPhone::of("surgery", "treat", "Blue Kettle")
}

fn patient() -> TestPhone {
    TestPhone::of("orchard", "lift", "Green Ladder")
}

fn people(phone: &TestPhone) -> Vec<Value> {
    phone.ask(json!({"do": "pairings"}))["pairings"]
        .as_array()
        .expect("a list")
        .clone()
}

const AGREE: &str = r#"{"do":"pair_agree","same":true,"other_says_so":true}"#;

#[test]
fn both_see_the_same_six_words_and_agree() {
    let (clinician, patient) = (clinician(), patient());
    patient.ask(json!({"do": "language_set", "language": "es"}));
    let [hers, his] = look_at_each_other(&clinician, &patient);
    assert_eq!(hers["words"].as_array().map(Vec::len), Some(6));
    assert_eq!(hers["words"], his["words"], "whatever their languages");
    assert_eq!(hers["other"]["alias"], "Green Ladder");
    assert_eq!(hers["other"]["role"], "lifts");
    assert_eq!(his["other"]["alias"], "Blue Kettle");
    assert_eq!(his["other"]["role_text"], "Trata a personas");
    assert_eq!(hers["warning"], json!(null));

    assert!(people(&clinician).is_empty(), "nobody has agreed yet");
    clinician.line(AGREE);
    patient.line(AGREE);
    let [her_people, his_people] = [people(&clinician), people(&patient)];
    assert_eq!(her_people[0]["id"], his_people[0]["id"]);
    assert_eq!(her_people[0]["alias"], "Green Ladder");
    assert_eq!(her_people[0]["text"], "Paired 25 November 2026");
    assert_eq!(her_people[0]["note"], json!(null));
}

#[test]
fn each_try_has_fresh_words() {
    let (clinician, patient) = (clinician(), patient());
    let [first, _] = look_at_each_other(&clinician, &patient);
    let [second, _] = look_at_each_other(&clinician, &patient);
    assert_ne!(first["words"], second["words"]);
}

#[test]
fn asked_again_the_words_are_the_same() {
    let (clinician, patient) = (clinician(), patient());
    let [first, _] = look_at_each_other(&clinician, &patient);
    assert_eq!(clinician.ask(json!({"do": "pair_compare"})), first);
}

#[test]
fn words_that_differ_drop_the_try() {
    let (clinician, patient) = (clinician(), patient());
    look_at_each_other(&clinician, &patient);
    let dropped = clinician.ask(json!({"do": "pair_agree", "same": false}));
    assert_eq!(dropped, json!({"id": null}));
    assert!(people(&clinician).is_empty());
    assert_eq!(
        clinician.refused(json!({"do": "pair_agree", "same": true, "other_says_so": true})),
        "pair_nothing_scanned"
    );
}

#[test]
fn the_holders_word_alone_is_not_enough() {
    let (clinician, patient) = (clinician(), patient());
    look_at_each_other(&clinician, &patient);
    assert_eq!(
        clinician.refused(json!({"do": "pair_agree", "same": true})),
        "answer_needed at other_says_so"
    );
    assert!(people(&clinician).is_empty());
    assert!(clinician.line(AGREE).contains(r#""id":""#), "asked again");
}

#[test]
fn somebody_between_the_screens_gets_other_words() {
    let (clinician, patient) = (clinician(), patient());
    let between = TestPhone::of("ditch", "treat", "Blue Kettle");
    let theirs = draw(&between.ask(json!({"do": "pair_start"}))["symbol"]);
    let hers = draw(&clinician.ask(json!({"do": "pair_start"}))["symbol"]);
    patient.ask(json!({"do": "pair_start"}));
    // The patient is shown the offer of the one between, the one between scans the clinician's.
    let words = [(&patient, &theirs), (&between, &hers)].map(|(phone, offer)| {
        phone.ask(json!({"do": "scan_start", "for": "pair"}));
        phone.scan(offer);
        phone.ask(json!({"do": "pair_compare"}))["words"].clone()
    });
    assert_ne!(words[0], words[1]);
}

#[test]
fn an_offer_holds_for_five_minutes() {
    let (clinician, patient) = (clinician(), patient());
    let hers = draw(&clinician.ask(json!({"do": "pair_start"}))["symbol"]);
    patient.ask(json!({"do": "pair_start"}));
    patient.ask(json!({"do": "scan_start", "for": "pair"}));
    // The clock says so; the app is in use meanwhile.
    patient.set_clock_by(Duration::minutes(5));
    let late = patient.scan(&hers);
    assert_eq!(late["state"], "refused");
    assert!(
        late["text"]
            .as_str()
            .is_some_and(|text| text.contains("five minutes"))
    );

    let (clinician, patient) = (self::clinician(), self::patient());
    look_at_each_other(&clinician, &patient);
    patient.set_clock_by(Duration::minutes(5));
    assert_eq!(
        patient.refused(json!({"do": "pair_compare"})),
        "pair_expired"
    );

    look_at_each_other(&clinician, &patient);
    clinician.set_clock_by(Duration::minutes(-1));
    let agree = json!({"do": "pair_agree", "same": true, "other_says_so": true});
    assert_eq!(
        clinician.refused(agree),
        "pair_expired",
        "the clock went back"
    );
    assert!(people(&clinician).is_empty());
}

#[test]
fn nothing_is_compared_before_something_is_scanned() {
    let phone = clinician();
    let compare = json!({"do": "pair_compare"});
    assert_eq!(phone.refused(compare.clone()), "pair_nothing_scanned");
    phone.ask(json!({"do": "pair_start"}));
    assert_eq!(phone.refused(compare), "pair_nothing_scanned");
    phone.ask(json!({"do": "scan_start", "for": "pair"}));
}

#[test]
fn ones_own_offer_is_not_taken() {
    let phone = clinician();
    let own = draw(&phone.ask(json!({"do": "pair_start"}))["symbol"]);
    phone.ask(json!({"do": "scan_start", "for": "pair"}));
    let reply = phone.scan(&own);
    assert_eq!(reply["state"], "refused");
    assert!(
        reply["text"]
            .as_str()
            .is_some_and(|text| text.starts_with("This is your own"))
    );
}

#[test]
fn somebody_can_be_called_otherwise_and_a_pairing_ended() {
    let (clinician, patient) = (clinician(), patient());
    let id = pair(&clinician, &patient);
    clinician.ask(json!({"do": "pairing_rename", "id": id, "alias": " The tall one "}));
    assert_eq!(people(&clinician)[0]["alias"], "The tall one");
    assert_eq!(
        clinician.refused(json!({"do": "pairing_rename", "id": id, "alias": ""})),
        "alias_length at alias"
    );
    clinician.ask(json!({"do": "pairing_end", "id": id}));
    assert!(people(&clinician).is_empty());
    for wrong in [id.as_str(), "", "zz", "../.."] {
        let end = json!({"do": "pairing_end", "id": wrong});
        assert_eq!(clinician.refused(end), "unknown_pairing at id");
    }
}

#[test]
fn pairing_again_takes_the_place_of_the_pairing() {
    let (clinician, patient) = (clinician(), patient());
    let first = pair(&clinician, &patient);
    let second = pair(&clinician, &patient);
    assert_ne!(first, second);
    assert_eq!(people(&clinician).len(), 1);
    assert_eq!(people(&patient)[0]["id"], second);
}

#[test]
fn another_phone_under_a_known_name_is_warned_about_loudly() {
    let (clinician, patient) = (clinician(), patient());
    let old = pair(&clinician, &patient);
    let new_phone = TestPhone::of("new", "lift", "green  ladder");
    let [hers, _] = look_at_each_other(&clinician, &new_phone);
    let warning = hers["warning"].as_str().expect("a warning");
    assert!(warning.contains("This is another phone"), "{warning}");
    assert_eq!(people(&clinician)[0]["id"], old, "nothing changed yet");
    let new = pair(&clinician, &new_phone);
    assert_eq!(people(&clinician).len(), 1, "it took the old one's place");
    assert_eq!(people(&clinician)[0]["id"], new);
}

#[test]
fn a_name_that_the_holder_gave_is_known_too() {
    let (clinician, patient) = (clinician(), patient());
    let id = pair(&clinician, &patient);
    clinician.ask(json!({"do": "pairing_rename", "id": id, "alias": "The tall one"}));
    let stranger = TestPhone::of("ditch", "lift", "The Tall One");
    let [hers, _] = look_at_each_other(&clinician, &stranger);
    assert!(hers["warning"].is_string());
}

#[test]
fn a_known_phone_under_another_name_is_told() {
    let (clinician, patient) = (clinician(), patient());
    pair(&clinician, &patient);
    let patient = patient.called("Red Boat");
    let [hers, _] = look_at_each_other(&clinician, &patient);
    assert_eq!(
        hers["warning"],
        "You know this phone as Green Ladder. Now it calls itself Red Boat. Ask them why."
    );
}

#[test]
fn locking_drops_a_try() {
    let (clinician, patient) = (clinician(), patient());
    look_at_each_other(&clinician, &patient);
    clinician.ask(json!({"do": "lock"}));
    clinician.unlock();
    let agree = json!({"do": "pair_agree", "same": true, "other_says_so": true});
    assert_eq!(clinician.refused(agree), "pair_nothing_scanned");
}

#[test]
fn the_offer_stays_the_same_until_the_words_are_compared() {
    let (clinician, patient) = (clinician(), patient());
    let start = json!({"do": "pair_start"});
    let first = clinician.ask(start.clone());
    assert_eq!(first["scanned"], false);
    assert_eq!(clinician.ask(start.clone())["symbol"], first["symbol"]);
    look_at_each_other(&clinician, &patient);
    let after = clinician.ask(start);
    assert_ne!(after["symbol"], first["symbol"]);
    assert_eq!(after["scanned"], false);
}
