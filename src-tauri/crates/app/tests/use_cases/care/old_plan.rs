//! A care plan past its date: it says so, forbids as before, and unlocks nothing.

use super::{ALL, choice, ids, somebody, ticks, walk, worker};
use crate::phone::TestPhone;
use chrono::Duration;
use serde_json::{Value, json};

/// The belt for one alone: sources differ, so it takes a care plan.
fn belt_by_plan(phone: &TestPhone, person: i64, review: Option<&str>) {
    phone.ask(json!({
        "do": "care_plan_keep", "person": person, "move": "bed_to_chair", "ways": ["stand_pivot_belt", "stand_aid"],
        "workers": 1, "issued_by": "therapist", "issued_on": "2026-11-12", "review_on": review,
    }));
}

fn as_planned(phone: &TestPhone, person: i64) -> Value {
    let answers = [
        ("new", choice("nothing")),
        ("same", choice("as_planned")),
        ("legs", choice("part")),
        ("follows", choice("yes")),
        ("help", choice("steady_only")),
    ];
    walk(phone, person, "bed_to_chair", &answers).0
}

fn row(phone: &TestPhone, person: i64) -> Value {
    phone.ask(json!({"do": "person", "id": person}))["moves"][0].take()
}

/// Days later the worker is asked about themselves again; here nothing hurts.
fn days_later(phone: &TestPhone, days: i64) {
    phone.set_clock_by(Duration::days(days));
    phone.ask(json!({"do": "own_quick"}));
    phone.ask(json!({"do": "trained_set", "equipment": ALL}));
}

#[test]
fn on_its_review_date_it_holds_and_the_day_after_it_unlocks_nothing() {
    let phone = worker("river");
    let person = somebody(&phone, "A7");
    belt_by_plan(&phone, person, Some("2026-11-27"));
    assert_eq!(row(&phone, person)["old"], Value::Null);
    let page = as_planned(&phone, person);
    assert!(ids(&page, "ways").contains(&"stand_pivot_belt"), "{page}");
    assert_eq!(page["card"]["plan_old"], Value::Null);
    days_later(&phone, 2);
    assert!(ids(&as_planned(&phone, person), "ways").contains(&"stand_pivot_belt"));
    days_later(&phone, 1);
    let row = row(&phone, person);
    assert_eq!(row["old"], "Past its date");
    let note = row["note"].as_str().expect("a line");
    assert!(note.ends_with(
        "Past its date (Friday 27 November). What it allows no longer counts. Ask the office for a new one."
    ), "{note}");
    let page = as_planned(&phone, person);
    assert_eq!(
        ids(&page, "ways"),
        ["stand_aid"],
        "the stricter rule is back"
    );
    assert!(ids(&page, "reasons").contains(&"care_plan_old"));
    let said = page["card"]["plan_old"].as_str().expect("a sentence");
    assert!(
        said.starts_with("The care plan is past its date."),
        "{said}"
    );
}

// 180 days, a house rule: from 12 November 2026 until 11 May 2027.
#[test]
fn without_a_review_date_it_holds_for_half_a_year() {
    let phone = worker("brook");
    let person = somebody(&phone, "A7");
    belt_by_plan(&phone, person, None);
    phone.set_clock_by(Duration::days(167));
    assert_eq!(row(&phone, person)["old"], Value::Null, "11 May 2027");
    phone.set_clock_by(Duration::days(1));
    assert_eq!(row(&phone, person)["old"], "Past its date");
}

#[test]
fn a_plan_that_names_only_the_belt_leads_to_the_office_once_it_is_old() {
    let phone = worker("pond");
    let person = somebody(&phone, "A7");
    phone.ask(json!({
        "do": "care_plan_keep", "person": person, "move": "bed_to_chair", "ways": ["stand_pivot_belt"], "workers": 1,
        "issued_by": "therapist", "issued_on": "2026-11-12", "review_on": "2026-11-20",
    }));
    let answers = [
        ("new", choice("nothing")),
        ("same", choice("as_planned")),
        ("legs", choice("part")),
        ("follows", choice("yes")),
        ("help", choice("steady_only")),
        ("here", ticks(&[])),
    ];
    let (page, _, _) = walk(&phone, person, "bed_to_chair", &answers);
    assert_eq!(page["card"]["outcome"], "do_not_lift");
    assert!(!ids(&page, "alternatives").is_empty(), "never a dead end");
    let report = super::report(&phone);
    assert!(report.contains("Past its date"), "{report}");
}

#[test]
fn a_review_before_the_day_on_the_plan_is_no_review() {
    let phone = worker("lake");
    let person = somebody(&phone, "A7");
    let keep = |review: &str| {
        json!({
            "do": "care_plan_keep", "person": person, "move": "car", "ways": ["stand_by"], "workers": null,
            "issued_by": "office", "issued_on": "2026-11-12", "review_on": review,
        })
    };
    for wrong in ["2026-11-11", "soon", "2027-02-30"] {
        assert_eq!(phone.refused(keep(wrong)), "out_of_range at review_on");
    }
    phone.ask(keep("2026-11-12"));
    let plan =
        phone.ask(json!({"do": "care_plan", "person": person, "move": "car"}))["plan"].take();
    assert_eq!(plan["review_on"], "2026-11-12");
}
