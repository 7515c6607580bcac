//! The history: newest first, filtered, page by page, each entry with the advice of its day.

use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};

fn ids(reply: &Value) -> Vec<i64> {
    let entries = reply["entries"].as_array().expect("entries");
    entries
        .iter()
        .map(|entry| entry["id"].as_i64().expect("an id"))
        .collect()
}

/// Three lifts on three days: squat done, hinge done, left.
fn three_days(phone: &TestPhone) -> [i64; 3] {
    let mut kept = [0; 3];
    let commands = [
        json!({"do": "lift_keep", "done": true, "way": "squat"}),
        json!({"do": "lift_keep", "done": true, "way": "hinge"}),
        json!({"do": "lift_keep", "done": false}),
    ];
    for (id, command) in kept.iter_mut().zip(commands) {
        phone.walk(&Script::ordinary(), None);
        *id = phone.ask(command)["id"].as_i64().expect("an id");
        phone.later(24 * 60);
    }
    kept
}

#[test]
fn it_is_empty_at_first() {
    let phone = TestPhone::set_up("orchard");
    assert_eq!(
        phone.ask(json!({"do": "history"})),
        json!({"entries": [], "more": false, "practised": false})
    );
    assert_eq!(phone.ask(json!({"do": "home"}))["recent"], json!([]));
}

#[test]
fn filters_show_what_they_say() {
    let phone = TestPhone::with_an_owner("orchard");
    let [squat, hinge, left] = three_days(&phone);
    let shown = |filter: Value| {
        let mut command = filter;
        command["do"] = json!("history");
        ids(&phone.ask(command))
    };
    assert_eq!(shown(json!({})), [left, hinge, squat]);
    assert_eq!(shown(json!({"show": "done"})), [hinge, squat]);
    assert_eq!(shown(json!({"show": "left"})), [left]);
    assert_eq!(shown(json!({"way": "hinge"})), [hinge]);
    assert_eq!(shown(json!({"since": "2026-11-26"})), [left, hinge]);
    assert_eq!(shown(json!({"before": left})), [hinge, squat]);
}

#[test]
fn it_comes_page_by_page() {
    let phone = TestPhone::with_an_owner("orchard");
    let [squat, hinge, left] = three_days(&phone);
    let first = phone.ask(json!({"do": "history", "limit": 2}));
    assert_eq!(
        (ids(&first), &first["more"]),
        (vec![left, hinge], &json!(true))
    );
    let second = phone.ask(json!({"do": "history", "limit": 2, "before": hinge}));
    assert_eq!(
        (ids(&second), &second["more"]),
        (vec![squat], &json!(false))
    );
}

#[test]
fn filters_that_are_none_are_refused() {
    let phone = TestPhone::set_up("orchard");
    for (filter, refused) in [
        (json!({"show": "some"}), "not_a_choice at show"),
        (json!({"way": "fly"}), "not_a_choice at way"),
        (json!({"since": "yesterday"}), "not_a_choice at since"),
        (json!({"limit": 0}), "out_of_range at limit"),
        (json!({"limit": 101}), "out_of_range at limit"),
    ] {
        let mut command = filter;
        command["do"] = json!("history");
        assert_eq!(phone.refused(command), refused);
    }
}

#[test]
fn an_entry_shows_the_answers_and_the_advice_of_its_day() {
    let phone = TestPhone::with_an_owner("orchard");
    let mut shown = phone.walk(&Script::ordinary(), None).page["card"].take();
    let id = phone.ask(json!({"do": "lift_keep", "done": true, "way": "squat"}))["id"].clone();
    let whole = phone.ask(json!({"do": "history_entry", "id": id}));
    assert_eq!(whole["entry"]["id"], id);
    let rows = whole["rows"].as_array().expect("rows");
    let row = |question: &str| rows.iter().find(|row| row["question"] == question);
    assert_eq!(
        row("mass").map(|row| &row["text"]),
        Some(&json!("6\u{a0}kg"))
    );
    assert_eq!(
        row("back").map(|row| &row["text"]),
        Some(&json!("3 out of 10"))
    );
    assert_eq!(row("kneel").map(|row| &row["text"]), Some(&json!("Yes")));
    let mut kept = whole["advice"].clone();
    // The modelled loads are not kept: they explain, and can be computed again.
    for card in [&mut shown, &mut kept] {
        card.as_object_mut().expect("a card").remove("loads");
    }
    assert_eq!(kept, shown, "the card of that day, to the word");
    assert_eq!(
        phone.refused(json!({"do": "history_entry", "id": 99})),
        "not_found at id"
    );
}

#[test]
fn an_old_advice_is_shown_in_the_language_of_today() {
    let phone = TestPhone::with_an_owner("harbour");
    let id = phone.lift(&Script::ordinary());
    phone.ask(json!({"do": "language_set", "language": "es"}));
    let whole = phone.ask(json!({"do": "history_entry", "id": id}));
    let headline = whole["advice"]["headline"].as_str().expect("a headline");
    assert!(headline.starts_with("Si decide levantarlo"), "{headline}");
    assert_eq!(
        whole["entry"]["title"], "Box, 6\u{a0}kg, from the floor",
        "the title of that day stays"
    );
}

#[test]
fn home_shows_the_newest_three() {
    let phone = TestPhone::with_an_owner("orchard");
    three_days(&phone);
    let last = phone.lift(&Script::ordinary());
    let recent = phone.ask(json!({"do": "home"}))["recent"].take();
    assert_eq!(recent.as_array().map(Vec::len), Some(3));
    assert_eq!(recent[0]["id"], json!(last));
}
