//! Answers: not being sure, unlikely pairs, and what is not taken.

use crate::phone::TestPhone;
use crate::script::{Script, met, up_to};
use serde_json::{Value, json};

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

#[test]
fn with_the_pain_told_anew_the_short_list_is_asked_anew() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.lift(&Script::ordinary().but("back_state", json!({"choice": "volatile"})));
    phone.ask(json!({"do": "walk_start"}));
    phone.answer("signs_today", json!({"choice": "no"}));
    phone.ask(json!({"do": "walk_page", "question": "what"}));
    let page = phone.answer("what", json!({"choice": "box"}));
    assert_eq!(page["question"]["id"], "mass");
    for (question, choice) in [
        ("mass", "flour"),
        ("start", "floor"),
        ("reach", "close"),
        ("often", "once"),
    ] {
        phone.answer(question, json!({"choice": choice}));
    }
    let page = phone.answer("back", json!({"pain": 9}));
    assert_eq!(page["question"]["id"], "signs_flare");
    assert_eq!(
        phone.answer("signs_flare", json!({"choices": []}))["page"],
        "check"
    );
    phone.ask(json!({"do": "walk_confirm"}));
    // Told and asked, it holds for the next lift; with another pain it is asked once more.
    let next = met(&phone, &Script::ordinary());
    assert!(!next.contains(&"signs_flare".to_owned()), "{next:?}");
    phone.ask(json!({"do": "walk_page", "question": "check"}));
    let page = phone.answer("knee_left", json!({"pain": 10}));
    assert_eq!(page["question"]["id"], "signs_flare");
}
