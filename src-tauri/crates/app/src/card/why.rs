//! The one line that says why: of all reasons, the one or two that decided.

use super::build::Reader;
use super::given::Given;
use lifting::advise::advice::Outcome;
use lifting::reason::{Reason, ReasonId, Sure};
use lifting::way::Way;

use ReasonId as Id;

/// What ends a task as it stands, most telling first.
const AGAINST: [ReasonId; 14] = [
    Id::OverPlanCeiling,
    Id::OverPainCeiling,
    Id::PainNotAsked,
    Id::PlanBoutsDone,
    Id::OverPlanTimes,
    Id::PregnancyLowOrOverhead,
    Id::HerniaHeavy,
    Id::HighAndUnsteady,
    Id::HighAndShoulder,
    Id::IndexOverThree,
    Id::OutsideEquation,
    Id::OnlySecondBestLeft,
    Id::NoWayLeft,
    Id::NoChangeFound,
];
/// What asks for a change first, most telling first.
const CHANGE_FIRST: [ReasonId; 5] = [
    Id::MassUnknown,
    Id::IndexOverOne,
    Id::FarReach,
    Id::Bulky,
    Id::LongCarry,
];
/// What the body says today, most telling first.
const TODAY: [ReasonId; 21] = [
    Id::BackFlare,
    Id::BackSevere,
    Id::BackVolatile,
    Id::KneeSevere,
    Id::HipSevere,
    Id::CannotKneel,
    Id::NoKneeToKneelOn,
    Id::BalanceNotGood,
    Id::FellLastYear,
    Id::BackNotAsked,
    Id::BackStateNotAsked,
    Id::KneeNotAsked,
    Id::KneelNotAsked,
    Id::KneelSideNotKnown,
    Id::BalanceNotAsked,
    Id::NewKneeNoKneeling,
    Id::ReplacedHip,
    Id::NoLoadedRounding,
    Id::BackSurgery,
    Id::WornKnee,
    Id::WornHip,
];
/// What the plan says of the ways.
const PLAN: [ReasonId; 3] = [Id::PlanPrefers, Id::PlanNotListed, Id::PlanAvoids];
const BACK: &[ReasonId] = &[
    Id::BackFlare,
    Id::BackSevere,
    Id::BackVolatile,
    Id::BackNotAsked,
    Id::BackStateNotAsked,
];
const KNEE: &[ReasonId] = &[Id::KneeSevere, Id::WornKnee, Id::KneeNotAsked];

/// The line.
pub(super) fn line(advice: &Given, reader: &Reader<'_>) -> String {
    let chosen = chosen(advice);
    let clause = |reason: &Reason| clause(advice, reason, reader).into();
    match chosen.as_slice() {
        [] => String::new(),
        [only] => reader.words.format("why-one", &[("first", clause(only))]),
        [first, second, ..] => {
            let values = [("first", clause(first)), ("second", clause(second))];
            reader.words.format("why-two", &values)
        }
    }
}

/// A reason as a clause of the line. What the plan says of other ways names them: the line stands beside the
/// way that is offered, and "it" would mean that one.
fn clause(advice: &Given, reason: &Reason, reader: &Reader<'_>) -> String {
    let words = reader.words;
    let lifts = matches!(advice.outcome, Outcome::Lift { .. });
    match (reason.id, excluded_by(Id::PlanAvoids, advice).as_slice()) {
        (Id::PlanAvoids, [only]) => {
            let way = words.way_in_sentence(*only).into();
            words.format("why-plan-rules-out-one", &[("way", way)])
        }
        (Id::PlanAvoids, _) => words.text("why-plan-rules-out-some"),
        (Id::PlanNotListed, _) if lifts => words.text("why-plan-lists"),
        (Id::PlanNotListed, _) => words.text("why-plan-lists-no-other"),
        _ => words.because(reason, reader.units),
    }
}

/// The ways that a reason of the plan rules out.
fn excluded_by(id: ReasonId, advice: &Given) -> Vec<Way> {
    advice
        .ruled_out
        .iter()
        .filter(|out| out.because.contains(&id))
        .map(|out| out.way)
        .collect()
}

