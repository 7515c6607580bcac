//! A draft outlives the app: killed at any page, it opens at the same page again.

use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};

fn page_now(phone: &TestPhone) -> Value {
    phone.ask(json!({"do": "walk_page", "question": null}))
}

#[test]
fn killed_at_any_page_it_opens_there_again() {
    let mut phone = TestPhone::with_an_owner("orchard");
    let script = Script::ordinary();
    let mut page = phone.ask(json!({"do": "walk_start"}));
    while page["page"] == "question" {
        phone.kill_and_unlock();
        assert_eq!(page_now(&phone), page);
        let id = page["question"]["id"].as_str().expect("an id").to_owned();
        page = phone.answer(&id, script.answer_to(&id).clone());
    }
    phone.kill_and_unlock();
    assert_eq!(page_now(&phone), page, "the check page");
    let advice = phone.ask(json!({"do": "walk_confirm"}));
    phone.kill_and_unlock();
    assert_eq!(page_now(&phone), advice);
    assert_eq!(
        phone.ask(json!({"do": "home"}))["draft"]["title"],
        "Box, 6\u{a0}kg, from the floor"
    );
}

#[test]
fn killed_while_an_earlier_page_was_open_it_opens_there() {
    let mut phone = TestPhone::with_an_owner("orchard");
    phone.ask(json!({"do": "walk_start"}));
    phone.answer("signs_today", json!({"choice": "no"}));
    phone.answer("what", json!({"choice": "box"}));
    phone.ask(json!({"do": "walk_page", "question": "what"}));
    phone.kill_and_unlock();
    let page = page_now(&phone);
    assert_eq!(page["question"]["id"], "what");
    assert_eq!(page["question"]["value"], json!({"choice": "box"}));
}

#[test]
fn an_interruption_that_was_passed_stays_passed() {
    let mut phone = TestPhone::with_an_owner("orchard");
    phone.ask(json!({"do": "walk_start"}));
    phone.answer("signs_today", json!({"choice": "no"}));
    phone.answer("what", json!({"choice": "small"}));
    let page = phone.answer("mass", json!({"choice": "suitcase"}));
    assert_eq!(page["id"], "small_heavy");
    phone.kill_and_unlock();
    assert_eq!(page_now(&phone)["id"], "small_heavy");
    phone.answer("small_heavy", json!({"choice": "go_on"}));
    phone.kill_and_unlock();
    assert_eq!(page_now(&phone)["question"]["id"], "start");
}

#[test]
fn left_lying_for_hours_it_asks_about_today_again_and_keeps_the_thing() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.walk(&Script::ordinary(), None);
    phone.later(5 * 60);
    let page = page_now(&phone);
    assert_eq!(page["question"]["id"], "signs_today");
    let walked = phone.walk_on(page, &Script::ordinary());
    assert_eq!(walked.met.first().map(String::as_str), Some("signs_today"));
    assert!(walked.met.contains(&"back".to_owned()));
    assert!(!walked.met.contains(&"mass".to_owned()), "{:?}", walked.met);
}

#[test]
fn dropped_it_is_gone_and_a_new_one_replaces_it() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.ask(json!({"do": "walk_start"}));
    phone.answer("signs_today", json!({"choice": "no"}));
    phone.answer("what", json!({"choice": "bag"}));
    assert_eq!(
        phone.ask(json!({"do": "walk_start"}))["question"]["id"],
        "signs_today"
    );
    phone.ask(json!({"do": "walk_drop"}));
    assert_eq!(phone.ask(json!({"do": "home"}))["draft"], Value::Null);
    assert_eq!(
        phone.refused(json!({"do": "walk_page", "question": null})),
        "no_draft"
    );
    assert_eq!(
        phone.ask(json!({"do": "walk_drop"})),
        json!({}),
        "dropping nothing is fine"
    );
}

#[test]
fn a_body_told_to_the_end_is_kept_even_if_the_draft_is_dropped() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.walk(&Script::ordinary(), None);
    phone.ask(json!({"do": "walk_drop"}));
    let kept = phone.ask(json!({"do": "home"}))["body_kept"].take();
    assert_eq!(kept["text"], "Back 3, Left knee 0, Right knee 1");
    assert_eq!(kept["until_text"], "We ask again after 13:12.");
}

#[test]
fn questions_about_the_person_let_a_lift_wait_behind_them() {
    let mut phone = TestPhone::with_an_owner("orchard");
    phone.ask(json!({"do": "walk_start"}));
    phone.answer("signs_today", json!({"choice": "no"}));
    phone.answer("what", json!({"choice": "bag"}));
    let page = phone.ask(json!({"do": "about_start"}));
    assert_eq!(page["question"]["id"], "age");
    assert_eq!(
        page["question"]["value"],
        json!({"choice": "40-64"}),
        "what was said last"
    );
    assert_eq!(page["place"]["at"], 1);
    phone.answer("age", json!({"choice": "65-79"}));
    phone.kill_and_unlock();
    assert_eq!(page_now(&phone)["question"]["id"], "conditions");
    phone.answer("conditions", json!({"choices": ["osteoporosis"]}));
    phone.answer("fell", json!({"choice": "yes"}));
    phone.answer("sex", json!({"choice": "male"}));
    phone.answer("stature", json!({"not_sure": true}));
    assert_eq!(
        phone.answer("body_mass", json!({"not_sure": true})),
        json!({"page": "done"})
    );
    assert_eq!(
        page_now(&phone)["question"]["id"],
        "mass",
        "the lift goes on where it stood"
    );
    let about = phone.ask(json!({"do": "settings"}))["about"].take();
    assert_eq!(
        about[0],
        json!({"question": "age", "label": "Age", "text": "65 to 79"})
    );
    assert_eq!(about[1]["text"], "Weak bones");
}
