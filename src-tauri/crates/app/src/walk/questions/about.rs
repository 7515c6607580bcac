//! The person. Asked at first use, kept for a month, then asked again.

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