/// The message for how sure the whole advice is.
pub(super) fn sure(advice: &Given) -> &'static str {
    let Some(first) = chosen(advice).into_iter().next() else {
        return "sure-line-house";
    };
    let lifts = matches!(advice.outcome, Outcome::Lift { .. });
    match (first.id.source(), first.id.sure()) {
        ("red_flags", _) => "sure-line-sign",
        ("plan", _) => "sure-line-plan",
        ("common_practice", _) if lifts => "sure-line-practice",
        ("common_practice", _) => "sure-line-common",
        (_, Sure::Published) => "sure-line-published",
        _ => "sure-line-house",
    }
}

/// The one or two reasons that decided.
fn chosen(advice: &Given) -> Vec<Reason> {
    match &advice.outcome {
        Outcome::Lift { ways } => for_lift(advice, ways.first),
        Outcome::LiftWithChange { .. } => of_list(advice, &CHANGE_FIRST, 2),
        Outcome::DoNotLift { .. } => against(advice),
        Outcome::SeekCare { .. } | Outcome::Refuse => {
            advice.reasons.iter().take(1).cloned().collect()
        }
    }
}

fn against(advice: &Given) -> Vec<Reason> {
    let first = of_list(advice, &AGAINST, 1);
    let no_way = first.iter().any(|reason| reason.id == Id::NoWayLeft);
    if !no_way {
        return first;
    }
    let mut body = of_list(advice, &PLAN, 1);
    if body.is_empty() {
        body = of_list(advice, &TODAY, 1);
    }
    body.extend(first);
    body
}

/// A plan's word first; else the body's word with what the way does about it; else what speaks for the way.
fn for_lift(advice: &Given, way: Way) -> Vec<Reason> {
    let speaks = speaks_for(advice, way);
    if way == Way::Upright {
        return speaks.into_iter().collect();
    }
    let mut reasons = of_list(advice, &PLAN, 1);
    if reasons.is_empty() {
        let eased = speaks
            .as_ref()
            .map_or(&[][..], |reason| eased_by(reason.id, way));
        reasons = of_list(advice, eased, 1);
    }
    reasons.extend(speaks);
    reasons
}

/// What hurts, that this way is chosen for.
fn eased_by(id: ReasonId, way: Way) -> &'static [ReasonId] {
    match (id, way) {
        (Id::SquatForBack | Id::LungeForBack, _) => BACK,
        (Id::HingeEasesKnee, _) | (_, Way::FreeBend | Way::GolfersLift) => KNEE,
        (Id::LungeToTest, _) => &[Id::MassUnknown],
        (Id::HingeLongRun | Id::GolferLongRun, _) => &[Id::LongRun],
        _ => &[],
    }
}

/// What speaks for a way: the best reason met, or what the way is always good for.
pub(super) fn speaks_for(advice: &Given, way: Way) -> Option<Reason> {
    let (candidates, always): (&[ReasonId], Option<ReasonId>) = match way {
        Way::HipHinge => (
            &[Id::HingeEasesKnee, Id::HingeLongRun, Id::HingeMovesMost],
            Some(Id::HingeEasesKnee),
        ),
        Way::Squat => (
            &[Id::SquatForBack, Id::SquatFewLifts],
            Some(Id::SquatForBack),
        ),
        Way::HalfKneelingLunge => (
            &[
                Id::LungeToTest,
                Id::LungeToHug,
                Id::LungeForBack,
                Id::LungeStudiesDiffer,
            ],
            Some(Id::LungeForBack),
        ),
        Way::FreeBend => (&[Id::FreeBendLight], None),
        Way::GolfersLift => (&[Id::GolferLongRun, Id::GolferLight], None),
        Way::Upright => (&[Id::NoLowWayNeeded], Some(Id::NoLowWayNeeded)),
    };
    of_list(advice, candidates, 1)
        .into_iter()
        .next()
        .or_else(|| always.map(Reason::of))
}

/// Ways that this reason keeps from coming first.
pub(super) const fn holds_back(id: ReasonId) -> &'static [Way] {
    match id {
        Id::LongRun => &[Way::Squat, Way::HalfKneelingLunge],
        Id::HipSevere => &[Way::HipHinge, Way::FreeBend],
        Id::WornHip => &[Way::HipHinge, Way::FreeBend],
        Id::WornKnee => &[Way::Squat],
        _ => &[],
    }
}

fn of_list(advice: &Given, list: &[ReasonId], most: usize) -> Vec<Reason> {
    list.iter()
        .flat_map(|id| advice.reasons.iter().filter(move |reason| reason.id == *id))
        .take(most)
        .cloned()
        .collect()
}
