//! The laws: what must hold for every input. Each returns what was broken, in words.

use lifting::advise::advice::{Advice, Caution, Outcome};
use lifting::advise::change::{Change, ChangeStep};
use lifting::advise::{Request, judge};
use lifting::body::{BackState, Balance, Condition, Kneeling, Region, WarningSign};
use lifting::plan::{Plan, Validity};
use lifting::quantity::{Kilograms, PainScore, Repetitions};
use lifting::reason::{ReasonId, Value};
use lifting::rules::warning_signs;
use lifting::task::LoadMass;
use lifting::way::Way;

/// A trifle, 5 lb, rounded up as trade practice says it: 2.3 kg.
const LIGHT_KG: f64 = 2.3;
/// The default lower edge of severe pain.
const SEVERE: u8 = 7;

/// Every law this advice breaks; empty when it keeps them all. For requests whose plan sets no pain bands.
#[must_use]
pub fn broken(request: &Request, advice: &Advice) -> Vec<String> {
    let mut broken = Vec::new();
    ways_for_this_body(request, advice, &mut broken);
    ways_for_this_task(request, advice, &mut broken);
    signs_and_plan(request, advice, &mut broken);
    always_an_answer(advice, &mut broken);
    changes_are_enough(request, advice, &mut broken);
    broken
}

/// Every way offered anywhere: now, or once changed.
fn offered(advice: &Advice) -> Vec<Way> {
    let once_changed = advice
        .outcome
        .changes()
        .iter()
        .flat_map(|change| change.ways.iter());
    advice
        .outcome
        .ways()
        .into_iter()
        .chain(once_changed)
        .collect()
}

fn severe(pain: Option<PainScore>) -> bool {
    pain.is_none_or(|pain| pain.value() >= SEVERE)
}

fn ways_for_this_body(request: &Request, advice: &Advice, broken: &mut Vec<String>) {
    let person = &request.person;
    let ways = offered(advice);
    let mut never = |way: Way, when: &str| {
        if ways.contains(&way) {
            broken.push(format!("{when}: never {}", way.id()));
        }
    };
    let back_unsure =
        person.back_state.is_none() && person.pain.back.is_none_or(|pain| pain.value() >= 4);
    let provoked = severe(person.pain.back)
        || back_unsure
        || matches!(
            person.back_state,
            Some(BackState::Volatile | BackState::Flare)
        );
    if provoked {
        never(Way::HipHinge, "back severe, volatile or in a flare");
        never(Way::FreeBend, "back severe, volatile or in a flare");
    }
    let (left, right) = (
        severe(person.pain.knee_left),
        severe(person.pain.knee_right),
    );
    if left || right {
        never(Way::Squat, "a severe knee");
    }
    if left && right {
        never(Way::HalfKneelingLunge, "both knees severe");
    }
    if matches!(person.can_kneel, None | Some(Kneeling::No)) {
        never(Way::HalfKneelingLunge, "kneeling not possible");
    }
    if person.can_kneel == Some(Kneeling::OneSide) && (left || right) {
        never(
            Way::HalfKneelingLunge,
            "kneels on one side, perhaps the severe one",
        );
    }
    let steady = person.balance == Some(Balance::Good) && person.fell_last_year != Some(true);
    if !steady {
        never(Way::GolfersLift, "balance not known to be good");
    }
    let hip = |pain: Option<PainScore>| pain.is_some_and(|pain| pain.value() >= SEVERE);
    if hip(person.pain.hip_left) && hip(person.pain.hip_right) {
        never(Way::GolfersLift, "no hip to stand on");
    }
    let brittle = [Condition::Osteoporosis, Condition::PastSpineFracture];
    if brittle
        .iter()
        .any(|condition| person.conditions.contains(condition))
    {
        never(Way::FreeBend, "weak bones or a past spine fracture");
    }
    if provoked
        && ways.contains(&Way::GolfersLift)
        && !advice.cautions.contains(&Caution::HoldSupport)
    {
        broken.push("a golfer's lift with a provoked back needs a hand on something".into());
    }
    if hip(person.pain.hip_left) || hip(person.pain.hip_right) {
        for first in firsts(advice) {
            if matches!(first, Way::HipHinge | Way::FreeBend) {
                broken.push(format!("a severe hip: never {} first", first.id()));
            }
        }
    }
    the_sore_leg(request, advice, broken);
}

