//! The settings, and what is known about the person.

use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::json;

#[test]
fn they_are_shown_and_changed_one_by_one() {
    let phone = TestPhone::set_up("orchard");
    let settings = phone.ask(json!({"do": "settings"}));
    assert_eq!(
        settings,
        json!({"use": "lift", "units": "kg", "language": "en", "about": []})
    );
    assert_eq!(
        phone.ask(json!({"do": "settings_set", "units": "lb"}))["use"],
        "lift"
    );
    let settings = phone.ask(json!({"do": "settings_set", "use": "treat"}));
    assert_eq!(
        (&settings["use"], &settings["units"]),
        (&json!("treat"), &json!("lb"))
    );
    assert_eq!(
        phone.refused(json!({"do": "settings_set", "use": "fly"})),
        "not_a_choice at use"
    );
}

#[test]
fn what_is_known_about_the_person_is_listed() {
    let phone = TestPhone::with_an_owner("orchard");
    let about = phone.ask(json!({"do": "settings"}))["about"].take();
    let texts: Vec<&str> = about
        .as_array()
        .expect("rows")
        .iter()
        .filter_map(|row| row["text"].as_str())
        .collect();
    let size = ["Female", "166\u{a0}cm", "Not said"];
    assert_eq!(
        texts,
        ["40 to 64", "None of these", "No", size[0], size[1], size[2]]
    );
}

#[test]
fn the_questions_about_the_person_can_be_asked_again_and_end_at_home() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.ask(json!({"do": "about_start"}));
    phone.answer("age", json!({"choice": "40-64"}));
    let page = phone.answer("conditions", json!({"choices": ["pregnant"]}));
    assert_eq!(page["question"]["id"], "pregnancy_weeks");
    assert_eq!(page["question"]["number"]["unit"], "weeks");
    phone.answer("pregnancy_weeks", json!({"number": 20, "unit": "weeks"}));
    phone.answer("fell", json!({"choice": "no"}));
    phone.answer("sex", json!({"not_sure": true}));
    let page = phone.answer("stature", json!({"number": 170, "unit": "cm"}));
    assert_eq!(
        page["question"]["not_sure_text"], "Skip this question",
        "a number that nobody has to give"
    );
    assert_eq!(
        phone.answer("body_mass", json!({"number": 70, "unit": "kg"})),
        json!({"page": "done"})
    );
    let home = phone.ask(json!({"do": "home"}));
    assert_eq!(home["draft"], json!(null));
    let about = phone.ask(json!({"do": "settings"}))["about"].take();
    assert_eq!(about[2]["text"], "20\u{a0}weeks");
}

#[test]
fn pounds_are_shown_everywhere_once_chosen() {
    let phone = TestPhone::with_an_owner("harbour");
    let id = phone.lift(&Script::ordinary());
    phone.ask(json!({"do": "settings_set", "units": "lb"}));
    let whole = phone.ask(json!({"do": "history_entry", "id": id}));
    assert!(
        whole["rows"].to_string().contains("13\u{a0}lb"),
        "{}",
        whole["rows"]
    );
    phone.walk(&Script::ordinary(), None);
    let home = phone.ask(json!({"do": "home"}));
    assert_eq!(home["draft"]["title"], "Box, 13\u{a0}lb, from the floor");
}

#[test]
fn height_and_weight_are_asked_and_shown_in_the_units_of_the_person() {
    let phone = TestPhone::with_an_owner("harbour");
    phone.ask(json!({"do": "settings_set", "units": "lb"}));
    phone.ask(json!({"do": "about_start"}));
    phone.answer("age", json!({"choice": "40-64"}));
    phone.answer("conditions", json!({"choices": []}));
    phone.answer("fell", json!({"choice": "no"}));
    let page = phone.answer("sex", json!({"choice": "male"}));
    // 166 cm, told before, is 65.35… in.
    assert_eq!(
        page["question"]["value"],
        json!({"number": 65.4, "unit": "in"})
    );
    assert_eq!(
        phone.refused(json!({
            "do": "walk_answer", "question": "stature", "answer": {"number": 5.6, "unit": "in"},
        })),
        "out_of_range at answer"
    );
    phone.answer("stature", json!({"number": 66, "unit": "in"}));
    phone.answer("body_mass", json!({"number": 165, "unit": "lb"}));
    let about = phone.ask(json!({"do": "settings"}))["about"].take();
    assert_eq!(about[4]["text"], "5\u{a0}ft\u{a0}6\u{a0}in");
    assert_eq!(about[5]["text"], "165\u{a0}lb");
}

#[test]
fn what_was_passed_over_is_not_asked_again_for_a_month() {
    let phone = TestPhone::set_up("orchard");
    let pass = Script::ordinary()
        .but("sex", json!({"not_sure": true}))
        .but("stature", json!({"not_sure": true}));
    let asked = |phone: &TestPhone| phone.walk(&pass, None).met.contains(&"sex".to_owned());
    assert!(asked(&phone));
    phone.later(29 * 24 * 60);
    assert!(!asked(&phone));
    phone.later(24 * 60);
    assert!(asked(&phone));
}
