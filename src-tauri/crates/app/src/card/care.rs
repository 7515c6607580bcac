//! Who can help when the app cannot say how to lift.

use super::build::of_ids;
use super::given::Given;
use super::model::IdText;
use crate::words::Words;
use lifting::advise::advice::{HowSoon, Outcome};
use lifting::reason::ReasonId;

/// Who can help, most fitting first; empty where nobody need be asked.
pub(super) fn who(advice: &Given, words: &Words) -> Vec<IdText> {
    let mut ids: Vec<&'static str> = Vec::new();
    match &advice.outcome {
        Outcome::SeekCare {
            how_soon: HowSoon::Emergency,
        } => ids.push("emergency_number"),
        Outcome::SeekCare {
            how_soon: HowSoon::SameDay,
        } => {
            ids.extend(["clinician_today", "nurse_line"]);
        }
        Outcome::Refuse => {
            for reason in &advice.reasons {
                for id in for_reason(reason.id) {
                    if !ids.contains(id) {
                        ids.push(id);
                    }
                }
            }
        }
        Outcome::DoNotLift {
            tell_clinician: true,
            ..
        } => ids.push("clinician"),
        Outcome::DoNotLift { .. } => ids.push("adult"),
        Outcome::Lift { .. } | Outcome::LiftWithChange { .. } => {}
    }
    of_ids(words, "who", ids.into_iter())
}

/// Who can say what we cannot, for each reason to refuse.
fn for_reason(id: ReasonId) -> &'static [&'static str] {
    match id {
        ReasonId::LoadIsAlive => &["trained_helper", "care_office", "animal_helper"],
        ReasonId::SurgeryNoLimit => &["surgeon", "clinician", "adult"],
        ReasonId::PregnancyComplicated => &["midwife", "adult"],
        ReasonId::ChildNoPlan => &["parent", "clinician"],
        ReasonId::PlanTooOld => &["plan_author", "adult"],
        _ => &["clinician"],
    }
}
