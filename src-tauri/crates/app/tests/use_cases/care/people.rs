//! Several people a day, by code and picture.

use super::{choice, plan, somebody, walk, worker};
use serde_json::json;

#[test]
fn a_code_and_a_picture_are_suggested_that_nobody_has() {
    let phone = worker("willow");
    let people = phone.ask(json!({"do": "people"}));
    assert_eq!(people["suggest"]["code"], "A1");
    somebody(&phone, "A1");
    let people = phone.ask(json!({"do": "people"}));
    assert_eq!(people["suggest"]["code"], "A2");
    assert_ne!(people["suggest"]["picture"], "kettle");
    assert_eq!(people["people"][0]["code"], "A1");
}

#[test]
fn two_people_never_share_a_code_and_a_long_one_is_refused() {
    let phone = worker("willow");
    let first = somebody(&phone, "A7");
    let keep = |code: &str| json!({"do": "person_keep", "code": code, "picture": "leaf"});
    assert_eq!(phone.refused(keep("a7")), "contradiction at code");
    assert_eq!(phone.refused(keep("  ")), "missing_field at code");
    assert_eq!(
        phone.refused(keep("a name and a surname")),
        "too_long at code"
    );
    assert_eq!(
        phone.refused(json!({"do": "person_keep", "code": "B1", "picture": "face"})),
        "not_a_choice at picture"
    );
    phone.ask(json!({"do": "person_keep", "id": first, "code": "A7", "picture": "boat"}));
    let person = phone.ask(json!({"do": "person", "id": first}));
    assert_eq!(person["person"]["picture"], "boat");
}

#[test]
fn what_is_known_of_one_is_not_taken_for_another() {
    let phone = worker("willow");
    let (first, second) = (somebody(&phone, "A7"), somebody(&phone, "B2"));
    plan(&phone, first, "bed_to_chair", &["stand_aid"], Some(1));
    let (page, met, _) = walk(
        &phone,
        second,
        "bed_to_chair",
        &[("new", choice("nothing")), ("legs", choice("full"))],
    );
    assert_eq!(met, ["new", "legs"]);
    assert_eq!(page["person"]["code"], "B2");
    let other = phone.ask(json!({"do": "person", "id": first}));
    assert_eq!(other["facts"], json!([]));
    assert_eq!(other["moves"][0]["what"], "bed_to_chair");
    assert_eq!(other["moves"][0]["planned"], true);
}

#[test]
fn what_was_noted_can_be_forgotten_and_the_plan_stays() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    plan(&phone, person, "car", &["stand_by"], None);
    walk(
        &phone,
        person,
        "bed_to_chair",
        &[("new", choice("nothing")), ("legs", choice("full"))],
    );
    let known = phone.ask(json!({"do": "person", "id": person}));
    assert_eq!(known["facts"], json!(["Weight on the legs: All of it"]));
    phone.ask(json!({"do": "person_forget", "id": person}));
    let known = phone.ask(json!({"do": "person", "id": person}));
    assert_eq!(known["facts"], json!([]));
    assert_eq!(known["moves"][0]["planned"], true);
    phone.ask(json!({"do": "care_plan_drop", "person": person, "move": "car"}));
    let known = phone.ask(json!({"do": "person", "id": person}));
    assert_eq!(known["moves"][0]["planned"], false);
}

#[test]
fn a_plan_says_who_when_and_only_ways_of_its_move() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    let keep = |field: &str, value: serde_json::Value| {
        let mut command = json!({
            "do": "care_plan_keep", "person": person, "move": "car", "ways": ["stand_by"], "workers": 1,
            "issued_by": "office", "issued_on": "2026-11-12",
        });
        command[field] = value;
        command
    };
    assert_eq!(
        phone.refused(keep("ways", json!([]))),
        "missing_field at ways"
    );
    assert_eq!(
        phone.refused(keep("ways", json!(["manual_lift"]))),
        "not_a_choice at ways"
    );
    assert_eq!(
        phone.refused(keep("workers", json!(0))),
        "out_of_range at workers"
    );
    assert_eq!(
        phone.refused(keep("issued_by", json!("aunt"))),
        "not_a_choice at issued_by"
    );
    for day in ["2026-11-26", "12 November", ""] {
        assert_eq!(
            phone.refused(keep("issued_on", json!(day))),
            "out_of_range at issued_on"
        );
    }
    let floor = json!({
        "do": "care_plan_keep", "person": person, "move": "floor_to_chair", "ways": ["manual_lift"],
        "issued_by": "office", "issued_on": "2026-11-12",
    });
    assert_eq!(
        phone.refused(floor),
        "not_a_choice at ways",
        "no plan unlocks it"
    );
}

#[test]
fn a_removed_person_takes_the_walk_along_and_leaves_the_log() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    walk(
        &phone,
        person,
        "bed_to_chair",
        &[("new", choice("nothing")), ("legs", choice("full"))],
    );
    phone.ask(json!({"do": "move_keep", "result": "done", "way": "stand_by"}));
    phone.ask(json!({"do": "move_start", "person": person, "move": "car"}));
    phone.ask(json!({"do": "person_drop", "id": person}));
    assert_eq!(phone.refused(json!({"do": "move_page"})), "no_draft");
    let shift = phone.ask(json!({"do": "shift"}));
    let text = shift["open"]["entries"][0]["text"]
        .as_str()
        .unwrap_or_default();
    assert!(text.contains("A7, From bed to chair: done"), "{text}");
}
