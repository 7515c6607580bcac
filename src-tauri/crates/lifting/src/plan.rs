//! What a clinician has set for one person, as far as one judgement needs it.

use crate::body::Region;
use crate::quantity::{Kilograms, PainScore, Repetitions, Weeks};
use crate::task::HeightWord;
use crate::way::Way;
use std::collections::{BTreeMap, BTreeSet};

/// Whether a plan still holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Validity {
    /// Before its review date.
    Valid,
    /// Past its review date.
    Expired {
        /// By how much. `None`: not known, taken as past the grace.
        overdue: Option<Weeks>,
    },
}

/// Where pain bands begin. There is no agreed cut-point, so they are data (defaults: the usual clinic
/// bands 0, 1–3, 4–6, 7–10; the cautious end of the cut-points collected by Boonstra 2016, table 3).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PainBands {
    /// The lowest score called moderate.
    pub moderate_from: PainScore,
    /// The lowest score called severe.
    pub severe_from: PainScore,
}

impl Default for PainBands {
    fn default() -> Self {
        Self {
            moderate_from: PainScore::of(4),
            severe_from: PainScore::of(7),
        }
    }
}

/// A clinician's plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// Whether it still holds.
    pub validity: Validity,
    /// Ceiling for any lift.
    pub max: Option<Kilograms>,
    /// Ceilings by start height.
    pub max_by_height: BTreeMap<HeightWord, Kilograms>,
    /// Most lifts in one go.
    pub times_a_bout: Option<Repetitions>,
    /// Most goes in a day.
    pub bouts_a_day: Option<Repetitions>,
    /// Ways that may be used; when present, no other way may.
    pub allowed: Option<BTreeSet<Way>>,
    /// Ways ruled out.
    pub avoid: BTreeSet<Way>,
    /// Ways that come first among those that may be used and may come first today.
    pub prefer: BTreeSet<Way>,
    /// No lifting while any rated region hurts more than this.
    pub pain_ceiling: Option<PainScore>,
    /// One step up or down.
    pub step: Option<Kilograms>,
    /// The level in practice.
    pub current: Option<Kilograms>,
    /// Good sessions running before a step up. `None`: the rule's own number.
    pub good_sessions: Option<u32>,
    /// Pain during practice from which to hold. `None`: the rule's own number.
    pub hold_from: Option<PainScore>,
    /// Pain during practice above which to go a step down. `None`: the pain ceiling, else the rule's own number.
    pub back_over: Option<PainScore>,
    /// Steps are the clinician's to unlock.
    pub steps_locked: bool,
    /// How long after the review date its limits stay. `None`: 4 weeks, house rule.
    pub grace: Option<Weeks>,
    /// Pain bands set for this person.
    pub bands: BTreeMap<Region, PainBands>,
}

impl Plan {
    /// Weeks after the review date during which limits stay and relaxations lapse. House rule.
    pub const DEFAULT_GRACE_WEEKS: f64 = 4.0;

    /// The smallest of all its ceilings, whatever the height. `None` when it sets none.
    #[must_use]
    pub fn strictest_ceiling(&self) -> Option<Kilograms> {
        self.max_by_height
            .values()
            .copied()
            .chain(self.max)
            .reduce(Kilograms::at_most)
    }

    /// A valid plan that sets nothing yet.
    #[must_use]
    pub const fn blank() -> Self {
        Self {
            validity: Validity::Valid,
            max: None,
            max_by_height: BTreeMap::new(),
            times_a_bout: None,
            bouts_a_day: None,
            allowed: None,
            avoid: BTreeSet::new(),
            prefer: BTreeSet::new(),
            pain_ceiling: None,
            step: None,
            current: None,
            good_sessions: None,
            hold_from: None,
            back_over: None,
            steps_locked: false,
            grace: None,
            bands: BTreeMap::new(),
        }
    }
}
