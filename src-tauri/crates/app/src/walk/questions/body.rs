//! The body today. Kept for a few hours, then asked again.

use crate::walk::flow::{Walk, for_a_lift};
use crate::walk::ids::QuestionId;
use crate::walk::question::{Choice, Group, Kind, Question};

const fn body(kind: Kind, asked: fn(&Walk<'_>) -> bool) -> Question {
    Question {
        group: Group::Body,
        kind,
        not_sure: true,
        asked,
    }
}

/// Back pain now.
pub(crate) const BACK: Question = body(Kind::Pain, for_a_lift);

/// How the back behaves today, apart from the number.
pub(crate) const BACK_STATE: Question = body(
    Kind::Choice(&[
        Choice::words("steady"),
        Choice::words("volatile"),
        Choice::words("flare"),
    ]),
    for_a_lift,
);

/// Left knee pain now.
pub(crate) const KNEE_LEFT: Question = body(Kind::Pain, for_a_lift);

/// Right knee pain now.
pub(crate) const KNEE_RIGHT: Question = body(Kind::Pain, for_a_lift);

/// Whether anything else hurts. One question for three places, so that most people need one tap.
pub(crate) const OTHER: Question = body(
    Kind::Choices(&[
        Choice::words("hip_left"),
        Choice::words("hip_right"),
        Choice::words("shoulders"),
    ]),
    for_a_lift,
);

/// Left hip pain now, when it was ticked.
pub(crate) const HIP_LEFT: Question = body(Kind::Pain, |walk| {
    walk.is_for_a_lift() && walk.ticked(QuestionId::Other, "hip_left")
});

/// Right hip pain now, when it was ticked.
pub(crate) const HIP_RIGHT: Question = body(Kind::Pain, |walk| {
    walk.is_for_a_lift() && walk.ticked(QuestionId::Other, "hip_right")
});

/// Shoulder pain now, when it was ticked.
pub(crate) const SHOULDERS: Question = body(Kind::Pain, |walk| {
    walk.is_for_a_lift() && walk.ticked(QuestionId::Other, "shoulders")
});

/// Balance today.
pub(crate) const BALANCE: Question = body(
    Kind::Choice(&[
        Choice::words("good"),
        Choice::words("fair"),
        Choice::words("poor"),
    ]),
    for_a_lift,
);

/// Whether kneeling is possible.
pub(crate) const KNEEL: Question = body(
    Kind::Choice(&[
        Choice::words("yes"),
        Choice::words("one_side"),
        Choice::words("no"),
    ]),
    for_a_lift,
);

/// The regions rated from 0 to 10.
pub(crate) const RATED: [QuestionId; 6] = [
    QuestionId::Back,
    QuestionId::KneeLeft,
    QuestionId::KneeRight,
    QuestionId::HipLeft,
    QuestionId::HipRight,
    QuestionId::Shoulders,
];
