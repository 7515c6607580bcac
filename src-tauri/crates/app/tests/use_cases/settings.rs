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
    assert_eq!(texts, ["40 to 64", "None of these", "No"]);
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
    assert_eq!(
        phone.answer("fell", json!({"choice": "no"})),
        json!({"page": "done"})
    );
    let home = phone.ask(json!({"do": "home"}));
    assert_eq!(home["draft"], json!(null));
    let about = phone.ask(json!({"do": "settings"}))["about"].take();
    assert_eq!(about[2]["text"], "20 weeks");
}

#[test]
fn pounds_are_shown_everywhere_once_chosen() {
    let phone = TestPhone::with_an_owner("harbour");
    let id = phone.lift(&Script::ordinary());
    phone.ask(json!({"do": "settings_set", "units": "lb"}));
    let whole = phone.ask(json!({"do": "history_entry", "id": id}));
    assert!(
        whole["rows"].to_string().contains("13 lb"),
        "{}",
        whole["rows"]
    );
    phone.walk(&Script::ordinary(), None);
    let home = phone.ask(json!({"do": "home"}));
    assert_eq!(home["draft"]["title"], "Box, 13 lb, from the floor");
}
