//! Warning signs: open at once, in every advice until cleared, and cleared by the right person.

use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};

/// A phone on which this sign was just ticked; gives the page that came.
fn ticked(phone: &TestPhone, sign: &str) -> Value {
    phone.ask(json!({"do": "walk_start"}));
    phone.answer("signs_today", json!({"choice": "yes"}));
    phone.answer("signs_full", json!({"choices": [sign]}))
}

fn clear(sign: &str, by: &str) -> Value {
    json!({"do": "sign_clear", "sign": sign, "by": by})
}

#[test]
fn an_emergency_sign_ends_the_walk_at_once() {
    let phone = TestPhone::with_an_owner("orchard");
    let page = ticked(&phone, "saddle_numb");
    assert_eq!(page["page"], "advice");
    assert_eq!(page["card"]["outcome"], "seek_care");
    assert_eq!(page["card"]["urgency"], "emergency");
    assert_eq!(page["card"]["ways"], json!([]));
}

#[test]
fn a_same_day_sign_says_today() {
    let phone = TestPhone::with_an_owner("orchard");
    assert_eq!(
        ticked(&phone, "fever_unwell")["card"]["urgency"],
        "same_day"
    );
}

#[test]
fn recent_surgery_leads_to_the_surgeon() {
    let phone = TestPhone::with_an_owner("orchard");
    let page = ticked(&phone, "post_op_recent");
    assert_eq!(page["card"]["outcome"], "refuse");
}

#[test]
fn a_sign_stays_open_when_the_draft_is_dropped_and_the_app_killed() {
    let mut phone = TestPhone::with_an_owner("orchard");
    ticked(&phone, "night_pain");
    phone.ask(json!({"do": "walk_drop"}));
    phone.kill_and_unlock();
    let open = phone.ask(json!({"do": "home"}))["open_sign"].take();
    assert_eq!(open["since_text"], "Since: Today.");
    assert_eq!(open["signs"][0]["id"], "night_pain");
    assert_eq!(open["signs"][0]["by"], json!(["me", "clinician"]));
    let page = phone.ask(json!({"do": "walk_start"}));
    assert_eq!(
        page["card"]["outcome"], "seek_care",
        "the next walk does not even begin"
    );
}

#[test]
fn a_cleared_sign_lets_lifts_be_advised_again() {
    let phone = TestPhone::with_an_owner("orchard");
    ticked(&phone, "fever_unwell");
    phone.ask(clear("fever_unwell", "me"));
    assert_eq!(phone.ask(json!({"do": "home"}))["open_sign"], Value::Null);
    assert_eq!(
        phone.walk(&Script::ordinary(), None).page["card"]["outcome"],
        "lift"
    );
}

#[test]
fn an_emergency_sign_is_cleared_by_a_clinician_only() {
    let phone = TestPhone::with_an_owner("orchard");
    ticked(&phone, "bladder_bowel");
    let open = phone.ask(json!({"do": "home"}))["open_sign"].take();
    assert_eq!(open["signs"][0]["by"], json!(["clinician"]));
    assert_eq!(
        phone.refused(clear("bladder_bowel", "me")),
        "contradiction at by"
    );
    phone.ask(clear("bladder_bowel", "clinician"));
    assert_eq!(
        phone.refused(clear("bladder_bowel", "clinician")),
        "not_found at sign"
    );
}

#[test]
fn what_is_no_sign_or_nobody_is_refused() {
    let phone = TestPhone::with_an_owner("orchard");
    assert_eq!(
        phone.refused(clear("hiccups", "me")),
        "not_a_choice at sign"
    );
    assert_eq!(
        phone.refused(clear("fever_unwell", "neighbour")),
        "not_a_choice at by"
    );
}

#[test]
fn a_flare_that_shows_a_sign_ends_the_walk_too() {
    let phone = TestPhone::with_an_owner("orchard");
    let script = Script::ordinary()
        .but("back_state", json!({"choice": "flare"}))
        .but("signs_flare", json!({"choices": ["both_legs_weak"]}));
    assert_eq!(
        phone.walk(&script, None).page["card"]["urgency"],
        "emergency"
    );
}

#[test]
fn who_is_not_sure_about_a_sign_asks_somebody_first() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.ask(json!({"do": "walk_start"}));
    let list = phone.answer("signs_today", json!({"not_sure": true}));
    assert_eq!(
        list["question"]["id"], "signs_full",
        "not sure opens the list"
    );
    let page = phone.answer("signs_full", json!({"not_sure": true}));
    assert_eq!(
        (&page["page"], &page["back"]),
        (&json!("refuse"), &json!("signs_full"))
    );
    assert!(page["who"].as_array().is_some_and(|who| !who.is_empty()));
    // No sign is open, and the list can still be answered.
    assert_eq!(phone.ask(json!({"do": "home"}))["open_sign"], Value::Null);
    let next = phone.answer("signs_full", json!({"choices": []}));
    assert_eq!(next["question"]["id"], "what");
}

