//! The body today. Kept for a few hours, then asked again.

use crate::walk::flow::{Walk, about_today};
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
pub(crate) const BACK: Question = body(Kind::Pain, about_today);

/// How the back behaves today, apart from the number.
pub(crate) const BACK_STATE: Question = body(
    Kind::Choice(&[
        Choice::words("steady"),
        Choice::words("volatile"),
        Choice::words("flare"),
    ]),
    about_today,
);

/// Left knee pain now.
pub(crate) const KNEE_LEFT: Question = body(Kind::Pain, about_today);

/// Right knee pain now.
pub(crate) const KNEE_RIGHT: Question = body(Kind::Pain, about_today);

/// Whether anything else hurts. One question for three places, so that most people need one tap.
pub(crate) const OTHER: Question = body(
    Kind::Choices(&[
        Choice::words("hip_left"),
        Choice::words("hip_right"),
        Choice::words("shoulders"),
    ]),
    about_today,
);

/// Left hip pain now, when it was ticked.
pub(crate) const HIP_LEFT: Question = body(Kind::Pain, |walk| {
    walk.is_about_today() && walk.ticked(QuestionId::Other, "hip_left")
});

/// Right hip pain now, when it was ticked.
pub(crate) const HIP_RIGHT: Question = body(Kind::Pain, |walk| {
    walk.is_about_today() && walk.ticked(QuestionId::Other, "hip_right")
});

/// Shoulder pain now, when it was ticked.
pub(crate) const SHOULDERS: Question = body(Kind::Pain, |walk| {
    walk.is_about_today() && walk.ticked(QuestionId::Other, "shoulders")
});

/// Balance today.
pub(crate) const BALANCE: Question = body(
    Kind::Choice(&[
        Choice::words("good"),
        Choice::words("fair"),
        Choice::words("poor"),
    ]),
    about_today,
);

/// Whether kneeling is possible.
pub(crate) const KNEEL: Question = body(
    Kind::Choice(&[
        Choice::words("yes"),
        Choice::words("one_side"),
        Choice::words("no"),
    ]),
    about_today,
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
