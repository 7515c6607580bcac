//! Pain in bands, back, balance, and whether the plan holds; what was not asked is taken on the careful side.

use crate::body::{BackState, Balance, Person, Region};
use crate::plan::{PainBands, Plan, Validity};
use crate::quantity::PainScore;

/// A band of pain.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Band {
    /// 0.
    None,
    /// 1 to 3 unless a plan says otherwise.
    Mild,
    /// 4 to 6 unless a plan says otherwise.
    Moderate,
    /// 7 to 10 unless a plan says otherwise.
    Severe,
}

/// A region's pain as judged.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Rated {
    /// The score judged by.
    pub score: PainScore,
    /// Its band.
    pub band: Band,
    /// Whether the person gave it.
    pub asked: bool,
}

impl Rated {
    /// Whether it is judged severe.
    #[must_use]
    pub fn severe(self) -> bool {
        self.band == Band::Severe
    }
}

/// Whether the plan holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// Before its review date.
    Valid,
    /// Past it, within the grace: limits stay, relaxations lapse.
    Grace,
    /// Too old to advise on.
    TooOld,
}

pub(super) fn standing(plan: Option<&Plan>) -> Standing {
    let Some(plan) = plan else {
        return Standing::Valid;
    };
    match plan.validity {
        Validity::Valid => Standing::Valid,
        Validity::Expired { overdue: None } => Standing::TooOld,
        Validity::Expired {
            overdue: Some(weeks),
        } => {
            let grace = plan
                .grace
                .map_or(Plan::DEFAULT_GRACE_WEEKS, |grace| grace.value());
            if weeks.value() <= grace {
                Standing::Grace
            } else {
                Standing::TooOld
            }
        }
    }
}

/// The plan's bands; in the grace after its review date the stricter of plan and default, point by point.
pub(super) fn bands(plan: Option<&Plan>, standing: Standing, region: Region) -> PainBands {
    let usual = PainBands::default();
    let Some(set) = plan.and_then(|plan| plan.bands.get(&region)) else {
        return usual;
    };
    if standing == Standing::Valid {
        return *set;
    }
    PainBands {
        moderate_from: usual.moderate_from.min(set.moderate_from),
        severe_from: usual.severe_from.min(set.severe_from),
    }
}

pub(super) fn rated(
    score: Option<PainScore>,
    when_not_asked: PainScore,
    bands: PainBands,
) -> Rated {
    let judged = score.unwrap_or(when_not_asked);
    let band = if judged >= bands.severe_from {
        Band::Severe
    } else if judged >= bands.moderate_from {
        Band::Moderate
    } else if judged > PainScore::NONE {
        Band::Mild
    } else {
        Band::None
    };
    Rated {
        score: judged,
        band,
        asked: score.is_some(),
    }
}

pub(super) fn back_state(person: &Person) -> BackState {
    person.back_state.unwrap_or_else(|| {
        if person.pain.back.is_none_or(|pain| pain >= PainScore::of(4)) {
            BackState::Volatile
        } else {
            BackState::Steady
        }
    })
}

pub(super) fn balance(person: &Person) -> Balance {
    match person.balance {
        Some(Balance::Good) if person.fell_last_year == Some(true) => Balance::Fair,
        Some(balance) => balance,
        None => Balance::Poor,
    }
}
