//! A vault in a folder of its own, and records to put in it. Everything here is invented.
#![allow(dead_code, reason = "each test file uses its own share")]
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

pub(crate) mod handing;

use std::path::PathBuf;

use record::{
    Advice, Answer, Answered, Arg, Authority, BackState, Balance, BodyToday, CheckIn, CheckInKind,
    Draft, DraftPurpose, HeightWord, Kneel, Lift, Mass, Moment, OpenSign, Outcome, Pain, ReachWord,
    Reason, RuledOut, SavedTask, Sure, Task, Urgency, Value, Way,
};
use tempfile::TempDir;
use vault::{Cost, Folder, NoRandomness, Passphrase, Vault};

/// Text that must never be found on the disk.
pub(crate) const MARKER: &str = "quillet-marker-7f3a";

/// A folder that goes away with the test.
pub(crate) struct Place {
    _kept: TempDir,
    pub(crate) folder: Folder,
}

impl Place {
    pub(crate) fn new() -> Self {
        let kept = tempfile::tempdir().unwrap();
        let folder = Folder::new(kept.path().join("vault"));
        Self {
            _kept: kept,
            folder,
        }
    }

    pub(crate) fn file(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    /// A vault at the lowest cost, to keep tests quick.
    pub(crate) fn create(&self) -> Vault {
        self.create_again().unwrap()
    }

    /// As [`create`](Self::create), where that may fail.
    pub(crate) fn create_again(&self) -> Result<Vault, vault::VaultError> {
        Vault::create_at_cost(&self.folder, &passphrase(), Cost::FLOOR, &mut random)
    }

    pub(crate) fn open(&self) -> Result<Vault, vault::VaultError> {
        Vault::open(&self.folder, &passphrase())
    }
}

pub(crate) fn passphrase() -> Passphrase {
    Passphrase::new("a river under old snow".to_owned())
}

/// The operating system's randomness.
#[allow(clippy::disallowed_methods, reason = "stands in for the app's World")]
pub(crate) fn random(bytes: &mut [u8]) -> Result<(), NoRandomness> {
    getrandom::fill(bytes).map_err(|_| NoRandomness)
}

pub(crate) fn at(at_ms: i64) -> Moment {
    Moment {
        at_ms,
        offset_min: 60,
    }
}

pub(crate) fn lift(title: &str) -> Lift {
    Lift {
        at: at(1_795_594_320_000),
        title: title.to_owned(),
        task: task(),
        body: body(),
        advice: advice(),
        done: true,
        way: Some(Way::Squat),
        instead: None,
    }
}

pub(crate) fn left(title: &str) -> Lift {
    Lift {
        done: false,
        way: None,
        instead: Some("ask_person".to_owned()),
        ..lift(title)
    }
}

pub(crate) fn task() -> Task {
    Task {
        what: Some("box".to_owned()),
        mass: Some(Mass::Known { grams: 6_000 }),
        start: Some(HeightWord::Floor),
        reach: Some(ReachWord::Close),
        reps: Some(1),
        ..Task::default()
    }
}

pub(crate) fn body() -> BodyToday {
    BodyToday {
        at: at(1_795_594_300_000),
        back: Pain::new(8),
        back_state: Some(BackState::Volatile),
        knee_left: Pain::new(0),
        knee_right: Pain::new(1),
        hip_left: None,
        hip_right: None,
        shoulders: None,
        balance: Some(Balance::Good),
        kneel: Some(Kneel::Yes),
        signs: Some(Vec::new()),
    }
}

pub(crate) fn advice() -> Advice {
    Advice {
        outcome: Outcome::Lift,
        urgency: Urgency::None,
        ways: vec![Way::Squat, Way::Lunge],
        ruled_out: vec![RuledOut {
            way: Way::Hinge,
            because: vec!["back_severe".to_owned()],
        }],
        cautions: vec!["keep_close".to_owned()],
        changes: Vec::new(),
        alternatives: vec!["ask_person".to_owned()],
        reasons: vec![Reason {
            id: "back_severe".to_owned(),
            step: 5,
            authority: Authority::Today,
            sure: Sure::House,
            source: "house_rule".to_owned(),
            args: vec![Arg {
                name: "pain".to_owned(),
                value: Value::Integer(8),
            }],
        }],
        heaviest_g: None,
        limit: None,
        rule_version: "0.1.0".to_owned(),
    }
}

pub(crate) fn check_in(kind: CheckInKind, pain: u8) -> CheckIn {
    CheckIn {
        kind,
        at: at(1_795_594_400_000),
        pain: Pain::new(pain),
        back_to_usual: None,
        skipped: false,
    }
}

pub(crate) fn draft(answer: &str) -> Draft {
    Draft {
        opened_at: at(1_795_594_000_000),
        purpose: DraftPurpose::Lift,
        answers: answers(answer),
        saved_task: None,
        advice: None,
        open_question: None,
    }
}

pub(crate) fn saved(name: &str) -> SavedTask {
    SavedTask {
        name: name.to_owned(),
        task: task(),
        answers: answers("box"),
    }
}

fn answers(answer: &str) -> Vec<Answered> {
    vec![Answered {
        question: "what".to_owned(),
        answer: Answer::Choice(answer.to_owned()),
    }]
}

pub(crate) fn sign(id: &str, raised_at: Moment) -> OpenSign {
    OpenSign {
        sign: id.to_owned(),
        raised_at,
        cleared: None,
    }
}
