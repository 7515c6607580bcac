//! The thing to lift: what it is, how heavy, from where, how near, how often.

use crate::convert::often;
use crate::walk::flow::{Walk, for_a_lift};
use crate::walk::ids::QuestionId;
use crate::walk::measure::Measure;
use crate::walk::question::{Choice, Group, Kind, Note, Question};

const fn task(kind: Kind, not_sure: bool, asked: fn(&Walk<'_>) -> bool) -> Question {
    Question {
        group: Group::Task,
        kind,
        not_sure,
        asked,
    }
}

/// What kind of thing. It tells how well it can be held; a living load is never advised on.
pub(crate) const WHAT: Question = task(
    Kind::Choice(&[
        Choice::pictured("small"),
        Choice::pictured("box"),
        Choice::pictured("bag"),
        Choice::pictured("basket"),
        Choice::pictured("bucket"),
        Choice::pictured("long"),
        Choice::pictured("big"),
        Choice::pictured("living"),
    ]),
    true,
    for_a_lift,
);

/// Everyday things as weights, judged at the mass in the remark, which is the upper end of what each
/// can weigh. House rule: a full cup; a one-kilogram bag of flour; two litres of water in bottles, then
/// four, six (a pack of six one-litre bottles) and ten (a bucket); a city bicycle; a packed suitcase.
pub(crate) const MASS: Question = task(
    Kind::Choice(&[
        Choice::pictured("cup").with_note(Note::UpTo(500)),
        Choice::pictured("flour").with_note(Note::Mass(1_000)),
        Choice::pictured("bottle").with_note(Note::Mass(2_000)),
        Choice::pictured("two_bottles").with_note(Note::Mass(4_000)),
        Choice::pictured("six_pack").with_note(Note::Mass(6_000)),
        Choice::pictured("water_bucket").with_note(Note::Mass(10_000)),
        Choice::pictured("bicycle").with_note(Note::Mass(15_000)),
        Choice::pictured("suitcase").with_note(Note::Mass(20_000)),
        Choice::pictured("heavier").with_note(Note::Over(20_000)),
        Choice::words("type_it"),
    ]),
    true,
    for_a_lift,
);

/// How heavy, typed.
pub(crate) const MASS_NUMBER: Question = task(Kind::Number(Measure::Mass), true, |walk| {
    walk.is_for_a_lift() && walk.chose(QuestionId::Mass, "type_it")
});

/// How heavy it could be at most, when it is not known. Judged as not tested, at this upper end.
/// The steps are a house rule.
pub(crate) const MASS_GUESS: Question = task(
    Kind::Choice(&[
        Choice::as_heavy_as("up_2", 2_000),
        Choice::as_heavy_as("up_5", 5_000),
        Choice::as_heavy_as("up_10", 10_000),
        Choice::as_heavy_as("up_15", 15_000),
        Choice::as_heavy_as("up_20", 20_000),
        Choice::as_heavy_as("up_25", 25_000),
        Choice::as_heavy_as("up_40", 40_000),
        Choice::words("no_idea"),
    ]),
    false,
    |walk| {
        walk.is_for_a_lift()
            && (walk.is_not_sure(QuestionId::Mass)
                || (walk.chose(QuestionId::Mass, "type_it")
                    && walk.is_not_sure(QuestionId::MassNumber)))
    },
);

/// Where the hands first grip.
pub(crate) const START: Question = task(
    Kind::Choice(&[
        Choice::pictured("floor"),
        Choice::pictured("shin"),
        Choice::pictured("knee"),
        Choice::pictured("waist"),
        Choice::pictured("chest"),
        Choice::pictured("overhead"),
    ]),
    true,
    for_a_lift,
);

/// How far from the body the hands first grip.
pub(crate) const REACH: Question = task(
    Kind::Choice(&[
        Choice::pictured("close"),
        Choice::pictured("medium"),
        Choice::pictured("far"),
    ]),
    true,
    for_a_lift,
);

/// How many times, over how long.
pub(crate) const OFTEN: Question = task(
    Kind::Choice(&[
        Choice::words("once"),
        Choice::words("twice"),
        Choice::words("few"),
        Choice::words("some_fast"),
        Choice::words("some_slow"),
        Choice::words("many_fast"),
        Choice::words("many_slow"),
    ]),
    true,
    for_a_lift,
);

/// Whether it stays within what the plan allows in one go, where the answer to "how many times" leaves that open.
pub(crate) const OFTEN_IN_PLAN: Question = task(
    Kind::Choice(&[Choice::words("within"), Choice::words("more")]),
    false,
    |walk| walk.is_for_a_lift() && often::is_open(walk),
);
