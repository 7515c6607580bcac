//! The worker's own body: asked, private, and never more than the office needs.

use super::{choice, ids, report, somebody, ticks, walk, worker};
use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};

fn in_bed() -> Vec<(&'static str, Value)> {
    vec![
        ("new", choice("nothing")),
        ("same", choice("as_noted")),
        ("able", choice("partly")),
        ("mass", choice("up_75")),
        ("here", ticks(&["second", "slide_sheet"])),
    ]
}

/// Answers the worker's questions by the script, until the walk before a move goes on.
fn tell(phone: &TestPhone, mut page: Value, script: &Script) -> Vec<String> {
    let mut met = Vec::new();
    while page["page"] == "question" {
        let id = page["question"]["id"].as_str().expect("an id").to_owned();
        page = phone.answer(&id, script.answer_to(&id).clone());
        met.push(id);
    }
    assert_eq!(page, json!({"page": "move"}));
    met
}

#[test]
fn the_worker_is_asked_once_for_some_hours() {
    let phone = TestPhone::with_an_owner("willow");
    phone.ask(json!({"do": "trained_set", "equipment": ["slide_sheet"]}));
    let person = somebody(&phone, "A7");
    let (page, _, _) = walk(&phone, person, "up_in_bed", &in_bed());
    assert_eq!(page["page"], "own");
    assert!(page["quick"].is_string());
    let start = phone.ask(json!({"do": "own_start"}));
    let met = tell(&phone, start, &Script::ordinary());
    assert_eq!(met.first().map(String::as_str), Some("signs_today"));
    assert!(
        !met.contains(&"what".to_owned()),
        "nothing about a thing: {met:?}"
    );
    let page = phone.ask(json!({"do": "move_page"}));
    assert_eq!(ids(&page, "ways"), ["slide_sheet_two"]);
    let (page, _, _) = walk(&phone, person, "up_in_bed", &in_bed());
    assert_eq!(page["page"], "advice", "not asked again");
    phone.later(241);
    let (page, _, _) = walk(&phone, person, "up_in_bed", &in_bed());
    assert_eq!(page["page"], "own", "the body holds four hours");
}

#[test]
fn a_worker_who_was_never_asked_cannot_say_it_in_one_tap() {
    let phone = TestPhone::set_up("willow");
    assert_eq!(
        phone.refused(json!({"do": "own_quick"})),
        "question_not_open"
    );
    phone.ask(json!({"do": "trained_set", "equipment": []}));
    let person = somebody(&phone, "A7");
    let (page, _, _) = walk(&phone, person, "up_in_bed", &in_bed());
    assert_eq!(page["quick"], Value::Null);
}

#[test]
fn a_sore_back_bears_nothing_and_the_office_does_not_hear_of_it() {
    let phone = worker("willow");
    let start = phone.ask(json!({"do": "own_start"}));
    let sore = Script::ordinary()
        .but("back", json!({"pain": 9}))
        .but("back_state", json!({"choice": "volatile"}));
    tell(&phone, start, &sore);
    let person = somebody(&phone, "A7");
    let (page, _, _) = walk(&phone, person, "up_in_bed", &in_bed());
    assert_eq!(page["card"]["outcome"], "do_not_lift");
    assert!(ids(&page, "reasons").contains(&"worker_bears_nothing"));
    let text = report(&phone).to_lowercase();
    for private in ["back", "pain", "your", "body"] {
        assert!(!text.contains(private), "{private} in:\n{text}");
    }
    let kept = phone.ask(json!({"do": "move_keep", "result": "refused", "told": "copied"}));
    let shift = phone.ask(json!({"do": "shift"}));
    let text = shift["open"]["text"]
        .as_str()
        .expect("a text")
        .to_lowercase();
    assert!(!text.contains("back"), "{text}");
    assert_eq!(shift["open"]["entries"][0]["id"], kept["id"]);
}

#[test]
fn a_sign_of_the_worker_leads_to_care_and_comes_back_to_the_move() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    let (page, _, _) = walk(&phone, person, "up_in_bed", &[("new", choice("in_me"))]);
    assert_eq!(page["page"], "own");
    assert_eq!(page["sign"], true);
    let list = phone.ask(json!({"do": "own_start", "sign": true}));
    assert_eq!(list["question"]["id"], "signs_full");
    let back = phone.answer("signs_full", json!({"choices": ["chest_breath"]}));
    assert_eq!(back, json!({"page": "move"}));
    let page = phone.ask(json!({"do": "move_page"}));
    assert_eq!(page["card"]["outcome"], "seek_care");
    let headline = page["card"]["headline"].as_str().unwrap_or_default();
    assert!(headline.starts_with("You need help first"), "{headline}");
}

#[test]
fn a_lift_that_waits_is_not_lost() {
    let phone = worker("willow");
    phone.ask(json!({"do": "walk_start"}));
    phone.answer("signs_today", json!({"choice": "no"}));
    phone.answer("what", json!({"choice": "box"}));
    let start = phone.ask(json!({"do": "own_start"}));
    tell(&phone, start, &Script::ordinary());
    let page = phone.ask(json!({"do": "walk_page"}));
    assert_eq!(page["question"]["id"], "signs_today", "today was told anew");
    let page = phone.answer("signs_today", json!({"choice": "no"}));
    assert_eq!(page["question"]["id"], "mass", "the box is still there");
}
