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
        review_day: None,
        plan_id: None,
    }
}

pub(crate) fn plan_taken() -> CarePlan {
    CarePlan {
        came_by: CameBy::Parcel,
        review_day: Some(20_860),
        plan_id: Some(Identity([4; 16])),
        ..plan()
    }
}

/// A person whose care plan came in a parcel.
pub(crate) fn person_planned() -> CarePerson {
    CarePerson {
        moves: vec![CareMove {
            plan: Some(plan_taken()),
            ..CareMove::of("bed_to_chair".to_owned())
        }],
        plans: Some(vec![
            PlanHead {
                id: Identity([4; 16]),
                version: 3,
                made_at: NOON,
                code: "B2".to_owned(),
                from: Some("Blue Kettle".to_owned()),
                is_own: false,
            },
            PlanHead {
                id: Identity([5; 16]),
                version: 1,
                made_at: EPOCH,
                code: "B2".to_owned(),
                from: None,
                is_own: true,
            },
        ]),
        ..person_new()
    }
}

pub(crate) fn person_plan() -> PersonPlan {
    PersonPlan {
        id: Identity([4; 16]),
        version: 3,
        made_at: NOON,
        code: "B2".to_owned(),
        by: "Blue Kettle".to_owned(),
        moves: vec![
            PlannedMove {
                what: "bed_to_chair".to_owned(),
                ways: list(&["stand_aid", "stand_pivot_belt"]),
                workers: Some(2),
                equipment: list(&["stand_aid", "belt"]),
                issued_by: "office".to_owned(),
                issued_on: Day(20_769),
                review_on: Some(Day(20_860)),
            },
            PlannedMove {
                what: "up_in_bed".to_owned(),
                ways: list(&["slide_sheet_two"]),
                workers: None,
                equipment: list(&["slide_sheet"]),
                issued_by: "nurse".to_owned(),
                issued_on: Day(20_700),
                review_on: None,
            },
        ],
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
        plans: None,
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
        plans: None,
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
