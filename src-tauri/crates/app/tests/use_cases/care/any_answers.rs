//! Whatever is answered, the walk ends in an answer; nothing is offered that is not there or not trained on; and
//! no text has a hole.

use super::{ids, report, somebody, worker};
use serde_json::{Value, json};

/// Numbers that look thrown but are the same each time (a linear congruential generator; Numerical Recipes).
struct Thrown(u32);

impl Thrown {
    fn below(&mut self, count: usize) -> usize {
        self.0 = self.0.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        (self.0 >> 8) as usize % count
    }
}

const MOVES: [&str; 18] = [
    "bed_to_chair",
    "chair_to_bed",
    "chair_to_toilet",
    "toilet_to_chair",
    "chair_to_chair",
    "chair_to_wheelchair",
    "car",
    "up_in_bed",
    "turn_in_bed",
    "sit_up",
    "up_in_chair",
    "lateral",
    "floor_to_chair",
    "hold_limb",
    "stockings",
    "shoes",
    "wash_low",
    "catch",
];

const TRAINED: [&str; 3] = ["hoist", "belt", "slide_sheet"];
const NEEDS_NONE: [&str; 3] = ["removable_arm_chair", "foot_stool", "adjustable_bed"];

/// One of the answers a question offers. What is new is mostly nothing, so that most walks go to their end.
fn any_answer(question: &Value, thrown: &mut Thrown) -> Value {
    let options = question["options"].as_array().expect("options");
    let id = |at: usize| options[at]["id"].as_str().expect("an id").to_owned();
    if question["id"] == "new" && thrown.below(10) > 0 {
        return json!({"choice": "nothing"});
    }
    if question["id"] == "unhurt" && thrown.below(4) > 0 {
        return json!({"choice": "unhurt"});
    }
    if question["kind"] == "choices" {
        let ticked: Vec<String> = (0..options.len())
            .filter(|_| thrown.below(3) == 0)
            .map(id)
            .collect();
        return json!({ "choices": ticked });
    }
    if question["not_sure"] == true && thrown.below(6) == 0 {
        return json!({"not_sure": true});
    }
    json!({"choice": id(thrown.below(options.len()))})
}

#[test]
fn any_walk_ends_and_offers_only_what_is_there_and_trained_on() {
    let phone = worker("willow");
    phone.ask(json!({"do": "trained_set", "equipment": TRAINED}));
    let mut thrown = Thrown(20_261_125);
    let mut offered = 0;
    for round in 0..20 {
        let person = somebody(&phone, &format!("R{round}"));
        for what in MOVES {
            let mut page = phone.ask(json!({"do": "move_start", "person": person, "move": what}));
            let mut pages = 0;
            while page["page"] == "question" {
                pages += 1;
                assert!(pages <= 12, "{what} does not end: {page}");
                let question = &page["question"];
                let answer = any_answer(question, &mut thrown);
                let id = question["id"].clone();
                page = phone.ask(json!({"do": "move_answer", "question": id, "answer": answer}));
            }
            if page["page"] == "own" {
                assert_eq!(page["sign"], true, "the worker has told about today");
                continue;
            }
            let text = page.to_string();
            for hole in ["[care-", "[reason-", "[move-", "[way-", "{ $", "{$"] {
                assert!(!text.contains(hole), "{hole} in {text}");
            }
            let ways = page["card"]["ways"].as_array().expect("ways");
            offered += ways.len();
            for way in ways {
                for piece in way["equipment"].as_array().expect("equipment") {
                    let id = piece["id"].as_str().expect("an id");
                    assert!(TRAINED.contains(&id) || NEEDS_NONE.contains(&id), "{id}");
                }
                assert!(what != "floor_to_chair" || way["way"] != "manual_lift");
            }
            assert_eq!(ways.is_empty(), page["card"]["outcome"] != "lift");
            assert_eq!(ways.is_empty(), ids(&page, "stop_signs").is_empty());
            let told = report(&phone);
            assert!(told.lines().count() >= 3 && !told.contains('['), "{told}");
            assert!(!told.to_lowercase().contains("your"), "{told}");
        }
    }
    assert!(
        offered > 30,
        "only {offered} ways were offered: the walks say little"
    );
}
