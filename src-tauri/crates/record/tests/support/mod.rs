//! Sample records, the same ones that `frozen/make_frozen.py` encodes. Everything here is invented.
#![allow(dead_code, reason = "each test file uses its own share")]
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

pub(crate) mod any;
pub(crate) mod care;
pub(crate) mod handoff;

use record::*;

pub(crate) const NOON: Moment = Moment {
    at_ms: 1_795_594_320_000,
    offset_min: 60,
};
const EPOCH: Moment = Moment {
    at_ms: 0,
    offset_min: 0,
};

pub(crate) fn task() -> Task {
    Task {
        what: text("box"),
        mass: Some(Mass::Untested {
            low_grams: 3_000,
            high_grams: 12_000,
        }),
        awkward: Some(true),
        start: Some(HeightWord::Floor),
        start_mm: Some(0),
        end: Some(HeightWord::Waist),
        end_mm: Some(950),
        reach: Some(ReachWord::Far),
        reach_mm: Some(630),
        twist_deg: Some(45),
        carry_mm: Some(2_000),
        reps: Some(12),
        span_min: Some(60),
        helpers: Some(1),
        helper_max_g: Some(vec![16_000]),
        two_hands: Some(true),
        width_mm: Some(400),
        depth_mm: Some(300),
        divisible: Some(false),
        coupling: Some(Coupling::Poor),
        often: text("some_slow"),
    }
}

pub(crate) fn body() -> BodyToday {
    BodyToday {
        at: NOON,
        back: Pain::new(8),
        back_state: Some(BackState::Volatile),
        knee_left: Pain::new(0),
        knee_right: Pain::new(10),
        hip_left: Pain::new(1),
        hip_right: Pain::new(2),
        shoulders: Pain::new(3),
        balance: Some(Balance::Unknown),
        kneel: Some(Kneel::OneSide),
        signs: Some(vec!["night_pain".to_owned()]),
    }
}

pub(crate) fn body_nothing_asked(at: Moment) -> BodyToday {
    BodyToday {
        at,
        back: None,
        back_state: None,
        knee_left: None,
        knee_right: None,
        hip_left: None,
        hip_right: None,
        shoulders: None,
        balance: None,
        kneel: None,
        signs: None,
    }
}

pub(crate) fn about() -> About {
    let moment = |at_ms| {
        Some(Moment {
            at_ms,
            offset_min: 0,
        })
    };
    About {
        age: Some(AgeBand::From65To79),
        sex: Some(Sex::Female),
        stature_mm: Some(1_650),
        mass_g: Some(70_000),
        conditions: Some(vec!["osteoporosis".to_owned()]),
        pregnancy_weeks: Some(20),
        weeks_since_surgery: Some(8),
        fell_last_year: Some(true),
        asked_at: moment(1),
        signs_asked_at: moment(2),
        fell_asked_at: moment(3),
    }
}

pub(crate) fn settings() -> Settings {
    Settings {
        used_for: UsedFor::Treat,
        units: Units::Lb,
    }
}

pub(crate) fn advice() -> Advice {
    Advice {
        outcome: Outcome::LiftWithChange,
        urgency: Urgency::None,
        ways: vec![Way::Squat, Way::Lunge],
        ruled_out: vec![RuledOut {
            way: Way::Hinge,
            because: vec!["back_severe".to_owned()],
        }],
        cautions: vec!["keep_close".to_owned(), "no_twist".to_owned()],
        changes: vec![
            Change {
                kind: "raise_start".to_owned(),
                args: vec![integer("to_mm", 500)],
                ways: vec![Way::Hinge, Way::Squat],
                steps: Vec::new(),
            },
            Change {
                kind: "split_and_raise".to_owned(),
                args: Vec::new(),
                ways: vec![Way::Squat],
                steps: vec![ChangeStep {
                    kind: "split".to_owned(),
                    args: vec![integer("parts", 2)],
                }],
            },
        ],
        alternatives: vec!["ask_person".to_owned()],
        reasons: vec![
            Reason {
                id: "back_severe".to_owned(),
                step: 5,
                authority: Authority::Today,
                sure: Sure::House,
                source: "house_rule".to_owned(),
                args: vec![
                    integer("pain", 8),
                    Arg {
                        name: "region".to_owned(),
                        value: Value::Text("back".to_owned()),
                    },
                ],
            },
            Reason {
                id: "under".to_owned(),
                step: 4,
                authority: Authority::Practice,
                sure: Sure::Published,
                source: "niosh_94_110".to_owned(),
                args: vec![integer("margin_g", -250)],
            },
        ],
        heaviest_g: Some(6_000),
        limit: Some(TaskLimit {
            recommended_g: 11_400,
            index_thousandths: Some(526),
        }),
        rule_version: "0.1.0".to_owned(),
    }
}

