//! What the equation asks of a lifting task.

use super::super::pace::{Hours, PerMinute};
use super::units::{Length, Load, Metric, UnitSystem};
use crate::quantity::Degrees;
use crate::task::Coupling;

/// One lifting or lowering task, in one unit system. Terms of NIOSH 94-110, section 1.1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LiftingTask<S: UnitSystem = Metric> {
    /// H at the origin: from the point between the inner ankle bones to the middle of the grip, along the floor.
    pub h: Length<S>,
    /// V at the origin: height of the hands above the floor.
    pub v_origin: Length<S>,
    /// V at the destination.
    pub v_destination: Length<S>,
    /// A at the origin: how far the load is off to the side of an untwisted body.
    pub a_origin: Degrees,
    /// A at the destination.
    pub a_destination: Degrees,
    /// H at the destination. `None`: as at the origin.
    pub h_destination: Option<Length<S>>,
    /// Whether the load must be placed with care, held, or gripped anew at the destination; it is then scored too.
    pub control_at_destination: bool,
    /// F: lifts each minute, averaged over 15 minutes.
    pub lifts_per_min: PerMinute,
    /// How long the lifting goes on.
    pub hours: Hours,
    /// Lighter work that follows. `None`: enough of it.
    pub recovery_hours: Option<Hours>,
    /// Grip.
    pub coupling: Coupling,
    /// Average load: used by the single-task index of a job, STLI.
    pub load_avg: Load<S>,
    /// Largest load: used by the lifting index and by the frequency-independent index, FILI.
    pub load_max: Load<S>,
}

impl<S: UnitSystem> LiftingTask<S> {
    /// H at the destination, taken as at the origin when it was not measured.
    #[must_use]
    pub fn reach_at_destination(&self) -> Length<S> {
        self.h_destination.unwrap_or(self.h)
    }
}

/// H from the load's depth when it cannot be measured: `20 + W/2` cm, or `25 + W/2` cm with the hands below 25 cm
/// (in inches 8, 10 and 10; NIOSH 94-110, section 1.3.1).
#[must_use]
pub fn estimated_reach<S: UnitSystem>(depth: Length<S>, v: Length<S>) -> Length<S> {
    let base = if v.value() < S::ESTIMATE_LOW_BELOW {
        S::ESTIMATE_BASE_LOW
    } else {
        S::ESTIMATE_BASE
    };
    Length::of(base + depth.value() / 2.0)
}