/// A severe knee is never the one on the ground; a severe hip never the one that stands.
fn the_sore_leg(request: &Request, advice: &Advice, broken: &mut Vec<String>) {
    for reason in &advice.reasons {
        if !matches!(reason.id, ReasonId::KneelOn | ReasonId::StandOn) {
            continue;
        }
        for (_, value) in &reason.values {
            if let Value::Region(region) = value {
                let asked = request.person.pain.of(*region);
                let unknown_is_severe = matches!(region, Region::KneeLeft | Region::KneeRight);
                if asked.map_or(unknown_is_severe, |pain| pain.value() >= SEVERE) {
                    broken.push(format!(
                        "{} bears on a severe {}",
                        reason.id.id(),
                        region.id()
                    ));
                }
            }
        }
    }
    let one_severe =
        severe(request.person.pain.knee_left) != severe(request.person.pain.knee_right);
    let kneels = advice.outcome.ways().contains(&Way::HalfKneelingLunge);
    let told = advice
        .reasons
        .iter()
        .any(|reason| reason.id == ReasonId::KneelOn);
    if one_severe && kneels && !told {
        broken.push("with one severe knee the other has to be named".into());
    }
}

fn firsts(advice: &Advice) -> Vec<Way> {
    let changes = advice
        .outcome
        .changes()
        .iter()
        .map(|change| change.ways.first);
    advice
        .outcome
        .ways()
        .into_iter()
        .take(1)
        .chain(changes)
        .collect()
}

fn ways_for_this_task(request: &Request, advice: &Advice, broken: &mut Vec<String>) {
    let task = &request.task;
    let most = match task.mass {
        LoadMass::Known(mass) => Some(mass),
        LoadMass::Untested { high, .. } => high,
    };
    let now = advice.outcome.ways();
    if most.is_none_or(|mass| mass.value() > LIGHT_KG) {
        for way in [Way::FreeBend, Way::GolfersLift] {
            if now.contains(&way) {
                broken.push(format!("over 2.3 kg: never {}", way.id()));
            }
        }
    }
    let times = task.repetitions.map_or(u32::MAX, |times| times.count());
    if times > 2 && now.contains(&Way::FreeBend) {
        broken.push("more than twice: never free_bend".into());
    }
    let in_an_hour = task.span.map_or(1.0, |span| (60.0 / span.value()).min(1.0));
    let long_run = f64::from(times) * in_an_hour > 10.0;
    let first = now.first().copied();
    if long_run && matches!(first, Some(Way::Squat | Way::HalfKneelingLunge)) {
        broken.push("a long run: never squat or lunge first".into());
    }
    let index = advice
        .limit
        .as_ref()
        .and_then(|limit| limit.governing_index());
    let lifts = matches!(advice.outcome, Outcome::Lift { .. });
    if lifts && index.is_none_or(|index| index > 1.0) {
        broken.push("over the published limit, or no limit known: never a plain lift".into());
    }
    // An untested mass over a limit is never a plain lift (above); it is out of question from its lower end on.
    let share_that_is_certain = match task.mass {
        LoadMass::Known(_) => 1.0,
        LoadMass::Untested { low, high } => low
            .zip(high)
            .map_or(0.0, |(low, high)| low.value() / high.value().max(1e-9)),
    };
    if index.is_some_and(|index| index * share_that_is_certain >= 3.0 + 1e-9)
        && advice.outcome.permissiveness() > 1
    {
        broken.push("a lifting index of 3 or more: do not lift".into());
    }
}

/// Back and knees count as over a pain ceiling when they were not asked.
const fn asked_or_over(region: Region) -> bool {
    matches!(region, Region::Back | Region::KneeLeft | Region::KneeRight)
}

