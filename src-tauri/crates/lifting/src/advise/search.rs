//! The search for changes: the same judgement is asked again for the changed task, so that every change
//! listed is enough alone. Smallest first; only when no single change will do, the fewest together.

use super::advice::Ranked;
use super::assess::{Assessment, assess};
use super::change::{Change, ChangeStep};
use super::facts::{Facts, LIGHT, knuckle_height};
use super::request::Request;
use crate::limits::hse::{CARRY_WITHOUT_REST, TEAM_OF_THREE, TEAM_OF_TWO, team_guide};
use crate::quantity::{Centimetres, Kilograms, Repetitions};
use crate::rules::{plan, who};
use crate::task::{LoadMass, Task};
use crate::way::Way;

/// Heights and reaches are tried in steps of 5 cm: nobody measures finer. House rule.
const LENGTH_STEP_CM: f64 = 5.0;
/// Masses are told to a tenth of a kilogram, downward.
const MASS_STEPS_PER_KG: f64 = 10.0;
/// Nearer than this hands do not come (NIOSH 94-110, section 1.1: 25 cm).
const NEAREST_CM: f64 = 25.0;
/// More parts than this are a day's work of their own. House rule.
const MOST_PARTS: u32 = 10;
/// Bouts tried when a run is too long. House rule.
const BOUTS: [u32; 6] = [30, 20, 10, 5, 2, 1];
/// The longest bout that is no long run. House rule.
const TEN: Repetitions = Repetitions::of(10);

/// Changes that are enough, smallest first.
pub(crate) fn changes(request: &Request, facts: &Facts<'_>, now: &Assessment) -> Vec<Change> {
    let single: Vec<Change> = [
        find_mass(request, facts),
        bring_closer(request, facts),
        better_grip(request, facts),
        turn_feet(request, facts),
        raise_start(request, facts),
        raise_end(request, facts),
        lower_end(request, facts),
        carry_in_stages(request, facts),
        shorten_bout(request, facts),
        split(request, facts),
        lighten(request, facts),
        team(request, facts, now),
    ]
    .into_iter()
    .flatten()
    .collect();
    if single.iter().any(|change| !leaves_a_trifle(change)) {
        return single;
    }
    // "Leave 2 kg of it" alone would be true and of no use: the fewest steps together come before it, or in its
    // place where they are the same step with a larger figure and something besides.
    let together = together(request, facts);
    let repeated = |change: &Change| {
        let mut larger = together.iter().flat_map(|change| &change.steps);
        let mut steps = change.steps.iter();
        steps.all(|step| larger.any(|other| other.id() == step.id()))
    };
    let beside: Vec<Change> = single.into_iter().filter(|one| !repeated(one)).collect();
    together.into_iter().chain(beside).collect()
}

/// Whether nothing but a trifle would be left to lift.
fn leaves_a_trifle(change: &Change) -> bool {
    change.steps.iter().any(|step| match step {
        ChangeStep::FindMass { go_on_up_to: left } | ChangeStep::Lighten { to: left } => {
            *left <= LIGHT
        }
        _ => false,
    })
}

/// The ways left after the change, when the judgement then says `Lift`.
fn enough(request: &Request, task: &Task) -> Option<Ranked> {
    let facts = Facts::of(request, task);
    if !who::check(&facts).is_empty() {
        return None; // a limit that stands at one height only can open the door there and nowhere else
    }
    let assessment = assess(request, &facts);
    assessment.lift().cloned()
}

fn single(request: &Request, step: ChangeStep) -> Option<Change> {
    let ways = enough(request, &step.apply(&request.task))?;
    Some(Change::of(vec![step], ways))
}

