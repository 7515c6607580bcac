//! The invented part of somebody who helps others move: three people by code, what their care plans say, and yesterday's
//! shift. The scenario is our own; none of them is anybody.

use super::{Demo, DemoError};
use chrono::{DateTime, Days, FixedOffset};
use serde_json::{Value, json};

/// What the invented worker is trained on.
const TRAINED: [&str; 4] = ["belt", "hoist", "slide_sheet", "stand_aid"];

/// One invented person: a code, never a name.
struct Person {
    code: &'static str,
    picture: &'static str,
    plans: &'static [Plan],
}

/// What a care plan says of a move, on a day before today, to be looked at again on a day after it.
struct Plan {
    what: &'static str,
    way: &'static str,
    workers: u32,
    by: &'static str,
    issued_days_ago: u64,
    review_in_days: u64,
}

const PEOPLE: [Person; 3] = [
    // Takes part of their weight and is steadied; stands up with an aid.
    Person {
        code: "A7",
        picture: "kettle",
        plans: &[
            plan("bed_to_chair", "stand_aid", 1, "therapist", 20, 60),
            plan("up_in_bed", "slide_sheet_two", 2, "therapist", 20, 60),
        ],
    },
    // Takes no weight: by hoist, with two. The plan is due soon.
    Person {
        code: "K3",
        picture: "boat",
        plans: &[plan("bed_to_chair", "hoist_two", 2, "nurse", 85, 5)],
    },
    // Helps along; nothing was written down.
    Person {
        code: "M9",
        picture: "leaf",
        plans: &[],
    },
];

const fn plan(
    what: &'static str,
    way: &'static str,
    workers: u32,
    by: &'static str,
    issued_days_ago: u64,
    review_in_days: u64,
) -> Plan {
    Plan {
        what,
        way,
        workers,
        by,
        issued_days_ago,
        review_in_days,
    }
}

/// One invented move of yesterday, in the hours for which the lift of that day has told how the worker is.
struct Move {
    hour: u32,
    /// The place in [`PEOPLE`].
    of: usize,
    what: &'static str,
    answers: &'static [(&'static str, Told)],
    becomes: Becomes,
}

/// One answer.
#[derive(Clone, Copy)]
enum Told {
    One(&'static str),
    Any(&'static [&'static str]),
}

/// What became of a move.
#[derive(Clone, Copy)]
enum Becomes {
    /// Done, with what helped.
    Done(&'static [&'static str]),
    /// Not done: something was not there, and the office was told.
    Refused,
}

const MOVES: [Move; 4] = [
    Move {
        hour: 12,
        of: 0,
        what: "bed_to_chair",
        answers: &[
            ("same", Told::One("as_planned")),
            ("legs", Told::One("part")),
            ("follows", Told::One("yes")),
            ("help", Told::One("steady_only")),
        ],
        becomes: Becomes::Done(&["talked", "slower"]),
    },
    Move {
        hour: 13,
        of: 1,
        what: "bed_to_chair",
        answers: &[
            ("same", Told::One("missing")),
            ("legs", Told::One("none")),
            ("follows", Told::One("unsure")),
            ("here", Told::Any(&["hoist"])),
        ],
        becomes: Becomes::Refused,
    },
    Move {
        hour: 14,
        of: 2,
        what: "stockings",
        answers: &[
            ("able", Told::One("partly")),
            ("follows", Told::One("yes")),
            ("mass", Told::One("up_65")),
            ("here", Told::Any(&["foot_stool"])),
        ],
        becomes: Becomes::Done(&["rest_first"]),
    },
    Move {
        hour: 14,
        of: 0,
        what: "up_in_bed",
        answers: &[
            ("same", Told::One("as_planned")),
            ("able", Told::One("partly")),
            ("mass", Told::One("up_75")),
        ],
        becomes: Becomes::Done(&["second_worker"]),
    },
];

/// Writes down the people and their plans, then yesterday's moves. The shift stays open: it is to be handed over.
///
/// # Errors
/// [`DemoError::Refused`].
pub(super) fn tell(demo: &Demo<'_>) -> Result<(), DemoError> {
    let before = demo.day(1, 8);
    demo.ask(json!({ "do": "trained_set", "equipment": TRAINED }), before)?;
    let mut ids = Vec::new();
    for person in &PEOPLE {
        ids.push(write_down(demo, person, before)?);
    }
    for one in &MOVES {
        let id = ids.get(one.of).ok_or(DemoError::Refused)?;
        go_through(demo, one, id)?;
    }
    Ok(())
}

fn write_down(
    demo: &Demo<'_>,
    person: &Person,
    at: DateTime<FixedOffset>,
) -> Result<Value, DemoError> {
    let keep = json!({ "do": "person_keep", "code": person.code, "picture": person.picture });
    let id = demo.ask(keep, at)?.get("id").cloned();
    let id = id.ok_or(DemoError::Refused)?;
    for plan in person.plans {
        let issued = demo.day(plan.issued_days_ago, 8).date_naive();
        let today = demo.app.now().date_naive();
        let review = today.checked_add_days(Days::new(plan.review_in_days));
        let keep = json!({
            "do": "care_plan_keep", "person": id, "move": plan.what, "ways": [plan.way], "workers": plan.workers,
            "issued_by": plan.by, "issued_on": issued.to_string(),
            "review_on": review.map(|review| review.to_string()),
        });
        demo.ask(keep, at)?;
    }
    Ok(id)
}

fn go_through(demo: &Demo<'_>, one: &Move, person: &Value) -> Result<(), DemoError> {
    let at = demo.day(1, one.hour);
    let text = |value: Option<&Value>| value.and_then(Value::as_str).map(str::to_owned);
    let start = json!({ "do": "move_start", "person": person, "move": one.what });
    let mut page = demo.ask(start, at)?;
    while let Some(question) = text(page.pointer("/question/id")) {
        let answer =
            json!({ "do": "move_answer", "question": question, "answer": one.answer(&question) });
        page = demo.ask(answer, at)?;
    }
    match one.becomes {
        Becomes::Done(helped) => {
            let way = page.pointer("/card/ways/0/way");
            let keep = json!({ "do": "move_keep", "result": "done", "way": way });
            let id = demo.ask(keep, at)?.get("id").cloned();
            demo.ask(json!({ "do": "move_more", "id": id, "helped": helped }), at)?;
        }
        Becomes::Refused => {
            demo.ask(
                json!({ "do": "move_keep", "result": "refused", "told": "said" }),
                at,
            )?;
        }
    }
    Ok(())
}

impl Move {
    fn answer(&self, question: &str) -> Value {
        let own = self.answers.iter().find(|(id, _)| *id == question);
        match own.map(|(_, told)| *told) {
            Some(Told::One(choice)) => json!({ "choice": choice }),
            Some(Told::Any(choices)) => json!({ "choices": choices }),
            // Nothing new, in them or in the worker.
            None if question == "new" => json!({ "choice": "nothing" }),
            None => json!({ "not_sure": true }),
        }
    }
}
