//! The log and the shift.

use super::{choice, somebody, ticks, walk, worker};
use crate::phone::TestPhone;
use serde_json::{Value, json};

/// A move that is done, standing by. Gives the id of the entry.
pub(super) fn done(phone: &TestPhone, person: i64) -> i64 {
    let answers = [
        ("new", choice("nothing")),
        ("same", choice("as_noted")),
        ("legs", choice("full")),
    ];
    walk(phone, person, "bed_to_chair", &answers);
    let kept = phone.ask(json!({"do": "move_keep", "result": "done", "way": "stand_by"}));
    kept["id"].as_i64().expect("an id")
}

fn refused(phone: &TestPhone, person: i64) -> i64 {
    let dizzy = [("new", choice("in_them")), ("signs", ticks(&["dizzy"]))];
    walk(phone, person, "bed_to_chair", &dizzy);
    let kept = phone.ask(json!({"do": "move_keep", "result": "refused", "told": "copied"}));
    kept["id"].as_i64().expect("an id")
}

fn shift(phone: &TestPhone) -> Value {
    phone.ask(json!({"do": "shift"}))
}

#[test]
fn the_shift_shows_what_leaves_and_is_erased_only_after_it_was_handed_over() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    let id = done(&phone, person);
    phone.ask(json!({"do": "move_more", "id": id, "helped": ["talked", "slower"]}));
    refused(&phone, person);

    let before = shift(&phone);
    let text = before["open"]["text"].as_str().expect("a text");
    for part in [
        "Shift of Wednesday 25 November, from 9:12",
        "9:12 A7, From bed to chair: done. Stand by. What helped: I told them each step; We went slower.",
        "refused, and the office was asked. Text copied for the office.",
        "    New today: Dizzy",
        "Moves: 2. Near misses and refusals: 1",
    ] {
        assert!(text.contains(part), "{part} in:\n{text}");
    }
    let number = before["open"]["id"].clone();
    assert_eq!(
        phone.refused(json!({"do": "shift_erase", "id": number})),
        "contradiction at id"
    );
    let after = phone.ask(json!({"do": "shift_hand_over"}));
    assert_eq!(after["open"], Value::Null);
    assert_eq!(after["last"]["plain"], 1);
    assert_eq!(phone.refused(json!({"do": "shift_hand_over"})), "not_found");

    let erased = phone.ask(json!({"do": "shift_erase", "id": number}));
    assert_eq!(
        (&erased["last"]["plain"], &erased["last"]["proofs"]),
        (&json!(0), &json!(1))
    );
    let left = erased["last"]["text"].as_str().expect("a text");
    assert!(left.contains("refused") && !left.contains("done"), "{left}");
    let erased = phone.ask(json!({"do": "shift_erase", "id": number, "proofs": true}));
    assert_eq!(erased["last"]["entries"], json!([]));
    assert_eq!(
        erased["last"]["erased_text"],
        "Erased: 1. Of these near misses and refusals: 1"
    );
}

#[test]
fn the_last_entry_can_be_taken_back_but_never_a_proof() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    let first = done(&phone, person);
    let second = done(&phone, person);
    let undo = |id: i64| json!({"do": "move_undo", "id": id});
    assert_eq!(
        phone.refused(undo(first)),
        "not_found at id",
        "not the newest"
    );
    phone.ask(undo(second));
    let proof = refused(&phone, person);
    assert_eq!(phone.refused(undo(proof)), "not_found at id");
}

#[test]
fn a_move_that_nearly_went_wrong_becomes_proof_and_stays_it() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    let id = done(&phone, person);
    phone.ask(json!({"do": "move_more", "id": id, "near_miss": true, "signs": ["legs_give"]}));
    let entry = phone.ask(json!({"do": "move_entry", "id": id}));
    assert_eq!(entry["result"], "near_miss");
    assert_eq!(entry["ticked"], json!(["legs_give"]));
    let open = shift(&phone);
    assert_eq!(open["open"]["proofs"], 1);
    phone.ask(json!({"do": "shift_hand_over"}));
    phone.ask(json!({"do": "shift_erase", "id": open["open"]["id"]}));
    assert_eq!(shift(&phone)["last"]["proofs"], 1, "an erase leaves it");
}

#[test]
fn what_the_own_body_said_cannot_be_written_down() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    let id = done(&phone, person);
    let own = json!({"do": "move_more", "id": id, "near_miss": true, "signs": ["own_pain"]});
    assert_eq!(phone.refused(own), "not_a_choice at signs");
    let entry = phone.ask(json!({"do": "move_entry", "id": id}));
    assert!(!entry["signs"].to_string().contains("own_pain"), "{entry}");
}

#[test]
fn only_what_was_offered_can_be_said_to_be_used() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    let answers = [("new", choice("nothing")), ("legs", choice("full"))];
    walk(&phone, person, "bed_to_chair", &answers);
    let keep = |result: &str, way: &str| json!({"do": "move_keep", "result": result, "way": way});
    assert_eq!(
        phone.refused(keep("done", "hoist_two")),
        "not_a_choice at way"
    );
    assert_eq!(
        phone.refused(keep("not_done", "stand_by")),
        "contradiction at way"
    );
    assert_eq!(
        phone.refused(json!({"do": "move_keep", "result": "perhaps"})),
        "not_a_choice at result"
    );
    phone.ask(json!({"do": "move_keep", "result": "near_miss", "signs": ["new_pain"]}));
    assert_eq!(
        phone.refused(json!({"do": "move_keep", "result": "done"})),
        "no_draft"
    );
}

#[test]
fn a_kill_loses_no_entry() {
    let mut phone = worker("willow");
    let person = somebody(&phone, "A7");
    done(&phone, person);
    phone.kill_and_unlock();
    assert_eq!(shift(&phone)["open"]["plain"], 1);
}
