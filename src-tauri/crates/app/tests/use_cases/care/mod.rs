//! Helping others move, told as stories. Everybody in them is invented.

mod any_answers;
mod ends;
mod leaving;
mod log;
mod old_plan;
mod own;
mod parcels;
mod people;
mod stories;
mod vectors;

use crate::phone::TestPhone;
use serde_json::{Value, json};

/// Everything that a worker can be trained on.
const ALL: [&str; 8] = [
    "hoist",
    "stand_aid",
    "belt",
    "slide_board",
    "slide_sheet",
    "lateral_aid",
    "car_hoist",
    "limb_sling",
];

/// The phone of a home-care worker: about them is told, nothing hurts today, and they are trained on everything.
fn worker(name: &'static str) -> TestPhone {
    let phone = TestPhone::with_an_owner(name);
    phone.ask(json!({"do": "own_quick"}));
    phone.ask(json!({"do": "trained_set", "equipment": ALL}));
    phone
}

/// Writes a person down; gives the id.
fn somebody(phone: &TestPhone, code: &str) -> i64 {
    let kept = phone.ask(json!({"do": "person_keep", "code": code, "picture": "kettle"}));
    kept["id"].as_i64().expect("an id")
}

/// Types a plan in from paper.
fn plan(phone: &TestPhone, person: i64, what: &str, ways: &[&str], workers: Option<u32>) {
    phone.ask(json!({
        "do": "care_plan_keep", "person": person, "move": what, "ways": ways, "workers": workers,
        "issued_by": "office", "issued_on": "2026-11-12",
    }));
}

/// Walks from the person's page to the answer; gives it with the questions met and the taps it took: one for
/// the move, one for each choice, one for each tick and one to go on.
fn walk(
    phone: &TestPhone,
    person: i64,
    what: &str,
    answers: &[(&str, Value)],
) -> (Value, Vec<String>, usize) {
    let mut page = phone.ask(json!({"do": "move_start", "person": person, "move": what}));
    let mut met = Vec::new();
    let mut taps = 1;
    while page["page"] == "question" {
        let id = page["question"]["id"].as_str().expect("an id").to_owned();
        let Some((_, answer)) = answers.iter().find(|(known, _)| *known == id) else {
            panic!("no answer to {id}: {page}");
        };
        taps += answer["choices"]
            .as_array()
            .map_or(1, |ticked| ticked.len() + 1);
        page = phone.ask(json!({"do": "move_answer", "question": id, "answer": answer}));
        met.push(id);
    }
    (page, met, taps)
}

fn choice(id: &str) -> Value {
    json!({ "choice": id })
}

fn ticks(ids: &[&str]) -> Value {
    json!({ "choices": ids })
}

/// The ids in a list of a card.
fn ids<'a>(card: &'a Value, list: &str) -> Vec<&'a str> {
    let key = if list == "ways" { "way" } else { "id" };
    let list = card["card"][list].as_array().expect("a list");
    list.iter()
        .map(|one| one[key].as_str().expect("an id"))
        .collect()
}

/// The text for the office.
fn report(phone: &TestPhone) -> String {
    let report = phone.ask(json!({"do": "move_report"}));
    report["text"].as_str().expect("a text").to_owned()
}
