//! `plan`: what a clinician has set for this person.

use crate::choice::{Choice, set_of};
use crate::error::{DoorError, ErrorCode};
use crate::fields::{PartFields, fields_of};
use crate::section::Section;
use lifting::body::Region;
use lifting::plan::{PainBands, Plan, Validity};
use lifting::quantity::{Kilograms, PainScore, Repetitions, Weeks};
use lifting::task::HeightWord;
use lifting::way::Way;
use serde::Deserialize;
use std::collections::BTreeMap;

const PLAN: Section = Section("plan");

/// The plan as it stands on the wire.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PlanWire {
    valid: Option<bool>,
    weeks_overdue: Option<f64>,
    max_kg: Option<f64>,
    max_by_height: Option<CeilingsWire>,
    times_a_bout: Option<u32>,
    bouts_a_day: Option<u32>,
    allowed: Option<Vec<Choice<Way>>>,
    avoid: Option<Vec<Choice<Way>>>,
    prefer: Option<Vec<Choice<Way>>>,
    pain_ceiling: Option<u8>,
    step_kg: Option<f64>,
    current_kg: Option<f64>,
    steps_locked: Option<bool>,
    grace_weeks: Option<f64>,
    bands: Option<BandsWire>,
}

/// Ceilings by start height, in kilograms.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct CeilingsWire {
    floor: Option<f64>,
    shin: Option<f64>,
    knee: Option<f64>,
    waist: Option<f64>,
    chest: Option<f64>,
    overhead: Option<f64>,
}

/// Pain bands by region.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct BandsWire {
    back: Option<BandWire>,
    knee_left: Option<BandWire>,
    knee_right: Option<BandWire>,
    hip_left: Option<BandWire>,
    hip_right: Option<BandWire>,
    shoulders: Option<BandWire>,
}

/// Where moderate and severe begin.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
struct BandWire {
    moderate_from: u8,
    severe_from: u8,
}

/// The fields of the plan and of its parts.
pub(super) fn fields() -> Vec<PartFields> {
    vec![
        ("plan", fields_of::<PlanWire>()),
        ("plan.max_by_height", fields_of::<CeilingsWire>()),
        ("plan.bands", fields_of::<BandsWire>()),
        ("plan.bands.back", fields_of::<BandWire>()),
    ]
}

impl PlanWire {
    /// The plan, every number checked.
    pub(crate) fn checked(self) -> Result<Plan, DoorError> {
        let max = PLAN.quantity("max_kg", self.max_kg, Kilograms::new)?;
        let step = PLAN.quantity("step_kg", self.step_kg, Kilograms::new)?;
        let current = PLAN.quantity("current_kg", self.current_kg, Kilograms::new)?;
        let within = |level: Option<Kilograms>| !matches!((level, max), (Some(level), Some(max)) if level > max);
        PLAN.consistent("current_kg", within(current))?;
        PLAN.consistent("step_kg", within(step))?;

        let allowed = self.allowed.map(set_of);
        let avoid = set_of(self.avoid.unwrap_or_default());
        PLAN.consistent(
            "avoid",
            allowed
                .as_ref()
                .is_none_or(|allowed| allowed.is_disjoint(&avoid)),
        )?;

        let prefer = set_of(self.prefer.unwrap_or_default());
        let may = |way: &Way| allowed.as_ref().is_none_or(|allowed| allowed.contains(way));
        PLAN.consistent(
            "prefer",
            prefer.is_disjoint(&avoid) && prefer.iter().all(may),
        )?;

        Ok(Plan {
            validity: validity(self.valid, self.weeks_overdue)?,
            max,
            max_by_height: self.max_by_height.unwrap_or_default().checked()?,
            times_a_bout: PLAN.quantity("times_a_bout", self.times_a_bout, Repetitions::new)?,
            bouts_a_day: PLAN.quantity("bouts_a_day", self.bouts_a_day, Repetitions::new)?,
            allowed,
            avoid,
            prefer,
            pain_ceiling: PLAN.pain("pain_ceiling", self.pain_ceiling)?,
            step,
            current,
            good_sessions: None,
            hold_from: None,
            back_over: None,
            steps_locked: self.steps_locked.unwrap_or(false),
            grace: PLAN.quantity("grace_weeks", self.grace_weeks, Weeks::new)?,
            bands: self.bands.unwrap_or_default().checked()?,
        })
    }
}

/// A plan that does not say whether it still holds cannot be used; one that holds is not overdue.
fn validity(valid: Option<bool>, overdue: Option<f64>) -> Result<Validity, DoorError> {
    let overdue = PLAN.quantity("weeks_overdue", overdue, Weeks::new)?;
    match valid {
        None => Err(PLAN.fault(ErrorCode::AnswerNeeded, "valid")),
        Some(false) => Ok(Validity::Expired { overdue }),
        Some(true) => {
            let due = overdue.is_none_or(|weeks| weeks.value() <= 0.0);
            PLAN.consistent("weeks_overdue", due)?;
            Ok(Validity::Valid)
        }
    }
}

impl CeilingsWire {
    fn checked(self) -> Result<BTreeMap<HeightWord, Kilograms>, DoorError> {
        let given = [
            (HeightWord::Floor, self.floor),
            (HeightWord::Shin, self.shin),
            (HeightWord::Knee, self.knee),
            (HeightWord::Waist, self.waist),
            (HeightWord::Chest, self.chest),
            (HeightWord::Overhead, self.overhead),
        ];
        let mut ceilings = BTreeMap::new();
        for (height, number) in given {
            let key = format!("max_by_height.{}", height.id());
            if let Some(ceiling) = PLAN.quantity(&key, number, Kilograms::new)? {
                ceilings.insert(height, ceiling);
            }
        }
        Ok(ceilings)
    }
}

impl BandsWire {
    fn checked(self) -> Result<BTreeMap<Region, PainBands>, DoorError> {
        let given = [
            (Region::Back, self.back),
            (Region::KneeLeft, self.knee_left),
            (Region::KneeRight, self.knee_right),
            (Region::HipLeft, self.hip_left),
            (Region::HipRight, self.hip_right),
            (Region::Shoulders, self.shoulders),
        ];
        let mut bands = BTreeMap::new();
        for (region, band) in given {
            if let Some(band) = band {
                bands.insert(region, band.checked(region)?);
            }
        }
        Ok(bands)
    }
}

impl BandWire {
    /// Moderate begins at 1 or more, since 0 is no pain, and severe above it.
    fn checked(self, region: Region) -> Result<PainBands, DoorError> {
        let score = |name: &str, score: u8| {
            let key = format!("bands.{}.{name}", region.id());
            match PainScore::new(score) {
                Ok(score) if score > PainScore::NONE => Ok(score),
                _ => Err(PLAN.fault(ErrorCode::OutOfRange, &key)),
            }
        };
        let moderate_from = score("moderate_from", self.moderate_from)?;
        let severe_from = score("severe_from", self.severe_from)?;
        PLAN.consistent(
            &format!("bands.{}.severe_from", region.id()),
            moderate_from < severe_from,
        )?;
        Ok(PainBands {
            moderate_from,
            severe_from,
        })
    }
}
