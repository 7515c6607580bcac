//! Walks at random: whatever is answered, opened or killed, every walk comes to an end and nothing fails inside.

use crate::phone::TestPhone;
use serde_json::{Value, json};

/// Numbers that look random and are the same each time (Knuth, MMIX: a linear congruential generator).
struct Dice(u64);

impl Dice {
    fn roll(&mut self, sides: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).unwrap_or(0) % sides.max(1)
    }

    fn one_in(&mut self, sides: usize) -> bool {
        self.roll(sides) == 0
    }
}

/// Any answer that the page offers.
fn any_answer(dice: &mut Dice, question: &Value) -> Value {
    let options: Vec<&str> = question["options"]
        .as_array()
        .expect("options")
        .iter()
        .filter_map(|option| option["id"].as_str())
        .collect();
    if question["not_sure"] == true && dice.one_in(8) {
        return json!({"not_sure": true});
    }
    match question["kind"].as_str().expect("a kind") {
        "choice" => json!({"choice": options[dice.roll(options.len())]}),
        // Mostly none, or nearly every walk would end at a sign.
        "choices" if !dice.one_in(6) => json!({"choices": []}),
        "choices" => json!({"choices": [options[dice.roll(options.len())]]}),
        "pain" => json!({"pain": dice.roll(11)}),
        _ => {
            let number = &question["number"];
            let most = number["max"].as_f64().expect("a number");
            let least = number["min"].as_f64().expect("a number");
            let share = f64::from(u32::try_from(dice.roll(101)).expect("small")) / 100.0;
            let value = (least + (most - least) * share * share)
                .round()
                .clamp(least, most);
            json!({"number": value, "unit": number["unit"]})
        }
    }
}

/// Walks at random from the start to an end; gives how many pages were met.
fn walk_at_random(phone: &mut TestPhone, dice: &mut Dice) -> usize {
    let mut page = phone.ask(json!({"do": "walk_start"}));
    for met in 0..200 {
        if dice.one_in(12) {
            phone.kill_and_unlock();
            assert_eq!(
                phone.ask(json!({"do": "walk_page"})),
                page,
                "killed and opened again"
            );
        }
        let back = page["back"].as_str().map(str::to_owned);
        page = match page["page"].as_str().expect("a page") {
            "question" | "interruption" if back.is_some() && dice.one_in(10) => {
                phone.ask(json!({"do": "walk_page", "question": back}))
            }
            "question" => {
                let id = page["question"]["id"].as_str().expect("an id").to_owned();
                let answer = any_answer(dice, &page["question"]);
                phone.answer(&id, answer)
            }
            "interruption" => {
                let id = page["id"].as_str().expect("an id").to_owned();
                phone.answer(&id, json!({"choice": "go_on"}))
            }
            "check" => phone.ask(json!({"do": "walk_confirm"})),
            "refuse" if back.is_some() => {
                // Not sure about a sign: go back, look again, tick none.
                let list = phone.ask(json!({"do": "walk_page", "question": back}));
                let id = list["question"]["id"].as_str().expect("an id").to_owned();
                phone.answer(&id, json!({"choices": []}))
            }
            _ => return met,
        };
    }
    panic!("a walk of 200 pages");
}

#[test]
fn every_walk_comes_to_an_end() {
    let mut phone = TestPhone::set_up("orchard");
    let mut dice = Dice(2026);
    let mut outcomes = std::collections::BTreeSet::new();
    for _ in 0..40 {
        walk_at_random(&mut phone, &mut dice);
        let home = phone.ask(json!({"do": "home"}));
        if home["draft"].is_null() {
            outcomes.insert("no draft".to_owned());
            continue;
        }
        let page = phone.ask(json!({"do": "walk_page"}));
        outcomes.insert(
            page["card"]["outcome"]
                .as_str()
                .expect("an outcome")
                .to_owned(),
        );
        let done = page["card"]["outcome"] == "lift";
        phone.ask(json!({"do": "lift_keep", "done": done}));
        for sign in home["open_sign"]["signs"].as_array().into_iter().flatten() {
            phone.ask(json!({"do": "sign_clear", "sign": sign["id"], "by": "clinician"}));
        }
        phone.later(40);
    }
    assert!(outcomes.len() >= 4, "the walks led to {outcomes:?} only");
    let history = phone.ask(json!({"do": "history", "limit": 100}));
    for entry in history["entries"].as_array().expect("entries") {
        phone.ask(json!({"do": "history_entry", "id": entry["id"]}));
    }
}
