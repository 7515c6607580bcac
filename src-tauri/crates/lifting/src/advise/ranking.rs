//! Step 6. Trade rules first; among ways equal by them the smallest worst ratio of modelled load to yardstick,
//! then energy, then variety, then the order in which the ways are listed.

use super::advice::Ranked;
use super::request::RecentUse;
use crate::reason::{Reason, ReasonId, Value};
use crate::rules::ways::Verdict;
use crate::way::Way;

/// Ways in order, and those that yielded for variety.
#[derive(Debug, Clone)]
pub(crate) struct Ranking {
    pub(crate) ways: Option<Ranked>,
    pub(crate) yielded: Vec<Reason>,
}

/// Ratios within this factor of each other count as about equal: the model is no finer. House rule.
const RATIO_STEP: f64 = 1.2;
/// Below this a ratio is as good as nothing. House rule.
const SMALLEST_RATIO: f64 = 0.05;
/// Energies nearer than this count as equal, kcal a lift. House rule.
const ENERGY_STEP: f64 = 0.1;

/// Ranks the usable ways. `None` when none of them may come first. `modelled` gives, for a way, the worst ratio
/// of load to yardstick and the energy of a lift; without it trade rules and variety rank alone.
pub(crate) fn rank(
    verdicts: &[Verdict],
    recent: &RecentUse,
    modelled: impl Fn(Way) -> Option<(f64, f64)>,
) -> Ranking {
    let mut usable: Vec<(Place, &Verdict)> = verdicts
        .iter()
        .filter(|verdict| verdict.usable())
        .map(|verdict| (Place::of(verdict, modelled(verdict.way)), verdict))
        .collect();
    usable.sort_by_key(|(place, verdict)| (*place, recent.mostly(verdict.way)));
    let yields = |place: &Place, way: Way| {
        usable
            .iter()
            .any(|(other, verdict)| verdict.way != way && other == place)
    };
    let yielded = usable
        .iter()
        .filter(|(place, verdict)| recent.mostly(verdict.way) && yields(place, verdict.way))
        .map(|(_, verdict)| Reason::of(ReasonId::Variety).with("way", Value::Way(verdict.way)))
        .collect();
    let order: Vec<Way> = usable.iter().map(|(_, verdict)| verdict.way).collect();
    let may_lead = usable
        .first()
        .is_some_and(|(_, verdict)| verdict.may_be_first());
    Ranking {
        ways: Ranked::from_list(&order).filter(|_| may_lead),
        yielded,
    }
}

/// Where a way stands before variety is asked. Smaller is better.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Place {
    not_first: bool,
    weight_against: i32,
    ratio_steps: i64,
    energy_steps: u64,
}

impl Place {
    fn of(verdict: &Verdict, modelled: Option<(f64, f64)>) -> Self {
        let steps = |(ratio, energy): (f64, f64)| {
            (
                (ratio.max(SMALLEST_RATIO).ln() / RATIO_STEP.ln()).round() as i64,
                (energy / ENERGY_STEP).round() as u64,
            )
        };
        // A way that the model cannot take goes behind its equals that it can.
        let (ratio_steps, energy_steps) = modelled.map_or((i64::MAX, u64::MAX), steps);
        Self {
            not_first: !verdict.may_be_first(),
            weight_against: -verdict.weight(),
            ratio_steps,
            energy_steps,
        }
    }
}
