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

/// What a phone knows of time.
struct Clock {
    now: DateTime<FixedOffset>,
    uptime: std::time::Duration,
}

/// A clock moved by hand, and random bytes that only count, from another start on every phone: the same test
/// sees the same bytes.
struct TestWorld {
    clock: Arc<Mutex<Clock>>,
    next: AtomicU64,
}

impl World for TestWorld {
    fn now(&self) -> DateTime<FixedOffset> {
        self.clock.lock().expect("the clock").now
    }

    fn uptime(&self) -> std::time::Duration {
        self.clock.lock().expect("the clock").uptime
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
    clock: Arc<Mutex<Clock>>,
    app: Option<App>,
    /// How often the app was started: each start counts its random bytes from another place.
    starts: std::cell::Cell<u64>,
    /// Apps that were killed: never closed, so that nothing is tidied or wiped by them.
    killed: Vec<App>,
}

impl TestPhone {
    /// A phone on which the app was never started, early on [`MORNING`].
    pub(crate) fn new(name: &'static str) -> Self {
        let now = DateTime::parse_from_rfc3339(MORNING).expect("a time");
        let mut phone = Self {
            name,
            folder: tempfile::tempdir().expect("a folder for a test phone"),
            clock: Arc::new(Mutex::new(Clock {
                now,
                uptime: std::time::Duration::from_secs(3600),
            })),
            app: None,
            starts: std::cell::Cell::new(0),
            killed: Vec::new(),
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

    /// A phone whose owner has answered the questions about themselves: nothing to report, 40 to 64, a woman of
    /// 166 cm who passed over how heavy she is.
    pub(crate) fn with_an_owner(name: &'static str) -> Self {
        let phone = Self::set_up(name);
        phone.ask(json!({"do": "walk_start"}));
        phone.answer("signs_full", json!({"choices": []}));
        phone.answer("age", json!({"choice": "40-64"}));
        phone.answer("conditions", json!({"choices": []}));
        phone.answer("fell", json!({"choice": "no"}));
        phone.answer("sex", json!({"choice": "female"}));
        phone.answer("stature", json!({"number": 166, "unit": "cm"}));
        phone.answer("body_mass", json!({"not_sure": true}));
        phone.ask(json!({"do": "walk_drop"}));
        phone
    }

    fn start(&self) -> App {
        self.starts.set(self.starts.get() + 1);
        let world = TestWorld {
            clock: Arc::clone(&self.clock),
            next: AtomicU64::new(first_number(self.name) + (self.starts.get() << 20)),
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
        self.killed.extend(self.app.take());
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
        self.set_clock_by(time);
        self.clock.lock().expect("the clock").uptime += time.to_std().expect("time passes forward");
    }

    /// Sets the clock forward or back; no time passes.
    pub(crate) fn set_clock_by(&self, time: Duration) {
        self.clock.lock().expect("the clock").now += time;
    }

    /// Lets the timer of the shell look whether the app was left alone for too long.
    pub(crate) fn timer(&self) {
        self.app().lock();
    }

    /// A phone of the same name and time, onto which this one's folder was brought as it is now.
    pub(crate) fn copied(&self, name: &'static str) -> Self {
        let copy = Self::new(name);
        copy.set_clock_by(self.now() - copy.now());
        for file in std::fs::read_dir(self.folder()).expect("a folder") {
            let file = file.expect("a file");
            std::fs::copy(file.path(), copy.folder().join(file.file_name())).expect("a copy");
        }
        copy
    }

    /// The time on this phone.
    pub(crate) fn now(&self) -> DateTime<FixedOffset> {
        self.clock.lock().expect("the clock").now
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

/// Where a phone's random bytes begin to count: FNV-1a of its name, with room below for counting.
fn first_number(name: &str) -> u64 {
    let hash = name.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    });
    hash << 32
}
