//! The person. Asked at first use, kept for a month, then asked again. Sex, stature and body mass may be
//! passed over; that too holds for a month.

use crate::walk::flow::Walk;
use crate::walk::ids::QuestionId;
use crate::walk::measure::Measure;
use crate::walk::question::{Choice, Group, Kind, Question};

const fn about(kind: Kind, asked: fn(&Walk<'_>) -> bool) -> Question {
    Question {
        group: Group::About,
        kind,
        not_sure: true,
        asked,
    }
}

/// The questions that decide whether somebody may be advised at all. The others only make figures fit.
pub(crate) const DECIDING: [QuestionId; 5] = [
    QuestionId::Age,
    QuestionId::Conditions,
    QuestionId::PregnancyWeeks,
    QuestionId::WeeksSinceSurgery,
    QuestionId::Fell,
];

/// Whether all of those that this walk asks are answered.
#[must_use]
pub(crate) fn is_decided(walk: &Walk<'_>) -> bool {
    DECIDING
        .iter()
        .all(|question| !walk.asks(*question) || walk.has(*question))
}

/// Age band.
pub(crate) const AGE: Question = about(
    Kind::Choice(&[
        Choice::words("under16"),
        Choice::words("16-39"),
        Choice::words("40-64"),
        Choice::words("65-79"),
        Choice::words("80plus"),
    ]),
    |_| true,
);

/// Standing conditions that change the advice.
pub(crate) const CONDITIONS: Question = about(
    Kind::Choices(&[
        Choice::words("osteoporosis"),
        Choice::words("past_spine_fracture"),
        Choice::words("pregnant"),
        Choice::words("pregnancy_complicated"),
        Choice::words("knee_replacement_old"),
        Choice::words("knee_replacement_recent"),
        Choice::words("hip_replacement"),
        Choice::words("hip_osteoarthritis"),
        Choice::words("knee_osteoarthritis"),
        Choice::words("lumbar_surgery_recent"),
        Choice::words("hernia"),
    ]),
    |_| true,
);

/// Weeks of pregnancy.
pub(crate) const PREGNANCY_WEEKS: Question = about(Kind::Number(Measure::PregnancyWeeks), |walk| {
    walk.ticked(QuestionId::Conditions, "pregnant")
        || walk.ticked(QuestionId::Conditions, "pregnancy_complicated")
});

/// Weeks since surgery.
pub(crate) const WEEKS_SINCE_SURGERY: Question =
    about(Kind::Number(Measure::SurgeryWeeks), |walk| {
        walk.ticked(QuestionId::SignsFull, "post_op_recent")
            || walk.ticked(QuestionId::Conditions, "knee_replacement_recent")
            || walk.ticked(QuestionId::Conditions, "lumbar_surgery_recent")
    });

/// A fall in the last year: good balance is then taken as fair.
pub(crate) const FELL: Question = about(
    Kind::Choice(&[Choice::words("no"), Choice::words("yes")]),
    |_| true,
);

/// Sex: published figures differ by it. Passed over, the women's hold, which are the lower ones.
pub(crate) const SEX: Question = about(
    Kind::Choice(&[Choice::words("female"), Choice::words("male")]),
    |_| true,
);

/// Stature. Passed over, the figures hold for small and for tall people.
pub(crate) const STATURE: Question = about(Kind::Number(Measure::Stature), |_| true);

/// The mass of the person. Passed over, the figures hold for light and for heavy people.
pub(crate) const BODY_MASS: Question = about(Kind::Number(Measure::BodyMass), |_| true);
