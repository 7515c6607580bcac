//! The walk: which question comes when, going back, changing an answer, not being sure.

use crate::phone::{Script, TestPhone};
use serde_json::{Value, json};

/// Ids of the questions that a walk meets, from first to last.
fn met(phone: &TestPhone, script: &Script) -> Vec<String> {
    phone.walk(script, None).met
}

fn row<'a>(check: &'a Value, question: &str) -> &'a Value {
    let rows = check["rows"].as_array().expect("rows");
    let found = rows.iter().find(|row| row["question"] == question);
    &found.unwrap_or_else(|| panic!("no row for {question} in {rows:#?}"))["text"]
}

/// Walks until the page with this question is open.
fn up_to(phone: &TestPhone, question: &str) -> Value {
    let script = Script::ordinary();
    let mut page = phone.ask(json!({"do": "walk_start"}));
    while page["question"]["id"] != question {
        let id = page["question"]["id"]
            .as_str()
            .expect("a question")
            .to_owned();
        page = phone.answer(&id, script.answer_to(&id).clone());
    }
    page
}

#[test]
fn the_first_walk_asks_about_the_person_first() {
    let phone = TestPhone::set_up("orchard");
    let expected = [
        "signs_full",
        "age",
        "conditions",
        "fell", // about
        "what",
        "mass",
        "start",
        "reach",
        "often", // the thing
        "back",
        "back_state",
        "knee_left",
        "knee_right",
        "other",
        "balance",
        "kneel", // the body
    ];
    assert_eq!(met(&phone, &Script::ordinary()), expected);
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
        json!({"id": "flour", "label": "A bag of flour", "note": "1 kg", "picture": "flour"})
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
    assert_eq!(page["question"]["options"][5]["note"], "22 lb");
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
    assert_eq!(row(&check, "mass"), "6 kg");
    assert_eq!(row(&check, "back"), "3 out of 10");
    phone.ask(json!({"do": "walk_page", "question": "mass"}));
    phone.answer("mass", json!({"choice": "type_it"}));
    let check = phone.answer("mass_number", json!({"number": 7.5, "unit": "kg"}));
    assert_eq!(row(&check, "mass"), "7.5 kg");
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

#[test]
fn not_sure_is_an_answer() {
    let phone = TestPhone::with_an_owner("orchard");
    let unsure = json!({"not_sure": true});
    let script = Script::ordinary()
        .but("what", unsure.clone())
        .but("mass", unsure.clone())
        .but("mass_guess", json!({"choice": "no_idea"}))
        .but("start", unsure.clone())
        .but("reach", unsure.clone())
        .but("often", unsure.clone())
        .but("back", unsure.clone())
        .but("back_state", unsure.clone())
        .but("knee_left", unsure.clone())
        .but("knee_right", unsure.clone())
        .but("other", unsure.clone())
        .but("balance", unsure.clone())
        .but("kneel", unsure);
    let card = phone.walk(&script, None).page["card"].take();
    assert_ne!(
        card["outcome"], "lift",
        "nothing is known, so nothing is waved through"
    );
}

#[test]
fn what_hurts_besides_is_rated_only_when_ticked() {
    let phone = TestPhone::with_an_owner("orchard");
    let script = Script::ordinary()
        .but("other", json!({"choices": ["hip_right", "shoulders"]}))
        .but("hip_right", json!({"pain": 4}))
        .but("shoulders", json!({"pain": 2}));
    let met = met(&phone, &script);
    let at = met.iter().position(|id| id == "other").expect("asked");
    assert_eq!(&met[at..at + 3], ["other", "hip_right", "shoulders"]);
}

#[test]
fn a_bad_day_opens_the_short_list_of_signs() {
    let phone = TestPhone::with_an_owner("orchard");
    let flare = Script::ordinary().but("back_state", json!({"choice": "flare"}));
    assert!(met(&phone, &flare).contains(&"signs_flare".to_owned()));
    phone.later(5 * 60);
    let sore_knee = Script::ordinary().but("knee_left", json!({"pain": 8}));
    assert!(met(&phone, &sore_knee).contains(&"signs_flare".to_owned()));
    phone.later(5 * 60);
    let whole_list = flare.but("signs_today", json!({"choice": "yes"}));
    assert!(
        !met(&phone, &whole_list).contains(&"signs_flare".to_owned()),
        "it was all asked"
    );
}

#[test]
fn unlikely_pairs_are_asked_about_and_never_refused() {
    let phone = TestPhone::with_an_owner("orchard");
    let script = Script::ordinary()
        .but("what", json!({"choice": "small"}))
        .but("mass", json!({"choice": "bicycle"}))
        .but("back", json!({"pain": 0}))
        .but("back_state", json!({"choice": "flare"}));
    let walked = phone.walk(&script, None);
    for id in ["small_heavy", "flare_pain_0"] {
        assert!(
            walked.met.contains(&id.to_owned()),
            "{id} in {:?}",
            walked.met
        );
    }
    assert_eq!(walked.page["page"], "advice");
}

#[test]
fn a_changed_answer_brings_the_interruption_back() {
    let phone = TestPhone::with_an_owner("orchard");
    up_to(&phone, "mass");
    phone.answer("mass", json!({"choice": "type_it"}));
    let page = phone.answer("mass_number", json!({"number": 80, "unit": "kg"}));
    assert_eq!(
        (&page["page"], &page["id"]),
        (&json!("interruption"), &json!("very_heavy"))
    );
    assert_eq!(page["question"], "mass_number");
    phone.answer("very_heavy", json!({"choice": "go_on"}));
    phone.ask(json!({"do": "walk_page", "question": "mass_number"}));
    let page = phone.answer("mass_number", json!({"number": 90, "unit": "kg"}));
    assert_eq!(page["id"], "very_heavy");
    let page = phone.answer("mass_number", json!({"number": 9, "unit": "kg"}));
    assert_eq!(page["question"]["id"], "start");
}

#[test]
fn a_person_or_an_animal_is_no_load() {
    let phone = TestPhone::with_an_owner("orchard");
    up_to(&phone, "what");
    let page = phone.answer("what", json!({"choice": "living"}));
    assert_eq!(page["page"], "refuse");
    assert!(page["who"].as_array().is_some_and(|who| !who.is_empty()));
    assert_eq!(
        phone.ask(json!({"do": "home"}))["draft"],
        Value::Null,
        "no draft is kept"
    );
}

#[test]
fn answers_that_are_not_offered_are_refused_and_the_page_stays() {
    let phone = TestPhone::with_an_owner("orchard");
    up_to(&phone, "mass");
    let answer = |question: &str, answer: Value| {
        phone.refused(json!({"do": "walk_answer", "question": question, "answer": answer}))
    };
    assert_eq!(
        answer("mass", json!({"choice": "feather"})),
        "answer_not_offered at answer"
    );
    assert_eq!(
        answer("mass", json!({"pain": 3})),
        "answer_not_offered at answer"
    );
    assert_eq!(answer("mass", json!({})), "missing_field at answer");
    assert_eq!(
        answer("mass", json!({"choice": "cup", "pain": 1})),
        "contradiction at answer"
    );
    assert_eq!(
        answer("kneel", json!({"choice": "yes"})),
        "question_not_open at question"
    );
    assert_eq!(
        answer("hats", json!({"choice": "yes"})),
        "question_not_open at question"
    );
    phone.answer("mass", json!({"choice": "type_it"}));
    let heavy = json!({"number": 500, "unit": "kg"});
    assert_eq!(answer("mass_number", heavy), "out_of_range at answer");
    let page = phone.ask(json!({"do": "walk_page", "question": null}));
    assert_eq!(page["question"]["id"], "mass_number");
}

#[test]
fn nothing_is_confirmed_before_it_is_answered() {
    let phone = TestPhone::with_an_owner("orchard");
    assert_eq!(phone.refused(json!({"do": "walk_confirm"})), "no_draft");
    up_to(&phone, "mass");
    assert_eq!(
        phone.refused(json!({"do": "walk_confirm"})),
        "question_not_open"
    );
    assert_eq!(
        phone.refused(json!({"do": "lift_keep", "done": true})),
        "question_not_open"
    );
}

#[test]
fn the_advice_says_what_why_and_when_to_stop() {
    let phone = TestPhone::with_an_owner("orchard");
    let page = phone.walk(&Script::ordinary(), None).page;
    assert_eq!(page["page"], "advice");
    assert_eq!(page["saved"], Value::Null);
    let card = &page["card"];
    assert_eq!(card["outcome"], "lift");
    assert!(
        card["headline"]
            .as_str()
            .is_some_and(|line| line.starts_with("If you choose to lift"))
    );
    for text in ["why", "stop", "sure", "foot"] {
        assert!(
            card[text].as_str().is_some_and(|text| !text.is_empty()),
            "{text}"
        );
    }
}
