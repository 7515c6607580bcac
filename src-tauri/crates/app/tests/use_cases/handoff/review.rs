//! What a clinician sees of a history that was handed over is what the person sees of their own.

use super::screens::{history_for, pair, shown, taken};
use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};

/// Days with a lift each; pain falls from day to day.
fn days(phone: &TestPhone, count: u8) {
    for day in 0..count {
        let script = Script::ordinary().but("back", json!({"pain": 6 - day / 2}));
        phone.walk(&script, None);
        let kept = phone.ask(json!({"do": "lift_keep", "done": true, "way": "squat"}));
        phone.ask(json!({"do": "lift_pain", "id": kept["id"], "pain": 3}));
        phone.later(24 * 60);
        phone.ask(json!({"do": "morning", "id": kept["id"], "pain": 2}));
    }
}

fn look_back(phone: &TestPhone, of: Option<&str>) -> Value {
    let mut back = phone.ask(json!({"do": "look_back", "of": of}));
    back["of"].take();
    back
}

#[test]
fn both_see_the_same_figures_and_a_second_history_counts_nothing_twice() {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    let pairing = pair(&clinician, &patient);
    for _ in 0..2 {
        days(&patient, 6);
        while clinician.ask(json!({"do": "hello"}))["locked"] == true {
            clinician.unlock();
        }
        clinician.later(6 * 24 * 60);
        taken(&clinician, &shown(&patient, history_for(90, &pairing)));
        assert_eq!(
            look_back(&clinician, Some(&pairing)),
            look_back(&patient, None)
        );
    }
    let of = clinician.ask(json!({"do": "look_back", "of": pairing}))["of"].take();
    assert_eq!(of, "Green Ladder");
    let note = clinician.ask(json!({"do": "report_make", "form": "note", "of": pairing}));
    let note = note["text"].as_str().expect("a note");
    assert!(note.contains("Told by Green Ladder and handed over. Not examined."));
    assert!(note.contains("12 done and 0 left, on 12 days"), "{note}");
}

#[test]
fn a_history_of_nobody_is_refused() {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    assert_eq!(
        clinician.refused(json!({"do": "look_back", "of": "00"})),
        "unknown_pairing at of"
    );
}
