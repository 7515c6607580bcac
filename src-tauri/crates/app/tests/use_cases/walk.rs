//! The walk: which question comes when, going back, changing an answer.

use crate::phone::TestPhone;
use crate::script::{Script, met, up_to};
use serde_json::{Value, json};

fn row<'a>(check: &'a Value, question: &str) -> &'a Value {
    let rows = check["rows"].as_array().expect("rows");
    let found = rows.iter().find(|row| row["question"] == question);
    &found.unwrap_or_else(|| panic!("no row for {question} in {rows:#?}"))["text"]
}

#[test]
fn the_first_walk_asks_about_the_person_first() {
    let phone = TestPhone::set_up("orchard");
    let about = "signs_full age conditions fell sex stature body_mass";
    let thing = "what mass start reach often";
    let body = "back back_state knee_left knee_right other balance kneel";
    let expected = [about, thing, body].join(" ");
    assert_eq!(met(&phone, &Script::ordinary()).join(" "), expected);
}

#[test]
fn the_next_walk_asks_only_about_the_thing_and_once_about_signs() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.lift(&Script::ordinary());
    assert_eq!(
        met(&phone, &Script::ordinary()),
        ["signs_today", "what", "mass", "start", "reach", "often"]
    );
}

#[test]
fn after_four_hours_the_body_is_asked_again() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.lift(&Script::ordinary());
    phone.later(3 * 60 + 59);
    assert!(!met(&phone, &Script::ordinary()).contains(&"back".to_owned()));
    phone.later(1);
    assert!(met(&phone, &Script::ordinary()).contains(&"back".to_owned()));
}

#[test]
fn after_a_week_the_whole_list_of_signs_is_asked_and_after_a_month_the_person() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.later(7 * 24 * 60);
    let week = met(&phone, &Script::ordinary());
    assert_eq!(week.first().map(String::as_str), Some("signs_full"));
    assert!(
        !week.contains(&"signs_today".to_owned()),
        "the whole list has it all"
    );
    assert!(!week.contains(&"age".to_owned()));
    phone.later(23 * 24 * 60);
    assert!(met(&phone, &Script::ordinary()).contains(&"age".to_owned()));
}

#[test]
fn a_question_page_has_all_that_a_screen_needs() {
    let phone = TestPhone::with_an_owner("orchard");
    let page = up_to(&phone, "mass");
    let question = &page["question"];
    assert_eq!(question["kind"], "choice");
    assert_eq!(question["title"], "How heavy is it?");
    assert_eq!(question["group"], "task");
    assert_eq!(question["not_sure"], true);
    assert_eq!(question["number"], Value::Null);
    assert_eq!(question["value"], Value::Null);
    assert_eq!(
        question["options"][1],
        json!({"id": "flour", "label": "A bag of flour", "note": "1\u{a0}kg", "picture": "flour"})
    );
    assert_eq!(page["place"], json!({"at": 3, "of": 13}));
    assert_eq!(page["back"], "what");
    assert_eq!(page["title_bar"], "Before the lift");
}

#[test]
fn who_thinks_in_pounds_sees_pounds() {
    let phone = TestPhone::with_an_owner("harbour");
    phone.ask(json!({"do": "settings_set", "units": "lb"}));
    let page = up_to(&phone, "mass");
    assert_eq!(page["question"]["options"][5]["note"], "22\u{a0}lb");
    let number = &phone.answer("mass", json!({"choice": "type_it"}))["question"]["number"];
    assert_eq!(
        (&number["unit"], &number["max"]),
        (&json!("lb"), &json!(440.0))
    );
}

#[test]
fn going_back_loses_nothing() {
    let phone = TestPhone::with_an_owner("orchard");
    up_to(&phone, "often");
    let back = phone.ask(json!({"do": "walk_page", "question": "start"}));
    assert_eq!(back["question"]["value"], json!({"choice": "floor"}));
    assert_eq!(back["back"], "mass");
    let next = phone.answer("start", json!({"choice": "knee"}));
    assert_eq!(next["question"]["id"], "often", "on to where it stood");
}

#[test]
fn from_the_check_page_one_answer_is_changed() {
    let phone = TestPhone::with_an_owner("orchard");
    up_to(&phone, "kneel");
    let check = phone.answer("kneel", json!({"choice": "yes"}));
    assert_eq!(check["page"], "check");
    assert_eq!(check["back"], "kneel");
    assert_eq!(row(&check, "mass"), "6\u{a0}kg");
    assert_eq!(row(&check, "back"), "3 out of 10");
    phone.ask(json!({"do": "walk_page", "question": "mass"}));
    phone.answer("mass", json!({"choice": "type_it"}));
    let check = phone.answer("mass_number", json!({"number": 7.5, "unit": "kg"}));
    assert_eq!(row(&check, "mass"), "7.5\u{a0}kg");
}

#[test]
fn an_answer_kept_from_before_can_be_changed_too() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.lift(&Script::ordinary());
    up_to(&phone, "often");
    phone.answer("often", json!({"choice": "once"}));
    let page = phone.ask(json!({"do": "walk_page", "question": "back"}));
    assert_eq!(page["question"]["value"], json!({"pain": 3}));
    assert_eq!(page["back"], "check");
    let check = phone.answer("back", json!({"pain": 5}));
    assert_eq!(row(&check, "back"), "5 out of 10");
}