pub(crate) fn spare_advice() -> Advice {
    Advice {
        outcome: Outcome::Refuse,
        urgency: Urgency::None,
        ways: Vec::new(),
        ruled_out: Vec::new(),
        cautions: Vec::new(),
        changes: Vec::new(),
        alternatives: Vec::new(),
        reasons: Vec::new(),
        heaviest_g: None,
        limit: None,
        rule_version: "0.1.0".to_owned(),
    }
}

pub(crate) fn lift_done() -> Lift {
    Lift {
        at: NOON,
        title: "Caja, 6,5 kg".to_owned(),
        task: task(),
        body: body(),
        advice: advice(),
        done: true,
        way: Some(Way::Squat),
        instead: None,
    }
}

pub(crate) fn lift_left() -> Lift {
    Lift {
        at: NOON,
        title: "Box".to_owned(),
        task: Task::default(),
        body: body_nothing_asked(EPOCH),
        advice: spare_advice(),
        done: false,
        way: None,
        instead: text("ask_person"),
    }
}

pub(crate) fn check_in_told() -> CheckIn {
    CheckIn {
        kind: CheckInKind::NextMorning,
        at: NOON,
        pain: Pain::new(2),
        back_to_usual: Some(BackToUsual::Yes),
        skipped: false,
    }
}

pub(crate) fn check_in_skipped() -> CheckIn {
    CheckIn {
        kind: CheckInKind::After,
        at: NOON,
        pain: None,
        back_to_usual: None,
        skipped: true,
    }
}

pub(crate) fn draft() -> Draft {
    let choices = |ids: &[&str]| Answer::Choices(ids.iter().map(|&id| id.to_owned()).collect());
    Draft {
        opened_at: NOON,
        purpose: DraftPurpose::Lift,
        answers: vec![
            answered("what", Answer::Choice("box".to_owned())),
            answered("other", choices(&["hip_left", "shoulders"])),
            answered("signs_full", choices(&[])),
            answered("back", Answer::Pain(Pain::new(8).unwrap())),
            answered(
                "mass_number",
                Answer::Number {
                    thousandths: 6_500,
                    unit: Unit::Kg,
                },
            ),
            answered("reach", Answer::NotSure),
        ],
        saved_task: Some(7),
        advice: Some(spare_advice()),
        open_question: text("often"),
    }
}

pub(crate) fn draft_empty() -> Draft {
    Draft {
        opened_at: EPOCH,
        purpose: DraftPurpose::About,
        answers: Vec::new(),
        saved_task: None,
        advice: None,
        open_question: None,
    }
}

pub(crate) fn sign(cleared: Option<Cleared>) -> OpenSign {
    OpenSign {
        sign: "fever_unwell".to_owned(),
        raised_at: NOON,
        cleared,
    }
}

pub(crate) fn cleared_next_day() -> Cleared {
    Cleared {
        at: Moment {
            at_ms: 1_795_680_720_000,
            offset_min: 60,
        },
        by: ClearedBy::Clinician,
    }
}

pub(crate) fn saved_task() -> SavedTask {
    SavedTask {
        name: "Laundry basket".to_owned(),
        task: task(),
        answers: vec![answered("what", Answer::Choice("basket".to_owned()))],
    }
}

pub(crate) fn answered(question: &str, answer: Answer) -> Answered {
    Answered {
        question: question.to_owned(),
        answer,
    }
}

fn integer(name: &str, value: i64) -> Arg {
    Arg {
        name: name.to_owned(),
        value: Value::Integer(value),
    }
}

fn text(text: &str) -> Option<String> {
    Some(text.to_owned())
}
