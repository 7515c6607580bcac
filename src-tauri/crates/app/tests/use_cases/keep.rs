//! After the advice: done or left, pain afterwards, and taking back a wrong tap.

use crate::phone::TestPhone;
use crate::script::Script;
use chrono::Duration;
use serde_json::{Value, json};

fn newest(phone: &TestPhone) -> Value {
    phone.ask(json!({"do": "history"}))["entries"][0].take()
}

#[test]
fn done_is_kept_with_the_way_and_the_draft_is_over() {
    let mut phone = TestPhone::with_an_owner("orchard");
    let id = phone.lift(&Script::ordinary());
    phone.kill_and_unlock();
    let entry = newest(&phone);
    assert_eq!(entry["id"], json!(id));
    assert_eq!(entry["title"], "Box, 6\u{a0}kg, from the floor");
    assert_eq!(entry["at"], "2026-11-25T09:12:00+01:00");
    assert_eq!(entry["day_text"], "Today");
    assert_eq!(entry["done"], true);
    assert!(
        entry["done_text"]
            .as_str()
            .is_some_and(|text| text.starts_with("Done: "))
    );
    assert_eq!(phone.ask(json!({"do": "home"}))["draft"], Value::Null);
    assert_eq!(
        phone.refused(json!({"do": "lift_keep", "done": true})),
        "no_draft"
    );
}

#[test]
fn left_is_kept_with_what_was_done_instead() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.walk(&Script::ordinary(), None);
    phone.ask(json!({"do": "lift_keep", "done": false, "instead": "ask_person"}));
    let entry = newest(&phone);
    assert_eq!(
        (&entry["done"], &entry["way"]),
        (&json!(false), &Value::Null)
    );
    assert!(
        entry["done_text"]
            .as_str()
            .is_some_and(|text| text.starts_with("Left. Instead: "))
    );
}

#[test]
fn what_does_not_fit_together_is_not_kept() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.walk(&Script::ordinary(), None);
    let keep = |command: Value| phone.refused(command);
    assert_eq!(
        keep(json!({"do": "lift_keep", "done": false, "way": "squat"})),
        "contradiction at way"
    );
    assert_eq!(
        keep(json!({"do": "lift_keep", "done": true, "instead": "trolley"})),
        "contradiction at instead"
    );
    assert_eq!(
        keep(json!({"do": "lift_keep", "done": true, "way": "fly"})),
        "not_a_choice at way"
    );
    assert_eq!(
        keep(json!({"do": "lift_keep", "done": false, "instead": "fly"})),
        "not_a_choice at instead"
    );
    assert_eq!(keep(json!({"do": "lift_keep"})), "missing_field at done");
    phone.ask(json!({"do": "lift_keep", "done": true}));
}

#[test]
fn pain_after_the_lift_is_kept_or_passed_over() {
    let phone = TestPhone::with_an_owner("orchard");
    let id = phone.lift(&Script::ordinary());
    assert_eq!(newest(&phone)["pain_text"], Value::Null);
    phone.ask(json!({"do": "lift_pain", "id": id, "pain": null}));
    assert_eq!(newest(&phone)["pain_after"], Value::Null);
    phone.ask(json!({"do": "lift_pain", "id": id, "pain": 4}));
    let entry = newest(&phone);
    assert_eq!(entry["pain_after"], 4);
    assert_eq!(entry["pain_text"], "Worst pain while lifting: 4 out of 10.");
    assert_eq!(
        phone.refused(json!({"do": "lift_pain", "id": id, "pain": 11})),
        "out_of_range at pain"
    );
    assert_eq!(
        phone.refused(json!({"do": "lift_pain", "id": 99, "pain": 1})),
        "not_found at id"
    );
}

#[test]
fn a_wrong_tap_is_taken_back_within_ten_minutes() {
    let phone = TestPhone::with_an_owner("orchard");
    let first = phone.lift(&Script::ordinary());
    let second = phone.lift(&Script::ordinary());
    assert_eq!(
        phone.refused(json!({"do": "lift_undo", "id": first})),
        "not_found at id",
        "only the newest"
    );
    phone.wait(Duration::minutes(2));
    phone.ask(json!({"do": "lift_undo", "id": second}));
    assert_eq!(newest(&phone)["id"], json!(first));
    phone.later(9);
    assert_eq!(
        phone.refused(json!({"do": "lift_undo", "id": first})),
        "not_found at id",
        "too late"
    );
}

/// A long run of something light: by trade practice the hip hinge and the golfer's lift suit it alike, and what
/// a body model says of their loads is too near to tell them apart.
#[test]
fn a_way_used_for_most_lifts_lately_yields_to_one_that_suits_as_well() {
    let phone = TestPhone::with_an_owner("orchard");
    let run = Script::ordinary()
        .but("what", json!({"choice": "small"}))
        .but("mass", json!({"choice": "flour"}))
        .but("often", json!({"choice": "some_fast"}))
        .but("back", json!({"pain": 0}));
    let first = |phone: &TestPhone| {
        let card = phone.walk(&run, None).page["card"].take();
        let says = card["reasons"]
            .as_array()
            .expect("reasons")
            .iter()
            .any(|reason| reason["id"] == "variety");
        (card["ways"][0]["way"].clone(), says)
    };
    let (way, says) = first(&phone);
    assert!(!says, "nothing was lifted yet");
    for _ in 0..4 {
        assert_eq!(first(&phone).0, way);
        phone.ask(json!({"do": "lift_keep", "done": true, "way": way}));
    }
    let (other, says) = first(&phone);
    let mut both = [way.as_str(), other.as_str()];
    both.sort_unstable();
    assert_eq!(both, [Some("golfer"), Some("hinge")]);
    assert!(says, "and says why");
}
