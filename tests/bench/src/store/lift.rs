//! Invented lifts of about the size of real ones.

use record::{
    Advice, Arg, Authority, BackState, Balance, BodyToday, HeightWord, Kneel, Lift, Mass, Moment,
    Outcome, Pain, ReachWord, Reason, RuledOut, Sure, Task, Urgency, Value, Way,
};

/// The lift with this running number, one every ten minutes.
pub(crate) fn numbered(number: i64) -> Lift {
    let at = Moment {
        at_ms: 1_700_000_000_000 + number * 600_000,
        offset_min: 60,
    };
    let done = number % 5 != 0;
    Lift {
        at,
        title: format!("Box {}, from the floor", number % 17),
        task: Task {
            what: Some("box".to_owned()),
            mass: Some(Mass::Known { grams: 6_000 }),
            start: Some(HeightWord::Floor),
            reach: Some(ReachWord::Close),
            reps: Some(1),
            ..Task::default()
        },
        body: BodyToday {
            at,
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
        },
        advice: advice(),
        done,
        way: done.then_some(Way::Squat),
        instead: (!done).then(|| "ask_person".to_owned()),
    }
}

fn advice() -> Advice {
    let words = |all: &[&str]| all.iter().map(|&word| word.to_owned()).collect();
    Advice {
        outcome: Outcome::Lift,
        urgency: Urgency::None,
        ways: vec![Way::Squat, Way::Lunge],
        ruled_out: [Way::Hinge, Way::FreeBend, Way::Golfer]
            .map(|way| RuledOut {
                way,
                because: words(&["back_severe"]),
            })
            .into(),
        cautions: words(&["keep_close", "stop_if_worse", "no_twist"]),
        changes: Vec::new(),
        alternatives: words(&["ask_person", "use_aid", "leave_it"]),
        reasons: ["back_severe", "back_volatile", "variety"]
            .map(|id| Reason {
                id: id.to_owned(),
                step: 5,
                authority: Authority::Today,
                sure: Sure::House,
                source: "house_rule".to_owned(),
                args: vec![Arg {
                    name: "pain".to_owned(),
                    value: Value::Integer(8),
                }],
            })
            .into(),
        heaviest_g: None,
        limit: None,
        rule_version: "0.1.0".to_owned(),
    }
}