/// Go on only up to the mass at which the judgement says `Lift`; the way used to test stays first.
fn find_mass(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    let LoadMass::Untested { low, .. } = request.task.mass else {
        return None;
    };
    let most = heaviest_that_lifts(
        request,
        &request.task,
        facts.mass.unwrap_or(Kilograms::clamped(Kilograms::MAX)),
    )?;
    if low.is_some_and(|low| low > most) {
        return None; // already known to be too much
    }
    let mut change = single(request, ChangeStep::FindMass { go_on_up_to: most })?;
    change.ways = test_way_first(&change.ways);
    Some(change)
}

fn test_way_first(ways: &Ranked) -> Ranked {
    let kneel = Way::HalfKneelingLunge;
    if !ways.others.contains(&kneel) {
        return ways.clone();
    }
    let others =
        std::iter::once(ways.first).chain(ways.others.iter().copied().filter(|way| *way != kneel));
    Ranked {
        first: kneel,
        others: others.collect(),
    }
}

fn bring_closer(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    steps_down(facts.reach.value(), NEAREST_CM)
        .find_map(|to| single(request, ChangeStep::BringCloser { to }))
}

fn better_grip(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    if !facts.bulky && facts.coupling != crate::task::Coupling::Poor {
        return None;
    }
    single(request, ChangeStep::BetterGrip)
}

fn turn_feet(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    if facts.task.twist.is_none_or(|twist| twist.value() <= 0.0) {
        return None;
    }
    single(request, ChangeStep::TurnFeet)
}

fn raise_start(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    steps_up(facts.start.value(), top_of_raising(facts))
        .find_map(|to| single(request, ChangeStep::RaiseStart { to }))
}

/// Somewhere higher to put it down, where it was said to go low.
fn raise_end(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    facts.task.end?;
    steps_up(facts.end.value(), top_of_raising(facts))
        .find_map(|to| single(request, ChangeStep::RaiseEnd { to }))
}

fn top_of_raising(facts: &Facts<'_>) -> f64 {
    (knuckle_height(facts.person).value() / LENGTH_STEP_CM).ceil() * LENGTH_STEP_CM
}

fn lower_end(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    facts.task.end?;
    steps_down(facts.end.value(), top_of_raising(facts))
        .find_map(|to| single(request, ChangeStep::LowerEnd { to }))
}

fn carry_in_stages(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    let to = CARRY_WITHOUT_REST;
    if facts.carried() <= to {
        return None;
    }
    single(request, ChangeStep::CarryInStages { to })
}

fn shorten_bout(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    let mut bouts = BOUTS.map(Repetitions::of).to_vec();
    bouts.extend(facts.times_a_bout());
    bouts.sort_by(|one, other| other.cmp(one));
    bouts
        .into_iter()
        .filter(|bout| *bout < facts.repetitions)
        .find_map(|to| single(request, ChangeStep::ShortenBout { to }))
}

fn split(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    if facts.task.divisible != Some(true) {
        return None;
    }
    let mass = facts.mass?;
    (2..=MOST_PARTS).find_map(|parts| {
        let each = Kilograms::clamped(mass.value() / f64::from(parts));
        let lifts = facts.task.repetitions.map(|count| count.times(parts));
        single(request, ChangeStep::Split { parts, each, lifts })
    })
}

fn lighten(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    if facts.task.divisible != Some(true) || !facts.tested {
        return None;
    }
    let to = heaviest_that_lifts(request, &request.task, facts.mass?)?;
    single(request, ChangeStep::Lighten { to })
}