fn signs_and_plan(request: &Request, advice: &Advice, broken: &mut Vec<String>) {
    let person = &request.person;
    let care = person
        .signs
        .iter()
        .any(|sign| warning_signs::how_soon(*sign, person).is_some());
    if care != matches!(advice.outcome, Outcome::SeekCare { .. }) {
        broken.push("an open sign, and only that, means care first".into());
    }
    if care && !offered(advice).is_empty() {
        broken.push("no ways with an open sign".into());
    }
    let has_limit = request.plan.as_ref().is_some_and(|plan| {
        plan.validity == Validity::Valid && (plan.max.is_some() || !plan.max_by_height.is_empty())
    });
    let operated = person.signs.contains(&WarningSign::PostOpRecent);
    if operated && !care && !has_limit && advice.outcome != Outcome::Refuse {
        broken.push("recent surgery without a limit: refuse".into());
    }
    let Some(plan) = &request.plan else { return };
    let mass = match request.task.mass {
        LoadMass::Known(mass) => Some(mass),
        LoadMass::Untested { high, .. } => high,
    };
    let heavier = |max: Kilograms| mass.is_none_or(|mass| mass > max);
    if plan.max.is_some_and(heavier) && advice.outcome.permissiveness() > 1 {
        broken.push("over the plan's ceiling: do not lift".into());
    }
    how_often_the_plan_allows(request, plan, advice, broken);
    if let Some(ceiling) = plan.pain_ceiling {
        let over = Region::ALL
            .iter()
            .any(|region| match person.pain.of(*region) {
                Some(pain) => pain > ceiling,
                None => asked_or_over(*region) && ceiling < PainScore::WORST,
            });
        if over && advice.outcome.permissiveness() > 1 {
            broken.push("over the pain ceiling: do not lift".into());
        }
    }
    for way in offered(advice) {
        let listed = plan
            .allowed
            .as_ref()
            .is_none_or(|allowed| allowed.contains(&way));
        if plan.avoid.contains(&way) || !listed {
            broken.push(format!("the plan rules {} out", way.id()));
        }
    }
    let over = |heaviest: Kilograms| plan.max.is_some_and(|max| heaviest > max);
    if advice.heaviest_today.is_some_and(over) {
        broken.push("the heaviest load today is over the plan's ceiling".into());
    }
}

fn how_often_the_plan_allows(
    request: &Request,
    plan: &Plan,
    advice: &Advice,
    broken: &mut Vec<String>,
) {
    let lifts = advice.outcome.permissiveness() > 1;
    let hours = request.task.span.map_or(1.0, |span| span.value() / 60.0);
    let in_one_go = |times: Repetitions| f64::from(times.count()) / hours.max(1.0);
    let too_often = plan.times_a_bout.is_some_and(|most| {
        let asked = request.task.repetitions;
        asked.is_none_or(|times| in_one_go(times) > f64::from(most.count()))
    });
    if too_often && lifts {
        broken.push("more in one go than the plan allows: do not lift".into());
    }
    let done = request.bouts_today;
    if lifts && plan.bouts_a_day.is_some_and(|most| done >= most.count()) {
        broken.push("the plan's goes are done for today: do not lift".into());
    }
}

fn always_an_answer(advice: &Advice, broken: &mut Vec<String>) {
    if advice.reasons.is_empty() {
        broken.push("no reason".into());
    }
    let next_step = !advice.outcome.ways().is_empty() || !advice.alternatives.is_empty();
    if !next_step {
        broken.push("a dead end".into());
    }
    if matches!(&advice.outcome, Outcome::LiftWithChange { changes, .. } if changes.is_empty()) {
        broken.push("lift with change, and no change".into());
    }
    if advice.ruled_out.iter().any(|out| out.because.is_empty()) {
        broken.push("ruled out without a reason".into());
    }
    let offered = advice.outcome.ways();
    if advice
        .ruled_out
        .iter()
        .any(|out| offered.contains(&out.way))
    {
        broken.push("a way both offered and ruled out".into());
    }
}

/// In parts it is lifted as many times more, unless the bout is shortened.
fn parts_are_lifted_one_by_one(
    request: &Request,
    change: &Change,
    changed: &Request,
    broken: &mut Vec<String>,
) {
    let shortened = change
        .steps
        .iter()
        .any(|step| matches!(step, ChangeStep::ShortenBout { .. }));
    for step in &change.steps {
        if let ChangeStep::Split { parts, .. } = step {
            let before = request.task.repetitions.map(|times| times.count());
            let after = changed.task.repetitions.map(|times| times.count());
            if !shortened && after != before.map(|times| (times * parts).min(10_000)) {
                broken.push(format!("{before:?} in {parts} parts became {after:?}"));
            }
        }
    }
}

fn changes_are_enough(request: &Request, advice: &Advice, broken: &mut Vec<String>) {
    for change in advice.outcome.changes() {
        let mut changed = request.clone();
        changed.task = change.apply(&request.task);
        parts_are_lifted_one_by_one(request, change, &changed, broken);
        let then = judge(&changed).outcome;
        if !matches!(then, Outcome::Lift { .. }) {
            let steps: Vec<&str> = change.steps.iter().map(|step| step.id()).collect();
            broken.push(format!("{steps:?} applied gives {}", then.id()));
        }
    }
}
