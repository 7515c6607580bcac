//! What the posture model has to say: it orders ways that are equal by trade rules, and explains.

use super::advice::Outcome;
use super::facts::Facts;
use crate::energy::limits;
use crate::energy::predicted::STANDING_BENT_PER_KG;
use crate::loads::summary::{ACTION_LIMIT_N, WayLoads, worst_ratio};
use crate::reason::{Reason, ReasonId, Value};
use crate::way::Way;

/// The model says so only when another way is lighter on the low back by more than this share. House rule.
const CLEARLY_LIGHTER: f64 = 0.85;

/// For a way: the worst ratio of load to yardstick, and the energy of a lift where a long run makes it count.
pub(super) fn ratio_and_energy(
    facts: &Facts<'_>,
    loads: &[WayLoads],
    way: Way,
) -> Option<(f64, f64)> {
    let loads = loads.iter().find(|loads| loads.way == way)?;
    let energy = if facts.long_run() {
        loads.energy.value()
    } else {
        0.0
    };
    Some((worst_ratio(facts, loads), energy))
}

/// Reasons the model adds for the ways offered.
pub(super) fn reasons(facts: &Facts<'_>, outcome: &Outcome, loads: &[WayLoads]) -> Vec<Reason> {
    let offered = outcome.ways();
    let of = |way: Way| loads.iter().find(|loads| loads.way == way);
    let Some(first) = offered.first().and_then(|way| of(*way)) else {
        return Vec::new();
    };
    let mut reasons = Vec::new();
    let lightest = loads
        .iter()
        .filter(|other| offered.contains(&other.way))
        .min_by(|a, b| a.compression.value().total_cmp(&b.compression.value()));
    if let Some(lightest) =
        lightest.filter(|way| way.compression.value() < CLEARLY_LIGHTER * first.compression.value())
    {
        reasons.push(Reason::of(ReasonId::ModelDiffers).with("way", Value::Way(lightest.way)));
    }
    if first.compression.value() > ACTION_LIMIT_N {
        reasons.push(
            Reason::of(ReasonId::ForceOverActionLimit)
                .with("way", Value::Way(first.way))
                .with("force", Value::Force(first.compression)),
        );
    }
    reasons.extend(energy(facts, first));
    reasons
}

/// Lifting on and on at this pace, against the published energy for that long.
fn energy(facts: &Facts<'_>, loads: &WayLoads) -> Option<Reason> {
    let mass = facts.person.mass?;
    let rate = loads.energy.value() * facts.per_minute + STANDING_BENT_PER_KG * mass.value();
    let limit = limits::per_minute(facts.hours, facts.start).value();
    (facts.long_run() && rate > limit).then(|| {
        Reason::of(ReasonId::EnergyOverLimit)
            .with("rate", Value::Ratio(rate))
            .with("limit", Value::Ratio(limit))
    })
}