/// Two together, or three where two are not enough. Counts only helpers whose own limit is known; the load must be
/// within two thirds of the sum of two limits, or half of the sum of three.
fn team(request: &Request, facts: &Facts<'_>, now: &Assessment) -> Option<Change> {
    let mass = facts.mass?;
    let own = Kilograms::from(now.limit.governing_rwl());
    let mut helpers: Vec<Kilograms> = facts.task.known_helpers().collect();
    helpers.sort_by(|a, b| b.value().total_cmp(&a.value()));
    let of = |people: usize, judged_at: f64| {
        let each: Vec<Kilograms> = std::iter::once(own)
            .chain(helpers.iter().copied().take(people - 1))
            .collect();
        let within = each.len() == people && team_guide(&each).is_some_and(|most| mass <= most);
        within.then(|| Kilograms::clamped(mass.value() * judged_at))
    };
    let two = of(2, 1.0 / (2.0 * TEAM_OF_TWO))
        .and_then(|judged_at| single(request, ChangeStep::SecondPerson { judged_at }));
    two.or_else(|| {
        let judged_at = of(3, 1.0 / (3.0 * TEAM_OF_THREE))?;
        single(request, ChangeStep::ThreePeople { judged_at })
    })
}

/// The fewest steps that are enough together. What is too heavy even in two parts is lightened instead.
fn together(request: &Request, facts: &Facts<'_>) -> Option<Change> {
    let steps = all_that_help(facts);
    fewest(request, steps.clone(), false).or_else(|| {
        let whole = |step: &ChangeStep| !matches!(step, ChangeStep::Split { .. });
        let may_be_lightened = facts.task.divisible == Some(true) && facts.tested;
        let steps = may_be_lightened.then(|| steps.into_iter().filter(whole).collect())?;
        fewest(request, steps, true)
    })
}

/// All these steps when they are enough, then each left out that can be, the most trouble first.
fn fewest(request: &Request, mut steps: Vec<ChangeStep>, lighten: bool) -> Option<Change> {
    let mut change = enough_together(request, &steps, lighten)?;
    for at in (0..steps.len()).rev() {
        let mut fewer = steps.clone();
        fewer.remove(at);
        if let Some(found) = enough_together(request, &fewer, lighten) {
            change = found;
            steps = fewer;
        }
    }
    Some(change)
}

/// Every step that could help, at its strongest, the least trouble first.
fn all_that_help(facts: &Facts<'_>) -> Vec<ChangeStep> {
    let knuckle = Centimetres::clamped(match plan::rules_out(facts, Way::Upright) {
        Some(_) => top_of_raising(facts) - LENGTH_STEP_CM, // a low way is still needed there
        None => top_of_raising(facts),
    });
    let mut steps = Vec::new();
    let close = Centimetres::clamped(NEAREST_CM + LENGTH_STEP_CM);
    if facts.reach > close {
        steps.push(ChangeStep::BringCloser { to: close });
    }
    if facts.bulky || facts.coupling == crate::task::Coupling::Poor {
        steps.push(ChangeStep::BetterGrip);
    }
    if facts.task.twist.is_some_and(|twist| twist.value() > 0.0) {
        steps.push(ChangeStep::TurnFeet);
    }
    if facts.start < knuckle {
        steps.push(ChangeStep::RaiseStart { to: knuckle });
    }
    if facts.task.end.is_some() && facts.end < knuckle {
        steps.push(ChangeStep::RaiseEnd { to: knuckle });
    }
    if facts.task.end.is_some() && facts.end > knuckle {
        steps.push(ChangeStep::LowerEnd { to: knuckle });
    }
    if facts.carried() > CARRY_WITHOUT_REST {
        steps.push(ChangeStep::CarryInStages {
            to: CARRY_WITHOUT_REST,
        });
    }
    let known = facts.mass.filter(|mass| facts.tested && *mass > LIGHT);
    let halved = known.filter(|_| facts.task.divisible == Some(true));
    let most_lifts = match halved {
        Some(_) => facts.repetitions.times(2),
        None => facts.repetitions,
    };
    let longest = facts.times_a_bout().map_or(TEN, |most| most.min(TEN));
    if most_lifts > longest {
        steps.push(ChangeStep::ShortenBout { to: longest });
    }
    if let Some(mass) = halved {
        steps.push(ChangeStep::Split {
            parts: 2,
            each: Kilograms::clamped(mass.value() / 2.0),
            lifts: facts.task.repetitions.map(|count| count.times(2)),
        });
    }
    steps
}

