//! What a plan says of ways to lift.

use record::{Plan, PlanWay, Way, WayStanding, Wording};

/// Ways with this standing, in the order in which they are named.
pub(crate) fn of(plan: &Plan, standing: WayStanding) -> impl Iterator<Item = Way> + '_ {
    let said = plan.ways.iter();
    said.filter(move |said| said.standing == standing)
        .map(|said| said.way)
}

/// Whether a way has this standing.
#[must_use]
pub(crate) fn has(plan: &Plan, way: Way, standing: WayStanding) -> bool {
    of(plan, standing).any(|other| other == way)
}

/// Gives this standing to exactly these ways. What was said of why stays with those that keep it.
pub(crate) fn set(plan: &mut Plan, standing: WayStanding, ways: &[Way]) {
    let before: Vec<PlanWay> = plan
        .ways
        .iter()
        .filter(|said| said.standing == standing)
        .cloned()
        .collect();
    plan.ways.retain(|said| said.standing != standing);
    plan.ways.extend(ways.iter().map(|way| {
        PlanWay {
            way: *way,
            standing,
            why: before
                .iter()
                .find(|said| said.way == *way)
                .and_then(|said| said.why.clone()),
        }
    }));
}

/// Why a way is ruled out, if it is said.
#[must_use]
pub(crate) fn why(plan: &Plan, way: Way) -> Option<&Wording> {
    let said = plan.ways.iter();
    said.filter(|said| said.way == way && said.standing == WayStanding::NotAllowed)
        .find_map(|said| said.why.as_ref())
}

/// Says why a way is ruled out; whether it is.
pub(crate) fn set_why(plan: &mut Plan, way: Way, why: Option<Wording>) -> bool {
    let said = plan.ways.iter_mut();
    let found = said
        .filter(|said| said.way == way && said.standing == WayStanding::NotAllowed)
        .last();
    match found {
        Some(said) => {
            said.why = why;
            true
        }
        None => false,
    }
}
