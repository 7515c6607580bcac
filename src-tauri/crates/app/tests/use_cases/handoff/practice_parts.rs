//! A plan day by day: several things to practise, and whom to call. The pattern is that of `practice`.

use super::practice::{a_day, day, patient, visit};
use crate::phone::TestPhone;
use serde_json::json;

/// Two things to practise on one day are one day of practice, and each moves by the step that is taken.
#[test]
fn two_things_are_noted_apart_and_count_as_one_day() {
    let phone = visit(&[
        ("practice_way_2", json!("hinge")),
        ("practice_load_2", json!(5)),
    ])
    .patient;
    assert_eq!(day(&phone)["practice"][1]["name"], "Hip hinge");
    assert_eq!(day(&phone)["step"]["text"], "Stay at 4\u{a0}kg for now.");
    let second = |phone: &TestPhone| {
        phone.ask(json!({"do": "practice_keep", "item": 1, "done": true, "pain": 1}));
    };
    second(&phone);
    assert_eq!(day(&phone)["practice"][0]["today"], json!(null));
    assert_eq!(
        day(&phone)["practice"][1]["today"],
        "Noted today. Worst pain: 1 out of 10."
    );
    a_day(&phone, 1, "yes");
    assert_eq!(
        day(&phone)["step"]["need"],
        "One more good day, and you may try 0.5\u{a0}kg more."
    );
    second(&phone);
    a_day(&phone, 1, "yes");
    phone.ask(json!({"do": "step_answer", "step": "step_up", "take": true}));
    let day = day(&phone);
    let text = |at: usize| {
        day["practice"][at]["text"]
            .as_str()
            .expect("text")
            .to_owned()
    };
    assert_eq!(text(0), "With 4.5\u{a0}kg: 2 sets of 6, 3 days a week.");
    assert_eq!(text(1), "With 5.5\u{a0}kg: 2 sets of 6, 3 days a week.");
    let list = phone.ask(json!({"do": "practice_list"}));
    let log = list["entries"].to_string();
    assert!(
        log.contains("Hip hinge, 5\u{a0}kg") && log.contains("Squat, 4\u{a0}kg"),
        "{log}"
    );
}

/// The number is invented (555-0100 to 555-0199 are kept for made-up ones: North American Numbering Plan).
#[test]
fn whom_to_call_is_at_hand_in_a_flare_up_and_past_the_day_of_the_plan() {
    let phone = visit(&[("call", json!("  555 0100,  mornings "))]).patient;
    let said = "Whom to call: 555 0100, mornings";
    let now = |phone: &TestPhone| phone.ask(json!({"do": "plan_now"}))["plan"].take();
    let home = |phone: &TestPhone| phone.ask(json!({"do": "home"}))["plan"].to_string();
    assert_eq!(now(&phone)["call"], said);
    assert!(
        now(&phone)["lines"]
            .to_string()
            .contains("555 0100, mornings")
    );
    assert!(!home(&phone).contains(said));
    phone.ask(json!({"do": "flare_start"}));
    assert_eq!(day(&phone)["flare"]["call"], said);
    assert!(home(&phone).contains(said));
    phone.later(29 * 24 * 60);
    phone.unlock();
    assert_eq!(now(&phone)["expired"], true);
    assert!(home(&phone).contains(said));
}

#[test]
fn a_plan_need_not_say_whom_to_call() {
    let phone = patient();
    assert_eq!(
        phone.ask(json!({"do": "plan_now"}))["plan"]["call"],
        json!(null)
    );
    assert_eq!(day(&phone)["flare"]["call"], json!(null));
}
