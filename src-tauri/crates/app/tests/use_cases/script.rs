//! Whole walks by script: what is answered to each question, how many taps it took, where it led.

use crate::phone::TestPhone;
use serde_json::{Value, json};

/// Answers for a whole walk, by question. What is not named is answered as on an ordinary day.
pub(crate) struct Script(Vec<(&'static str, Value)>);

impl Script {
    /// An ordinary day: a box of 6 kg from the floor, once; a back that aches a little.
    pub(crate) fn ordinary() -> Self {
        Self(vec![
            ("signs_today", json!({"choice": "no"})),
            ("signs_full", json!({"choices": []})),
            ("age", json!({"choice": "40-64"})),
            ("conditions", json!({"choices": []})),
            ("fell", json!({"choice": "no"})),
            ("sex", json!({"choice": "female"})),
            ("stature", json!({"number": 166, "unit": "cm"})),
            ("body_mass", json!({"not_sure": true})),
            ("what", json!({"choice": "box"})),
            ("mass", json!({"choice": "six_pack"})),
            ("start", json!({"choice": "floor"})),
            ("reach", json!({"choice": "close"})),
            ("often", json!({"choice": "once"})),
            ("back", json!({"pain": 3})),
            ("back_state", json!({"choice": "steady"})),
            ("signs_flare", json!({"choices": []})),
            ("knee_left", json!({"pain": 0})),
            ("knee_right", json!({"pain": 1})),
            ("other", json!({"choices": []})),
            ("balance", json!({"choice": "good"})),
            ("kneel", json!({"choice": "yes"})),
        ])
    }

    /// The same with one answer of its own.
    pub(crate) fn but(mut self, question: &'static str, answer: Value) -> Self {
        self.0.retain(|(other, _)| *other != question);
        self.0.push((question, answer));
        self
    }

    /// The answer to a question.
    pub(crate) fn answer_to(&self, question: &str) -> &Value {
        let found = self.0.iter().find(|(other, _)| *other == question);
        &found
            .unwrap_or_else(|| panic!("the script has no answer to {question}"))
            .1
    }
}

/// What a walk took and what it led to.
pub(crate) struct Walked {
    /// Taps from the start button to the page it led to.
    pub(crate) taps: usize,
    /// The questions and interruptions met, in order.
    pub(crate) met: Vec<String>,
    /// The page it led to: the advice, or whatever ended it.
    pub(crate) page: Value,
}

impl TestPhone {
    /// Walks from the start button to the advice, answering by the script.
    #[track_caller]
    pub(crate) fn walk(&self, script: &Script, saved: Option<i64>) -> Walked {
        let page = self.ask(json!({"do": "walk_start", "saved": saved}));
        self.walk_on(page, script)
    }

    /// Walks on from a page to the advice.
    #[track_caller]
    pub(crate) fn walk_on(&self, mut page: Value, script: &Script) -> Walked {
        let mut walked = Walked {
            taps: 1,
            met: Vec::new(),
            page: Value::Null,
        };
        loop {
            match page["page"].as_str() {
                Some("question") => {
                    let id = page["question"]["id"].as_str().expect("an id").to_owned();
                    let answer = script.answer_to(&id);
                    walked.taps += taps_of(answer);
                    page = self.answer(&id, answer.clone());
                    walked.met.push(id);
                }
                Some("interruption") => {
                    let id = page["id"].as_str().expect("an id").to_owned();
                    walked.taps += 1;
                    page = self.answer(&id, json!({"choice": "go_on"}));
                    walked.met.push(id);
                }
                Some("check") => {
                    walked.taps += 1;
                    page = self.ask(json!({"do": "walk_confirm"}));
                }
                _ => {
                    walked.page = page;
                    return walked;
                }
            }
        }
    }

    /// Walks to the advice and keeps the lift as done in the first way offered. Gives its id.
    #[track_caller]
    pub(crate) fn lift(&self, script: &Script) -> i64 {
        let walked = self.walk(script, None);
        let way = &walked.page["card"]["ways"][0]["way"];
        assert!(
            way.is_string(),
            "no way was offered: {}",
            walked.page["card"]["headline"]
        );
        let kept = self.ask(json!({"do": "lift_keep", "done": true, "way": way}));
        kept["id"].as_i64().expect("an id")
    }
}

/// Taps for an answer: one for a choice or a pain score, one for each box ticked and one to go on.
fn taps_of(answer: &Value) -> usize {
    answer["choices"]
        .as_array()
        .map_or(1, |ticked| ticked.len() + 1)
}

/// Ids of the questions that a walk meets, from first to last.
pub(crate) fn met(phone: &TestPhone, script: &Script) -> Vec<String> {
    phone.walk(script, None).met
}

/// Walks until the page with this question is open.
#[track_caller]
pub(crate) fn up_to(phone: &TestPhone, question: &str) -> Value {
    let script = Script::ordinary();
    let mut page = phone.ask(json!({"do": "walk_start"}));
    while page["question"]["id"] != question {
        let id = page["question"]["id"]
            .as_str()
            .expect("a question")
            .to_owned();
        page = phone.answer(&id, script.answer_to(&id).clone());
    }
    page
}