/// A bout is as long as it is said to be, whatever is in it: parts make it longer only where it is not shortened.
fn bouts_of_parts(steps: &mut [ChangeStep]) {
    let shortened = steps.iter().find_map(|step| match step {
        ChangeStep::ShortenBout { to } => Some(*to),
        _ => None,
    });
    for step in steps {
        if let (ChangeStep::Split { lifts, .. }, Some(_)) = (step, shortened) {
            *lifts = shortened;
        }
    }
}

/// The change of these steps when they are enough. Whatever else is done, a mass that is not known has to be
/// found out; how much may be gone on with, or left in, depends on the other steps.
fn enough_together(request: &Request, steps: &[ChangeStep], lighten: bool) -> Option<Change> {
    let mut steps = steps.to_vec();
    bouts_of_parts(&mut steps);
    let after = |steps: &[ChangeStep]| {
        steps
            .iter()
            .fold(request.task.clone(), |task, step| step.apply(&task))
    };
    let useful = |most: Kilograms| {
        // A trifle is of no use, unless it is all there is: see `leaves_a_trifle`.
        heaviest_that_lifts(request, &after(&steps), most)
            .filter(|left| *left > LIGHT || *left >= most)
    };
    match request.task.mass {
        LoadMass::Untested { low, high } => {
            let most = useful(high.unwrap_or(Kilograms::clamped(Kilograms::MAX)))?;
            if low.is_some_and(|low| low > most) {
                return None; // already known to be too much
            }
            steps.insert(0, ChangeStep::FindMass { go_on_up_to: most });
        }
        LoadMass::Known(mass) if lighten => {
            let to = useful(mass)?;
            steps.push(ChangeStep::Lighten { to });
        }
        LoadMass::Known(_) => {}
    }
    if steps.is_empty() {
        return None;
    }
    let mut ways = enough(request, &after(&steps))?;
    if matches!(request.task.mass, LoadMass::Untested { .. }) {
        ways = test_way_first(&ways);
    }
    Some(Change::of(steps, ways))
}

/// The heaviest known mass, up to `most`, at which this task is a plain `Lift`. By bisection: the judgement
/// never becomes more permissive with more mass.
pub(crate) fn heaviest_that_lifts(
    request: &Request,
    task: &Task,
    most: Kilograms,
) -> Option<Kilograms> {
    let lifts = |mass: Kilograms| {
        let mut known = task.clone();
        known.mass = LoadMass::Known(mass);
        enough(request, &known).is_some()
    };
    if lifts(most) {
        return Some(most);
    }
    let (mut fits, mut too_much) = (0, (most.value() * MASS_STEPS_PER_KG).ceil() as u32);
    while too_much - fits > 1 {
        let middle = fits + (too_much - fits) / 2;
        if lifts(Kilograms::clamped(f64::from(middle) / MASS_STEPS_PER_KG)) {
            fits = middle;
        } else {
            too_much = middle;
        }
    }
    (fits > 0).then(|| Kilograms::clamped(f64::from(fits) / MASS_STEPS_PER_KG))
}

fn steps_down(from: f64, to: f64) -> impl Iterator<Item = Centimetres> {
    let first = (from / LENGTH_STEP_CM).ceil() * LENGTH_STEP_CM - LENGTH_STEP_CM;
    std::iter::successors(Some(first), |at| Some(at - LENGTH_STEP_CM))
        .take_while(move |at| *at >= to)
        .map(Centimetres::clamped)
}

fn steps_up(from: f64, to: f64) -> impl Iterator<Item = Centimetres> {
    let first = (from / LENGTH_STEP_CM).floor() * LENGTH_STEP_CM + LENGTH_STEP_CM;
    std::iter::successors(Some(first), |at| Some(at + LENGTH_STEP_CM))
        .take_while(move |at| *at <= to)
        .map(Centimetres::clamped)
}
