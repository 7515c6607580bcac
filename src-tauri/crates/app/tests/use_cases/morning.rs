//! The next morning: asked once, about yesterday.

use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};

const A_DAY: i64 = 24 * 60;

fn asked(phone: &TestPhone) -> Value {
    phone.ask(json!({"do": "home"}))["morning"].take()
}

#[test]
fn yesterdays_lift_is_asked_about_and_todays_is_not() {
    let phone = TestPhone::with_an_owner("orchard");
    let id = phone.lift(&Script::ordinary());
    assert_eq!(asked(&phone), json!([]));
    phone.later(A_DAY);
    let text = "Yesterday: Box, 6\u{a0}kg, from the floor. How is it today?";
    assert_eq!(asked(&phone), json!([{"id": id, "text": text}]));
}

#[test]
fn the_answer_is_kept_and_not_asked_again() {
    let phone = TestPhone::with_an_owner("orchard");
    let id = phone.lift(&Script::ordinary());
    phone.later(A_DAY);
    phone.ask(json!({"do": "morning", "id": id, "pain": 2, "back_to_usual": "yes"}));
    assert_eq!(asked(&phone), json!([]));
    let entry = phone.ask(json!({"do": "history"}))["entries"][0].take();
    assert_eq!(entry["pain_morning"], 2);
    assert_eq!(
        entry["pain_text"],
        "Next morning: 2 out of 10. Back to usual the next morning."
    );
}

#[test]
fn passed_over_it_is_not_asked_again() {
    let phone = TestPhone::with_an_owner("orchard");
    let id = phone.lift(&Script::ordinary());
    phone.later(A_DAY);
    phone.ask(json!({"do": "morning", "id": id}));
    assert_eq!(asked(&phone), json!([]));
}

#[test]
fn many_lifts_on_one_day_are_one_question() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.lift(&Script::ordinary());
    let last = phone.lift(&Script::ordinary());
    phone.later(A_DAY);
    assert_eq!(asked(&phone)[0]["id"], json!(last));
    phone.ask(json!({"do": "morning", "id": last, "pain": 1}));
    assert_eq!(asked(&phone), json!([]));
}

#[test]
fn after_two_days_it_is_too_late_to_ask() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.lift(&Script::ordinary());
    phone.later(2 * A_DAY);
    assert_eq!(asked(&phone), json!([]));
}

#[test]
fn what_was_left_is_not_asked_about() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.walk(&Script::ordinary(), None);
    phone.ask(json!({"do": "lift_keep", "done": false}));
    phone.later(A_DAY);
    assert_eq!(asked(&phone), json!([]));
}

#[test]
fn answers_that_are_none_are_refused() {
    let phone = TestPhone::with_an_owner("orchard");
    let id = phone.lift(&Script::ordinary());
    let say = |command: Value| phone.refused(command);
    assert_eq!(
        say(json!({"do": "morning", "id": id, "pain": 12})),
        "out_of_range at pain"
    );
    assert_eq!(
        say(json!({"do": "morning", "id": id, "back_to_usual": "perhaps"})),
        "not_a_choice at back_to_usual"
    );
    assert_eq!(say(json!({"do": "morning", "id": 77})), "not_found at id");
}
