//! Sample records of moving people. Everything here is invented.

use super::{NOON, answered};
use record::*;

const EPOCH: Moment = Moment {
    at_ms: 0,
    offset_min: 0,
};

pub(crate) fn plan() -> CarePlan {
    CarePlan {
        ways: list(&["stand_aid", "hoist_two"]),
        workers: Some(2),
        equipment: list(&["stand_aid", "hoist"]),
        issued_by: "office".to_owned(),
        issued_day: 20_769,
        entered_at: NOON,
        came_by: CameBy::Typed,
    }
}

pub(crate) fn person() -> CarePerson {
    CarePerson {
        code: "A7".to_owned(),
        picture: "kettle".to_owned(),
        since: NOON,
        legs: Some(WeightBearing::Part),
        follows: Some(Follows::Unsure),
        arms_strong: Some(true),
        mass_g: Some(80_000),
        equipment: Some(list(&["stand_aid"])),
        noted_at: Some(NOON),
        moves: vec![
            CareMove {
                able: Some(Ability::Partly),
                help: Some(Help::SomeLift),
                share_permille: Some(250),
                workers: Some(2),
                limb: Some(Limb::Leg),
                hold: Some(Hold::TwoMinutes),
                chair_reclines: Some(false),
                noted_at: Some(NOON),
                plan: Some(plan()),
                ..CareMove::of("bed_to_chair".to_owned())
            },
            CareMove::of("car".to_owned()),
        ],
    }
}

pub(crate) fn person_new() -> CarePerson {
    CarePerson {
        code: "B2".to_owned(),
        picture: "leaf".to_owned(),
        since: EPOCH,
        legs: None,
        follows: None,
        arms_strong: None,
        mass_g: None,
        equipment: None,
        noted_at: None,
        moves: Vec::new(),
    }
}

pub(crate) fn entry() -> MoveEntry {
    MoveEntry {
        at: NOON,
        person: 3,
        code: "A7".to_owned(),
        what: "bed_to_chair".to_owned(),
        result: MoveResult::NearMiss,
        outcome: Some(Outcome::Lift),
        way: Some("stand_aid".to_owned()),
        workers: Some(1),
        equipment: list(&["stand_aid"]),
        helped: list(&["slower"]),
        signs: list(&["legs_give"]),
        report: Some("Cayó la correa.".to_owned()),
        told: Some(Told::Copied),
        rule_version: "0.1.0".to_owned(),
    }
}

pub(crate) fn entry_refused() -> MoveEntry {
    MoveEntry {
        result: MoveResult::Refused,
        outcome: Some(Outcome::DoNotLift),
        way: None,
        workers: None,
        equipment: Vec::new(),
        helped: Vec::new(),
        signs: Vec::new(),
        told: None,
        ..entry()
    }
}

pub(crate) fn shift() -> Shift {
    Shift {
        began_at: NOON,
        handed_at: Some(NOON),
        erased: Some(Erased {
            at: NOON,
            plain: 5,
            proofs: 0,
        }),
    }
}

pub(crate) fn shift_open() -> Shift {
    Shift {
        began_at: EPOCH,
        handed_at: None,
        erased: None,
    }
}

pub(crate) fn draft() -> MoveDraft {
    MoveDraft {
        opened_at: NOON,
        person: 3,
        what: "bed_to_chair".to_owned(),
        answers: vec![
            answered("same", Answer::Choice("as_planned".to_owned())),
            answered("new", Answer::Choice("nothing".to_owned())),
        ],
        open_question: Some("new".to_owned()),
    }
}

pub(crate) fn worker() -> Worker {
    Worker {
        trained: Some(list(&["belt", "hoist"])),
    }
}

fn list(ids: &[&str]) -> Vec<String> {
    ids.iter().map(|id| (*id).to_owned()).collect()
}
