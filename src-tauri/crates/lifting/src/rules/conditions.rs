//! Step 5, conditions. Every condition has a row: which ways it bars, and what it says besides.

use crate::advise::facts::Facts;
use crate::body::Condition;
use crate::reason::ReasonId;
use crate::way::Way;

/// What one condition does to the ways.
#[derive(Debug, Clone, Copy)]
pub struct Row {
    /// The condition.
    pub condition: Condition,
    /// Ways it bars.
    pub bars: &'static [Way],
    /// Ways it moves back when others serve as well.
    pub moves_back: &'static [Way],
    /// What it says; `None` where another step speaks for it.
    pub reason: Option<ReasonId>,
}

/// The rows, one for every condition. House rules unless the reason's source says otherwise.
pub const ROWS: &[Row] = &[
    Row {
        condition: Condition::Osteoporosis,
        bars: &[Way::FreeBend],
        moves_back: &[Way::GolfersLift],
        reason: Some(ReasonId::NoLoadedRounding),
    },
    Row {
        condition: Condition::PastSpineFracture,
        bars: &[Way::FreeBend],
        moves_back: &[Way::GolfersLift],
        reason: Some(ReasonId::NoLoadedRounding),
    },
    // Start height and reach: see the task's rules; the caution speaks for it with every lift.
    Row {
        condition: Condition::Pregnant,
        bars: &[],
        moves_back: &[Way::GolfersLift],
        reason: None,
    },
    // Refused in step 2.
    Row {
        condition: Condition::PregnancyComplicated,
        bars: &[],
        moves_back: &[],
        reason: None,
    },
    Row {
        condition: Condition::KneeReplacementOld,
        bars: &[],
        moves_back: &[],
        reason: Some(ReasonId::OldKneeMayKneel),
    },
    Row {
        condition: Condition::KneeReplacementRecent,
        bars: &[Way::HalfKneelingLunge],
        moves_back: &[Way::Squat],
        reason: Some(ReasonId::NewKneeNoKneeling),
    },
    Row {
        condition: Condition::HipReplacement,
        bars: &[Way::GolfersLift],
        moves_back: &[Way::FreeBend],
        reason: Some(ReasonId::ReplacedHip),
    },
    Row {
        condition: Condition::HipOsteoarthritis,
        bars: &[],
        moves_back: &[Way::HipHinge, Way::FreeBend],
        reason: Some(ReasonId::WornHip),
    },
    Row {
        condition: Condition::KneeOsteoarthritis,
        bars: &[],
        moves_back: &[Way::Squat, Way::HalfKneelingLunge],
        reason: Some(ReasonId::WornKnee),
    },
    // The surgeon's limit is steps 2 and 3.
    Row {
        condition: Condition::LumbarSurgeryRecent,
        bars: &[Way::FreeBend],
        moves_back: &[],
        reason: Some(ReasonId::BackSurgery),
    },
    // The load decides: see the task's rules.
    Row {
        condition: Condition::Hernia,
        bars: &[],
        moves_back: &[],
        reason: None,
    },
];

/// Rows of the conditions this person has.
pub fn rows<'a>(facts: &'a Facts<'_>) -> impl Iterator<Item = &'static Row> + 'a {
    ROWS.iter().filter(|row| facts.has(row.condition))
}
