//! Tasks that come again, under a name.

use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};

fn saved(phone: &TestPhone) -> Value {
    phone.ask(json!({"do": "home"}))["saved"].take()
}

#[test]
fn the_task_of_a_draft_is_kept_under_a_name() {
    let mut phone = TestPhone::with_an_owner("orchard");
    phone.walk(&Script::ordinary(), None);
    let id = phone.ask(json!({"do": "saved_keep", "name": "  Laundry   basket ", "from": "draft"}))
        ["id"]
        .clone();
    phone.kill_and_unlock();
    assert_eq!(
        saved(&phone),
        json!([{"id": id, "name": "Laundry basket", "text": "6\u{a0}kg, from the floor"}])
    );
}

#[test]
fn the_task_of_an_entry_is_kept_under_a_name() {
    let phone = TestPhone::with_an_owner("orchard");
    let script = Script::ordinary()
        .but("mass", json!({"choice": "type_it"}))
        .but("mass_number", json!({"number": 7.3, "unit": "kg"}));
    let id = phone.lift(&script);
    phone.ask(json!({"do": "saved_keep", "name": "Parcel", "from": id}));
    assert_eq!(saved(&phone)[0]["text"], "7.3\u{a0}kg, from the floor");
}

#[test]
fn a_saved_task_asks_only_what_changes_and_every_answer_can_be_changed() {
    let phone = TestPhone::with_an_owner("orchard");
    let lift = phone.lift(&Script::ordinary());
    let id = phone.ask(json!({"do": "saved_keep", "name": "Box", "from": lift}))["id"].clone();
    let page = phone.ask(json!({"do": "walk_start", "saved": id}));
    assert_eq!(page["question"]["id"], "signs_today");
    assert_eq!(page["place"], json!({"at": 1, "of": 1}));
    let check = phone.answer("signs_today", json!({"choice": "no"}));
    assert_eq!(check["page"], "check");
    phone.ask(json!({"do": "walk_page", "question": "mass"}));
    let check = phone.answer("mass", json!({"choice": "water_bucket"}));
    assert_eq!(check["page"], "check");
    assert!(check["rows"].to_string().contains("10\u{a0}kg"));
}

#[test]
fn a_dropped_task_is_gone() {
    let phone = TestPhone::with_an_owner("orchard");
    let lift = phone.lift(&Script::ordinary());
    let id = phone.ask(json!({"do": "saved_keep", "name": "Box", "from": lift}))["id"].clone();
    phone.ask(json!({"do": "saved_drop", "id": id}));
    assert_eq!(saved(&phone), json!([]));
    assert_eq!(
        phone.refused(json!({"do": "saved_drop", "id": id})),
        "not_found at id"
    );
    assert_eq!(
        phone.refused(json!({"do": "walk_start", "saved": id})),
        "not_found at saved"
    );
}

#[test]
fn a_task_dropped_while_its_walk_is_open_is_asked_about() {
    let phone = TestPhone::with_an_owner("orchard");
    let lift = phone.lift(&Script::ordinary());
    let id = phone.ask(json!({"do": "saved_keep", "name": "Box", "from": lift}))["id"].clone();
    phone.ask(json!({"do": "walk_start", "saved": id}));
    phone.ask(json!({"do": "saved_drop", "id": id}));
    let page = phone.answer("signs_today", json!({"choice": "no"}));
    assert_eq!(page["question"]["id"], "what");
}

#[test]
fn what_cannot_be_kept_is_refused() {
    let phone = TestPhone::with_an_owner("orchard");
    let keep = |name: &str, from: Value| {
        phone.refused(json!({"do": "saved_keep", "name": name, "from": from}))
    };
    assert_eq!(keep("Box", json!("draft")), "no_draft");
    assert_eq!(keep("Box", json!("shed")), "not_a_choice at from");
    assert_eq!(keep("Box", json!(99)), "not_found at from");
    assert_eq!(keep("  ", json!("draft")), "missing_field at name");
    assert_eq!(keep(&"x".repeat(41), json!("draft")), "too_long at name");
    phone.ask(json!({"do": "walk_start"}));
    assert_eq!(keep("Box", json!("draft")), "answer_needed at from");
}
