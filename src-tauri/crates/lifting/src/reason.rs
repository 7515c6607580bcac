//! Reasons: ids with arguments, and for each id its place in the judgement, whose rule it is, where it
//! comes from and how sure it is. Texts live elsewhere.

mod ids;

pub use ids::ReasonId;

use crate::body::{Region, WarningSign};
use crate::naming::named;
use crate::quantity::{Centimetres, Kilograms, Metres, Newtons, PainScore, Repetitions, Weeks};
use crate::way::Way;

named!(
    /// Whose rule it is, highest first.
    Authority {
        /// Law and employer's rules.
        Law = "law",
        /// An emergency sign.
        Emergency = "emergency",
        /// The surgeon's or therapist's plan.
        Plan = "plan",
        /// Pain and balance today.
        Today = "today",
        /// Common practice and published figures for healthy adults.
        Practice = "practice",
    }
);

named!(
    /// How sure it is.
    Sure {
        /// A published figure or guidance.
        Published = "published",
        /// Our own rule, or a therapist's.
        House = "house",
        /// An estimate.
        Estimate = "estimate",
    }
);

/// A value that belongs to a reason.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Value {
    /// A mass.
    Mass(Kilograms),
    /// A height or reach.
    Length(Centimetres),
    /// A distance.
    Distance(Metres),
    /// A count.
    Count(Repetitions),
    /// A pain score.
    Pain(PainScore),
    /// A ratio, for example a lifting index.
    Ratio(f64),
    /// Weeks.
    Weeks(Weeks),
    /// A region.
    Region(Region),
    /// A way.
    Way(Way),
    /// A warning sign.
    Sign(WarningSign),
    /// A force.
    Force(Newtons),
    /// A word from a closed list of ids.
    Id(&'static str),
}

/// A reason with its values.
#[derive(Debug, Clone, PartialEq)]
pub struct Reason {
    /// Which rule speaks.
    pub id: ReasonId,
    /// Its values, by name.
    pub values: Vec<(&'static str, Value)>,
}

impl Reason {
    /// A reason without values.
    #[must_use]
    pub const fn of(id: ReasonId) -> Self {
        Self {
            id,
            values: Vec::new(),
        }
    }

    /// Adds a value.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: Value) -> Self {
        self.values.push((name, value));
        self
    }
}
