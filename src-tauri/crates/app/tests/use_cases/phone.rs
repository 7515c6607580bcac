//! Test phones: an app in a folder of its own, with a clock that is moved by hand.
#![allow(
    dead_code,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "shared by test binaries, each of which uses its own share; a test may stop at the first surprise"
)]

use app::{App, RandomnessError, World};
use chrono::{DateTime, Duration, FixedOffset};
use serde_json::{Value, json};
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, Mutex};
use tempfile::TempDir;
use vault::Cost;

/// A passphrase for every test phone.
pub(crate) const PASSPHRASE: &str = "seven wet pears in a row";

/// The morning on which most examples begin: a Wednesday.
pub(crate) const MORNING: &str = "2026-11-25T09:12:00+01:00";

/// A clock moved by hand, and random bytes that only count: the same test sees the same bytes.
struct TestWorld {
    now: Arc<Mutex<DateTime<FixedOffset>>>,
    next: AtomicU64,
}

impl World for TestWorld {
    fn now(&self) -> DateTime<FixedOffset> {
        *self
            .now
            .lock()
            .expect("nobody panicked with the clock in hand")
    }

    fn fill_random(&self, bytes: &mut [u8]) -> Result<(), RandomnessError> {
        for chunk in bytes.chunks_mut(8) {
            let number = self.next.fetch_add(1, Ordering::Relaxed).to_le_bytes();
            chunk.copy_from_slice(&number[..chunk.len()]);
        }
        Ok(())
    }
}

/// A phone with the app on it.
pub(crate) struct TestPhone {
    name: &'static str,
    folder: TempDir,
    clock: Arc<Mutex<DateTime<FixedOffset>>>,
    app: Option<App>,
}

impl TestPhone {
    /// A phone on which the app was never started, early on [`MORNING`].
    pub(crate) fn new(name: &'static str) -> Self {
        let now = DateTime::parse_from_rfc3339(MORNING).expect("a time");
        let mut phone = Self {
            name,
            folder: tempfile::tempdir().expect("a folder for a test phone"),
            clock: Arc::new(Mutex::new(now)),
            app: None,
        };
        phone.app = Some(phone.start());
        phone
    }

    /// A phone after its first start, used for lifting, in kilograms.
    pub(crate) fn set_up(name: &'static str) -> Self {
        let phone = Self::new(name);
        phone.ask(json!({
            "do": "first_start", "use": "lift", "units": "kg",
            "passphrase": PASSPHRASE, "again": PASSPHRASE,
        }));
        phone
    }

    /// A phone whose owner has answered the questions about themselves: nothing to report, 40 to 64.
    pub(crate) fn with_an_owner(name: &'static str) -> Self {
        let phone = Self::set_up(name);
        phone.ask(json!({"do": "walk_start"}));
        phone.answer("signs_full", json!({"choices": []}));
        phone.answer("age", json!({"choice": "40-64"}));
        phone.answer("conditions", json!({"choices": []}));
        phone.answer("fell", json!({"choice": "no"}));
        phone.ask(json!({"do": "walk_drop"}));
        phone
    }

    fn start(&self) -> App {
        let world = TestWorld {
            now: Arc::clone(&self.clock),
            next: AtomicU64::new(1),
        };
        App::open_at_cost(self.folder.path(), Box::new(world), Cost::FLOOR)
            .expect("a folder of one's own can be opened")
    }

    /// Sends a line as it is and gives the reply as it is.
    pub(crate) fn line(&self, line: &str) -> String {
        self.app().answer(line)
    }

    /// Sends a command and gives what is in `ok`.
    #[track_caller]
    pub(crate) fn ask(&self, command: Value) -> Value {
        let mut reply = self.reply(command.clone());
        match reply.get_mut("ok") {
            Some(ok) => ok.take(),
            None => panic!("{}: {command} was refused: {reply}", self.name),
        }
    }

    /// Sends a command that must fail, and gives its code and field as `code` or `code at field`.
    #[track_caller]
    pub(crate) fn refused(&self, command: Value) -> String {
        let reply = self.reply(command.clone());
        let error = reply
            .get("error")
            .unwrap_or_else(|| panic!("{command} was not refused: {reply}"));
        let code = error["code"].as_str().expect("a code");
        assert!(!error["message"].as_str().expect("a sentence").is_empty());
        match error["field"].as_str() {
            Some(field) => format!("{code} at {field}"),
            None => code.to_owned(),
        }
    }

    fn reply(&self, command: Value) -> Value {
        let line = self.line(&command.to_string());
        assert!(!line.contains('\n'), "one line in, one line out");
        serde_json::from_str(&line).expect("a reply is JSON")
    }

    /// Answers a question of the walk; gives the next page.
    #[track_caller]
    pub(crate) fn answer(&self, question: &str, answer: Value) -> Value {
        self.ask(json!({"do": "walk_answer", "question": question, "answer": answer}))
    }

    /// Kills the app and starts it again. Nothing is locked or tidied first.
    pub(crate) fn kill_and_start(&mut self) {
        drop(self.app.take());
        self.app = Some(self.start());
    }

    /// Kills the app, starts it again and unlocks it.
    pub(crate) fn kill_and_unlock(&mut self) {
        self.kill_and_start();
        self.unlock();
    }

    /// Unlocks the app.
    #[track_caller]
    pub(crate) fn unlock(&self) {
        self.ask(json!({"do": "unlock", "passphrase": PASSPHRASE}));
    }

    /// Lets time pass; after a while without a command the app locks itself, so it is unlocked again.
    #[track_caller]
    pub(crate) fn later(&self, minutes: i64) {
        self.wait(Duration::minutes(minutes));
        if self.ask(json!({"do": "hello"}))["locked"] == true {
            self.unlock();
        }
    }

    /// Lets time pass and does nothing.
    pub(crate) fn wait(&self, time: Duration) {
        let mut now = self.clock.lock().expect("the clock");
        *now += time;
    }

    /// Lets the timer of the shell look whether the app was left alone for too long.
    pub(crate) fn timer(&self) {
        self.app().lock();
    }

    /// The app itself.
    pub(crate) fn app(&self) -> &App {
        self.app.as_ref().expect("the app is running")
    }

    /// The folder of the app.
    pub(crate) fn folder(&self) -> &std::path::Path {
        self.folder.path()
    }
}

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
