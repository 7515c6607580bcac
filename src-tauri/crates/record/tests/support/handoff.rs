//! Samples of what is handed over between devices. Everything here is invented.
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use record::*;

use super::{EPOCH, NOON, text};

pub(crate) fn device() -> Device {
    Device {
        keys: SecretBytes::new(vec![7; 64]),
        alias: text("Blue Kettle"),
        made_at: NOON,
    }
}

pub(crate) fn paired() -> Paired {
    Paired {
        id: Identity([1; 16]),
        pairing: SecretBytes::new(vec![9, 8, 7]),
        name: "Green Ladder".to_owned(),
        since: NOON,
    }
}

pub(crate) fn plan() -> Plan {
    let pain = |rating| Pain::new(rating).unwrap();
    Plan {
        version: 3,
        whom: "Green Ladder".to_owned(),
        by: "Blue Kettle".to_owned(),
        title: Wording::Ours("plan-pattern-sore-back".to_owned()),
        pattern: text("sore_back"),
        review_on: Day(20_800),
        grace_weeks: 4,
        ceiling_g: Some(12_000),
        ceilings: vec![Ceiling {
            start: HeightWord::Floor,
            grams: 8_000,
        }],
        times_a_bout: Some(5),
        bouts_a_day: Some(3),
        pain_ceiling: Some(pain(5)),
        next_morning: Some(NextMorning::BackToUsual),
        ways: vec![
            PlanWay {
                way: Way::Squat,
                standing: WayStanding::Preferred,
                why: None,
            },
            PlanWay {
                way: Way::FreeBend,
                standing: WayStanding::NotAllowed,
                why: Some(Wording::Typed("not yet".to_owned())),
            },
        ],
        cues: vec![Wording::Ours("plan-cue-close".to_owned())],
        practice: vec![Practice {
            way: Way::Squat,
            grams: 4_000,
            sets: 2,
            times: 8,
            days_a_week: 3,
        }],
        progression: Progression {
            step_g: Some(500),
            good_days: Some(2),
            hold_from: Some(pain(4)),
            back_over: Some(pain(5)),
            is_locked: true,
        },
        bands: vec![Bands {
            region: Region::Back,
            moderate_from: pain(4),
            severe_from: pain(8),
        }],
        notes: vec![Wording::Typed("Ring when in doubt.".to_owned())],
        ..Plan::blank(Identity([2; 16]), NOON)
    }
}

/// A plan that sets as little as a plan can.
pub(crate) fn plan_bare() -> Plan {
    Plan {
        whom: "A".to_owned(),
        by: "B".to_owned(),
        title: Wording::Typed("C".to_owned()),
        review_on: Day(-1),
        ..Plan::blank(Identity([0; 16]), EPOCH)
    }
}

pub(crate) fn plan_with_why() -> Plan {
    Plan {
        why: Some(Wording::Typed("Two good weeks.".to_owned())),
        ..plan_bare()
    }
}

pub(crate) fn patient() -> Patient {
    Patient {
        alias: "Green Ladder".to_owned(),
        since: NOON,
        pairing: Some(Identity([1; 16])),
        seen_at: Some(NOON),
        review_on: Some(Day(20_800)),
    }
}

pub(crate) fn patient_new() -> Patient {
    Patient {
        alias: "Red Boat".to_owned(),
        since: EPOCH,
        pairing: None,
        seen_at: None,
        review_on: None,
    }
}

pub(crate) fn note() -> Note {
    Note {
        at: NOON,
        text: "Cay\u{f3} en abril.".to_owned(),
    }
}

pub(crate) fn followed() -> Followed {
    Followed {
        plan: plan(),
        at: NOON,
        pairing: Some(Identity([1; 16])),
        from: text("Blue Kettle"),
        stopped_at: Some(NOON),
    }
}

