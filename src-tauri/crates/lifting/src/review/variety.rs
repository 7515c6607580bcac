//! How often each way was used, and how evenly.
//!
//! Evenness is Pielou's J (1966, Journal of Theoretical Biology 13:131): Shannon's entropy of the shares over
//! that of equal shares (source id `pielou_1966`). 0: always one way; 1: all five alike. Nobody should lift one
//! way only; how even is even enough is not known, so it is told and not judged.

use super::KeptLift;
use crate::way::Way;
use std::collections::BTreeMap;

/// Use of the ways.
#[derive(Debug, Clone, PartialEq)]
pub struct Variety {
    /// Lifts by way, most used first; ways that were not used are left out.
    pub used: Vec<(Way, u32)>,
    /// Evenness over the five ways from low down; `None` when none of them was used.
    pub evenness: Option<Evenness>,
}

/// Pielou's J, 0 (always one way) to 1 (all five alike).
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Evenness(f64);

impl Evenness {
    /// The number, 0 to 1.
    #[must_use]
    pub const fn value(self) -> f64 {
        self.0
    }
}

pub(super) fn variety(lifts: &[&KeptLift]) -> Variety {
    let mut counts: BTreeMap<Way, u32> = BTreeMap::new();
    for lift in lifts.iter().filter(|lift| lift.decision.is_done()) {
        if let Some(way) = lift.way {
            *counts.entry(way).or_default() += 1;
        }
    }
    let low: Vec<u32> = Way::FROM_LOW
        .iter()
        .filter_map(|way| counts.get(way).copied())
        .collect();
    let mut used: Vec<_> = counts.into_iter().collect();
    used.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
    Variety {
        evenness: evenness(&low),
        used,
    }
}

fn evenness(counts: &[u32]) -> Option<Evenness> {
    let total: f64 = counts.iter().copied().map(f64::from).sum();
    if total <= 0.0 {
        return None;
    }
    let entropy: f64 = counts
        .iter()
        .filter(|count| **count > 0)
        .map(|count| f64::from(*count) / total)
        .map(|share| -share * share.ln())
        .sum();
    let share_of_most = entropy / (Way::FROM_LOW.len() as f64).ln();
    Some(Evenness(share_of_most.clamp(0.0, 1.0)))
}