#[test]
fn a_child_is_told_who_can_help_before_anything_else_is_asked() {
    let phone = TestPhone::set_up("orchard");
    phone.ask(json!({"do": "walk_start"}));
    phone.answer("signs_full", json!({"choices": []}));
    phone.answer("age", json!({"choice": "under16"}));
    phone.answer("conditions", json!({"choices": []}));
    let page = phone.answer("fell", json!({"choice": "no"}));
    assert_eq!(page["card"]["outcome"], "refuse");
    phone.ask(json!({"do": "lift_keep", "done": false}));
    let page = phone.ask(json!({"do": "walk_start"}));
    assert_eq!(page["card"]["outcome"], "refuse", "and not asked again");
}

/// The page to look answers over, with a body that was told without a bad day.
fn at_the_check_page(phone: &TestPhone) {
    let mut page = phone.ask(json!({"do": "walk_start"}));
    let script = Script::ordinary();
    while page["page"] == "question" {
        let id = page["question"]["id"].as_str().expect("an id").to_owned();
        page = phone.answer(&id, script.answer_to(&id).clone());
    }
    assert_eq!(page["page"], "check");
}

#[test]
fn a_sign_ticked_after_the_check_page_leads_straight_to_care() {
    for (sign, urgency) in [("saddle_numb", "emergency"), ("fever_unwell", "same_day")] {
        let phone = TestPhone::with_an_owner("orchard");
        // Once with the body told in this walk, once with the body kept from the walk before.
        for _ in 0..2 {
            at_the_check_page(&phone);
            phone.ask(json!({"do": "walk_page", "question": "back"}));
            let list = phone.answer("back", json!({"pain": 9}));
            assert_eq!(list["question"]["id"], "signs_flare");
            let page = phone.answer("signs_flare", json!({"choices": [sign]}));
            assert_eq!(page["card"]["urgency"], urgency, "{page}");
            phone.ask(json!({"do": "lift_keep", "done": false}));
            phone.ask(clear(sign, "clinician"));
            at_the_check_page_again(&phone);
        }
        at_the_check_page(&phone);
        phone.ask(json!({"do": "walk_page", "question": "signs_today"}));
        phone.answer("signs_today", json!({"choice": "yes"}));
        let page = phone.answer("signs_full", json!({"choices": [sign]}));
        assert_eq!(page["card"]["urgency"], urgency, "{page}");
    }
}

/// The pain that brought up the short list is told again as none.
fn at_the_check_page_again(phone: &TestPhone) {
    at_the_check_page(phone);
    phone.ask(json!({"do": "walk_page", "question": "back"}));
    let page = phone.answer("back", json!({"pain": 3}));
    assert_eq!(page["page"], "check");
    phone.ask(json!({"do": "walk_drop"}));
}

#[test]
fn with_a_sign_open_no_other_answer_leads_around_it() {
    let phone = TestPhone::with_an_owner("orchard");
    at_the_check_page(&phone);
    phone.ask(json!({"do": "walk_page", "question": "back"}));
    phone.answer("back", json!({"pain": 9}));
    phone.answer("signs_flare", json!({"choices": ["saddle_numb"]}));
    phone.ask(json!({"do": "walk_page", "question": "back"}));
    let page = phone.answer("back", json!({"pain": 2}));
    assert_eq!(page["card"]["urgency"], "emergency", "{page}");
    phone.ask(json!({"do": "walk_page", "question": "start"}));
    let page = phone.answer("start", json!({"choice": "knee"}));
    assert_eq!(page["card"]["urgency"], "emergency", "{page}");
}

#[test]
fn an_emergency_is_named_first_however_long_another_sign_is_open() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.ask(json!({"do": "walk_start"}));
    phone.answer("signs_today", json!({"choice": "yes"}));
    phone.answer("signs_full", json!({"choices": ["night_pain"]}));
    phone.later(60);
    phone.ask(json!({"do": "walk_page", "question": "signs_full"}));
    phone.answer(
        "signs_full",
        json!({"choices": ["night_pain", "saddle_numb"]}),
    );
    let open = phone.ask(json!({"do": "home"}))["open_sign"].take();
    assert_eq!(open["signs"][0]["id"], "saddle_numb");
    assert_eq!(open["signs"][1]["id"], "night_pain");
    assert_eq!(open["since_text"], "Since: Today.");
}

#[test]
fn once_cleared_the_walk_goes_on_where_it_stood() {
    let phone = TestPhone::with_an_owner("orchard");
    ticked(&phone, "weight_loss");
    phone.ask(clear("weight_loss", "me"));
    let page = phone.ask(json!({"do": "walk_page", "question": null}));
    assert_eq!(page["question"]["id"], "what");
    assert_eq!(
        phone.refused(json!({"do": "lift_keep", "done": true})),
        "question_not_open"
    );
}
