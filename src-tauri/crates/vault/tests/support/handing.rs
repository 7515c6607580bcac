//! Samples of what is handed over. Everything here is invented.

use record::{
    CheckInKind, Day, Departure, DepartureHow, DepartureWhat, Followed, HeightWord, History,
    HistoryLift, Identity, LookBack, Mass, Note, Outcome, Pain, Paired, Patient, Plan,
    PracticeEntry, PracticeEvent, Received, Seal, SecretBytes, Way, Wording,
};

use super::at;

pub(crate) fn paired(number: u8, name: &str) -> Paired {
    Paired {
        id: Identity([number; 16]),
        pairing: SecretBytes::new(vec![number; 40]),
        name: name.to_owned(),
        since: at(i64::from(number)),
    }
}

pub(crate) fn plan(number: u8, version: u32) -> Plan {
    Plan {
        version,
        whom: "Green Ladder".to_owned(),
        by: "Blue Kettle".to_owned(),
        title: Wording::Typed("A plan".to_owned()),
        review_on: Day(20_800),
        grace_weeks: 4,
        ceiling_g: Some(8_000),
        call: Some("555 0100, mornings".to_owned()),
        ..Plan::blank(Identity([number; 16]), at(0))
    }
}

pub(crate) fn followed(number: u8, version: u32) -> Followed {
    Followed {
        plan: plan(number, version),
        at: at(i64::from(version)),
        pairing: Some(Identity([1; 16])),
        from: Some("Blue Kettle".to_owned()),
        stopped_at: None,
    }
}

pub(crate) fn received(from: &str) -> Received {
    Received {
        history: History {
            from: from.to_owned(),
            made_at: at(0),
            since: None,
            with_notes: false,
            plan: None,
            start_min: 0,
            lifts: vec![HistoryLift {
                after_min: 0,
                done: true,
                outcome: Outcome::Lift,
                way: Some(Way::Squat),
                advised: Some(Way::Lunge),
                mass: Some(Mass::Known { grams: 6_000 }),
                start: Some(HeightWord::Floor),
                times: 1,
                pain: [Pain::new(3), Pain::new(0), None, None, None, None],
                back_state: None,
                looks: vec![LookBack {
                    kind: CheckInKind::During,
                    after_min: 2,
                    pain: Pain::new(4),
                    back_to_usual: None,
                }],
                instead: 0,
                title: 0,
                aid_first: None,
            }],
            signs: Vec::new(),
            words: Vec::new(),
            practice: None,
        },
        at: at(1),
        from: Some(from.to_owned()),
    }
}

/// Practice with so many kilograms, at so many hours.
pub(crate) fn practice(kilograms: u32, hours: i64) -> PracticeEntry {
    PracticeEntry {
        at: at(hours),
        plan: Identity([2; 16]),
        version: 3,
        event: PracticeEvent::Done,
        way: Some(Way::Squat),
        grams: Some(kilograms * 1000),
        pain: Pain::new(2),
        morning: None,
    }
}

/// A patient, with the phone of this number if there is one.
pub(crate) fn patient(pairing: Option<u8>, alias: &str) -> Patient {
    Patient {
        alias: alias.to_owned(),
        since: at(1),
        pairing: pairing.map(|number| Identity([number; 16])),
        seen_at: None,
        review_on: Some(Day(20_800)),
    }
}

/// A note that stays.
pub(crate) fn note(text: &str) -> Note {
    Note {
        at: at(1),
        text: text.to_owned(),
    }
}

/// The second version of a plan, on its way to a paired device.
pub(crate) fn departure(at_min: i64, how: DepartureHow) -> Departure {
    Departure {
        at: at(at_min),
        what: DepartureWhat::Plan,
        how: vec![how],
        seal: Some(Seal::Device),
        to: Some("Blue Kettle".to_owned()),
        about: Some("Green Ladder".to_owned()),
        version: Some(2),
        days: None,
        with_notes: None,
        entries: None,
    }
}