pub(crate) fn history() -> History {
    let pain = |rating| Pain::new(rating);
    History {
        from: "Green Ladder".to_owned(),
        made_at: NOON,
        since: Some(Day(20_700)),
        with_notes: true,
        plan: Some(PlanVersion {
            id: Identity([2; 16]),
            version: 3,
        }),
        start_min: 29_926_572,
        lifts: vec![
            HistoryLift {
                after_min: 0,
                done: true,
                outcome: Outcome::Lift,
                way: Some(Way::Squat),
                advised: Some(Way::Lunge),
                mass: Some(Mass::Known { grams: 6_000 }),
                start: Some(HeightWord::Floor),
                times: 2,
                pain: [pain(3), pain(0), None, None, None, pain(10)],
                back_state: Some(BackState::Steady),
                looks: vec![
                    LookBack {
                        kind: CheckInKind::During,
                        after_min: 1,
                        pain: pain(4),
                        back_to_usual: None,
                    },
                    LookBack {
                        kind: CheckInKind::NextMorning,
                        after_min: 1_320,
                        pain: None,
                        back_to_usual: None,
                    },
                ],
                instead: 0,
                title: 1,
                aid_first: Some(true),
            },
            HistoryLift {
                after_min: 1_440,
                done: false,
                outcome: Outcome::DoNotLift,
                way: None,
                advised: None,
                mass: None,
                start: None,
                times: 0,
                pain: [None; 6],
                back_state: None,
                looks: Vec::new(),
                instead: 2,
                title: 0,
                aid_first: None,
            },
        ],
        signs: vec![SignRaised {
            at_min: 29_926_600,
            sign: 3,
            is_cleared: true,
        }],
        words: vec![
            "Box, 6 kg".to_owned(),
            "ask_person".to_owned(),
            "fever_unwell".to_owned(),
        ],
        practice: None,
    }
}

pub(crate) fn history_empty() -> History {
    History {
        from: "A".to_owned(),
        made_at: EPOCH,
        since: None,
        with_notes: false,
        plan: None,
        start_min: 0,
        lifts: Vec::new(),
        signs: Vec::new(),
        words: Vec::new(),
        practice: None,
    }
}

pub(crate) fn received() -> Received {
    Received {
        history: history(),
        at: NOON,
        from: text("Green Ladder"),
    }
}

/// A plan that says whom to call.
pub(crate) fn plan_call() -> Plan {
    Plan {
        call: text("555 0100, mornings"),
        ..plan_bare()
    }
}

/// A plan that says what to do in a flare-up.
pub(crate) fn plan_flare() -> Plan {
    Plan {
        flare: Some(vec![Wording::Typed("Walk a little.".to_owned())]),
        ..plan_bare()
    }
}

/// A history with the log of the plan in it.
pub(crate) fn history_practice() -> History {
    History {
        practice: Some(vec![
            HistoryPractice {
                at_min: 29_926_600,
                version: 3,
                event: PracticeEvent::Done,
                way: Some(Way::Squat),
                grams: 4_000,
                pain: Pain::new(2),
                morning_asked: true,
                morning_pain: Pain::new(0),
                back_to_usual: Some(BackToUsual::Yes),
            },
            HistoryPractice {
                at_min: 29_928_000,
                version: 3,
                event: PracticeEvent::Flare,
                way: None,
                grams: 0,
                pain: None,
                morning_asked: false,
                morning_pain: None,
                back_to_usual: None,
            },
        ]),
        ..history_empty()
    }
}

pub(crate) fn practice() -> PracticeEntry {
    PracticeEntry {
        at: NOON,
        plan: Identity([2; 16]),
        version: 3,
        event: PracticeEvent::Done,
        way: Some(Way::Squat),
        grams: Some(4_000),
        pain: Pain::new(2),
        morning: Some(MorningAfter {
            at: NOON,
            pain: Pain::new(0),
            back_to_usual: Some(BackToUsual::Yes),
        }),
    }
}

/// A flare-up under a plan without a level.
pub(crate) fn practice_bare() -> PracticeEntry {
    PracticeEntry {
        at: EPOCH,
        plan: Identity([0; 16]),
        version: 1,
        event: PracticeEvent::Flare,
        way: None,
        grams: None,
        pain: None,
        morning: None,
    }
}

/// A history that was shown to one person, and then saved for them.
pub(crate) fn departure() -> Departure {
    Departure {
        at: NOON,
        what: DepartureWhat::History,
        how: vec![DepartureHow::Shown, DepartureHow::Saved],
        seal: Some(Seal::Device),
        to: text("Blue Kettle"),
        about: text("Green Ladder"),
        version: Some(3),
        days: Some(90),
        with_notes: Some(false),
        entries: Some(41),
    }
}

/// A text for the office that was copied.
pub(crate) fn departure_bare() -> Departure {
    Departure {
        at: EPOCH,
        what: DepartureWhat::Office,
        how: vec![DepartureHow::Copied],
        seal: None,
        to: None,
        about: None,
        version: None,
        days: None,
        with_notes: None,
        entries: None,
    }
}
