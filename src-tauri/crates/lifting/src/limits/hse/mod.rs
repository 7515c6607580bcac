//! The guideline weights of the UK Health and Safety Executive: a first screen, not a limit.
//!
//! Manual handling guidance L23 (4th edition, 2016) and INDG143 (revision 4, 2020). They assume a healthy adult,
//! both hands, an easy grip, a steady upright trunk and good footing. `docs/method/hse.md` gives the table, the
//! zone edges and our choices. Contains public sector information licensed under the Open Government Licence v3.0.

mod reductions;
mod related;
mod zones;

use super::pace::PerMinute;
use crate::body::Sex;
use crate::quantity::{Centimetres, Degrees, Kilograms, Stature};
pub use reductions::{frequency_reduction, twist_reduction};
pub use related::{
    CARRY_WITHOUT_REST, PUSH_WITHOUT_REST, PushForces, SEATED_MEN, SEATED_WOMEN, TEAM_OF_THREE,
    TEAM_OF_TWO, push_forces, team_guide,
};
pub use zones::{HeightBand, HeightEdges, ReachZone, zone_weight};

/// What the screen asks of a task.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GuideTask {
    /// `None`: women's figures.
    pub sex: Option<Sex>,
    /// Scales the zones. `None`: the smallest weight from a small woman to a tall man.
    pub stature: Option<Stature>,
    /// Height of the hands where the load is gripped.
    pub start: Centimetres,
    /// Height of the hands where it is put down.
    pub end: Centimetres,
    /// Farthest reach during the lift, from mid-ankles to hands.
    pub reach: Centimetres,
    /// Largest twist during the lift.
    pub twist: Degrees,
    /// How often.
    pub per_minute: PerMinute,
}

/// The guideline weight and how it came about.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GuideWeight {
    /// The guideline weight for this task.
    pub weight: Kilograms,
    /// The smallest weight of the boxes the hands pass through, before any reduction.
    pub zone_weight: Kilograms,
    /// The height band that gave it.
    pub band: HeightBand,
    /// Close or far.
    pub reach: ReachZone,
    /// Share taken off for how often, 0 to 0.8.
    pub frequency_reduction: f64,
    /// Share taken off for twist, 0 to 0.2.
    pub twist_reduction: f64,
    /// The hands go beyond the boxes: the guidance has no figure and asks for a detailed assessment.
    pub beyond_boxes: bool,
}

/// The guideline weight: the smallest figure of all boxes that the hands pass through, less the reductions.
///
/// The two reductions are taken one after the other: house rule, the guidance does not say.
#[must_use]
pub fn guide_weight(task: &GuideTask) -> GuideWeight {
    let sex = task.sex.unwrap_or(Sex::Female);
    let reach = ReachZone::of(task.reach);
    let (zone_weight, band) = zones::smallest(task.stature, task.start, task.end, reach, sex);
    let frequency_reduction = frequency_reduction(task.per_minute);
    let twist_reduction = twist_reduction(task.twist);
    let weight = Kilograms::clamped(
        zone_weight.value() * (1.0 - frequency_reduction) * (1.0 - twist_reduction),
    );
    let beyond_boxes = zones::beyond_boxes(task.start.at_least(task.end), task.reach);
    GuideWeight {
        weight,
        zone_weight,
        band,
        reach,
        frequency_reduction,
        twist_reduction,
        beyond_boxes,
    }
}
