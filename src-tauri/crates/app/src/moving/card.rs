//! The answer on moving somebody, in words.

use crate::card::{CardReason, IdText};
use crate::walk::text::Reader;
use crate::words::{Arg, Rounding, lower_first, message_id};
use lifting::advise::advice::{HowSoon, Urgency};
use lifting::reason::{Reason, ReasonId as Id, Sure};
use lifting::transfer::TransferRequest;
use lifting::transfer::advice::{MoveAdvice, MoveOutcome, Offer};
use lifting::transfer::client::{Move, Transfer};
use lifting::transfer::way::PeopleWay;
use serde::Serialize;

/// Cautions shown before the fold: more are not read.
const FIRST_CAUTIONS: usize = 3;
/// Steps and words of a way.
const PARTS: std::ops::RangeInclusive<u8> = 1..=3;
/// The same for a person who is guided in a bed or a chair: the steps of a rise from the floor do not fit there.
const GUIDED_STEPS: [&str; 3] = [
    "care-guided-step-1",
    "care-guided-step-2",
    "care-guided-step-3",
];
/// See [`GUIDED_STEPS`].
const GUIDED_WORDS: [&str; 3] = [
    "care-guided-word-1",
    "care-guided-word-2",
    "care-guided-word-3",
];

/// Reasons that end a move before any way is looked at, most telling first.
const ENDS: [Id; 14] = [
    Id::ClientSignEmergency,
    Id::FloorHurt,
    Id::ClientSignToday,
    Id::FloorNotChecked,
    Id::ClientSaysNo,
    Id::CarePlanDiffers,
    Id::NeverCatch,
    Id::WorkerIsChild,
    Id::SurgeryNoLimit,
    Id::PregnancyComplicated,
    Id::ChildNoPlan,
    Id::PlanTooOld,
    Id::SignEmergency,
    Id::SignSameDay,
];
/// What keeps every way from being offered, most telling first.
const KEEPS: [Id; 14] = [
    Id::CarePlanMoreWorkers,
    Id::TooFewWorkers,
    Id::EquipmentMissing,
    Id::WorkerBearsNothing,
    Id::ShareOverLimit,
    Id::ShareNotKnown,
    Id::ClientMassNotKnown,
    Id::BeltAlone,
    Id::HeldTooLong,
    Id::LowWorkTooMuch,
    Id::DoesNotFollow,
    Id::LegsDoNotCarry,
    Id::CannotAlone,
    Id::CarePlanOtherWay,
];
/// Where sources differ.
const DIFFER: [Id; 4] = [
    Id::BeltByPlan,
    Id::HandsByPlan,
    Id::BeltAlone,
    Id::NoLiftByHand,
];

/// The card.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct MoveCard {
    pub(crate) outcome: &'static str,
    pub(crate) urgency: &'static str,
    headline: String,
    why: String,
    pub(crate) ways: Vec<MoveWay>,
    checks: Vec<IdText>,
    stop_signs: Vec<IdText>,
    cautions: Vec<IdText>,
    more_cautions: Vec<IdText>,
    alternatives: Vec<IdText>,
    disagree: Option<String>,
    /// Said when the care plan is past its date.
    plan_old: Option<String>,
    own: Vec<String>,
    limit_text: Option<String>,
    ruled_out: Vec<RuledOutWay>,
    reasons: Vec<CardReason>,
    sure: String,
    who: Vec<IdText>,
    foot: String,
    speech: Vec<String>,
    rule_version: &'static str,
}

/// A way that is offered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct MoveWay {
    pub(crate) way: &'static str,
    name: String,
    gloss: String,
    words: Vec<String>,
    steps: Vec<String>,
    people: String,
    pub(crate) workers: u32,
    pub(crate) equipment: Vec<IdText>,
}

/// A way that is not.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
struct RuledOutWay {
    way: &'static str,
    name: String,
    why: String,
}

/// The card of an advice.
#[must_use]
pub(crate) fn card(reader: Reader<'_>, request: &TransferRequest, advice: &MoveAdvice) -> MoveCard {
    let moving = &request.moving;
    let mut cautions = of_ids(
        reader,
        "caution",
        advice.cautions.iter().map(|one| one.id()),
    );
    let more_cautions = cautions.split_off(cautions.len().min(FIRST_CAUTIONS));
    let ways: Vec<MoveWay> = advice
        .outcome
        .offers()
        .into_iter()
        .map(|offer| way(reader, moving, offer))
        .collect();
    let checks = of_ids(
        reader,
        "move-check",
        advice.checks.iter().map(|one| one.id()),
    );
    let headline = headline(reader, moving, advice);
    MoveCard {
        outcome: advice.outcome.id(),
        urgency: advice.outcome.urgency().id(),
        why: why(reader, advice),
        stop_signs: of_ids(
            reader,
            "move-stop",
            advice.stop_signs.iter().map(|one| one.id()),
        ),
        alternatives: of_ids(
            reader,
            "move-else",
            advice.alternatives.iter().map(|one| one.id()),
        ),
        disagree: advice
            .reasons
            .iter()
            .find(|reason| DIFFER.contains(&reason.id))
            .map(|reason| reader.words.reason(reason, reader.units)),
        plan_old: advice
            .reasons
            .iter()
            .find(|reason| reason.id == Id::CarePlanOld)
            .map(|reason| reader.words.reason(reason, reader.units)),
        own: super::own_load::lines(reader, request, advice),
        limit_text: limit_text(reader, advice),
        ruled_out: ruled_out(reader, advice),
        reasons: reasons(reader, advice),
        sure: reader.words.text(sure(advice)),
        who: who(reader, advice),
        foot: reader.words.text("foot"),
        speech: speech(&headline, &ways, &checks),
        rule_version: env!("CARGO_PKG_VERSION"),
        headline,
        ways,
        checks,
        cautions,
        more_cautions,
    }
}

fn of_ids(
    reader: Reader<'_>,
    prefix: &str,
    ids: impl Iterator<Item = &'static str>,
) -> Vec<IdText> {
    ids.map(|id| IdText {
        id: id.to_owned(),
        text: reader.words.text(&message_id(prefix, id)),
    })
    .collect()
}

fn way(reader: Reader<'_>, moving: &Transfer, offer: &Offer) -> MoveWay {
    let words = reader.words;
    let stem = message_id("way", offer.way.id());
    let seated = offer.way == PeopleWay::GuidedSelfRise && moving.what != Move::FloorToChair;
    let parts = |part: &str, own: [&str; 3]| -> Vec<String> {
        if seated {
            own.iter().map(|id| words.text(id)).collect()
        } else {
            PARTS
                .map(|at| words.text(&format!("{stem}-{part}-{at}")))
                .collect()
        }
    };
    MoveWay {
        way: offer.way.id(),
        name: words.text(&stem),
        gloss: words.text(&format!("{stem}-gloss")),
        words: parts("word", GUIDED_WORDS),
        steps: parts("cue", GUIDED_STEPS),
        people: words.format("care-people", &[("workers", Arg::count(offer.workers))]),
        workers: offer.workers,
        equipment: of_ids(
            reader,
            "equipment",
            offer.equipment.iter().map(|one| one.id()),
        ),
    }
}

fn headline(reader: Reader<'_>, moving: &Transfer, advice: &MoveAdvice) -> String {
    let own_sign = moving.signs.is_empty() && advice.reasons.iter().all(|one| !is_theirs(one.id));
    match &advice.outcome {
        MoveOutcome::GoAhead { ways } => {
            let name = reader.words.text(&message_id("way", ways.first.way.id()));
            let args = [("way", Arg::Text(lower_first(&name)))];
            reader.words.format("care-outcome-lift", &args)
        }
        MoveOutcome::DoNotMove { .. } if moving.what == Move::Catch => {
            reader.words.text("care-outcome-catch")
        }
        MoveOutcome::DoNotMove { .. } => reader.words.text("care-outcome-do-not-lift"),
        MoveOutcome::SeekCare { .. } if own_sign => reader.words.text("care-outcome-own-sign"),
        MoveOutcome::SeekCare { .. } => reader.words.text("care-outcome-seek-care"),
        MoveOutcome::Refuse => reader.words.text("outcome-refuse"),
    }
}

/// Whether a reason is about the person who is moved.
const fn is_theirs(id: Id) -> bool {
    matches!(
        id,
        Id::ClientSignEmergency | Id::ClientSignToday | Id::FloorHurt
    )
}

fn why(reader: Reader<'_>, advice: &MoveAdvice) -> String {
    let clause = |reason: &Reason| Arg::Text(reader.words.because(reason, reader.units));
    match chosen(advice).as_slice() {
        [] => String::new(),
        [only] => reader.words.format("why-one", &[("first", clause(only))]),
        [first, second, ..] => {
            let args = [("first", clause(first)), ("second", clause(second))];
            reader.words.format("why-two", &args)
        }
    }
}

/// The one or two reasons that decided.
fn chosen(advice: &MoveAdvice) -> Vec<&Reason> {
    let of = |list: &[Id]| {
        let found = list
            .iter()
            .find_map(|id| advice.reasons.iter().find(|reason| reason.id == *id));
        found.into_iter().collect::<Vec<_>>()
    };
    match &advice.outcome {
        MoveOutcome::GoAhead { ways } => {
            let mut found = of(&[Id::CarePlanCovers]);
            found.extend(of(&[suits(ways.first.way)]));
            found
        }
        _ => {
            let mut found = of(&ENDS);
            if found.is_empty() {
                found = of(&KEEPS);
                found.extend(of(&[Id::NoMoveLeft]));
            }
            if found.is_empty() {
                found.extend(advice.reasons.first());
            }
            found
        }
    }
}

/// What speaks for a way.
const fn suits(way: PeopleWay) -> Id {
    match way {
        PeopleWay::StandBy => Id::StandBySuits,
        PeopleWay::StandPivotBelt => Id::BeltSuits,
        PeopleWay::StandAid => Id::StandAidSuits,
        PeopleWay::SlideBoard => Id::SlideBoardSuits,
        PeopleWay::HoistTwo => Id::HoistSuits,
        PeopleWay::SlideSheetTwo => Id::SlideSheetSuits,
        PeopleWay::GuidedSelfRise => Id::GuidedSuits,
        PeopleWay::ManualLift => Id::HoldSuits,
    }
}

fn sure(advice: &MoveAdvice) -> &'static str {
    let Some(first) = chosen(advice).first().map(|reason| reason.id) else {
        return "sure-line-house";
    };
    match (first.source(), first.sure()) {
        ("plan", _) => "care-sure-plan",
        ("red_flags", _) => "sure-line-sign",
        (_, Sure::Published) => "care-sure-published",
        _ => "sure-line-house",
    }
}

fn limit_text(reader: Reader<'_>, advice: &MoveAdvice) -> Option<String> {
    let borne = advice.outcome.offers().iter().any(|offer| {
        matches!(
            offer.way,
            PeopleWay::ManualLift | PeopleWay::StandPivotBelt | PeopleWay::SlideBoard
        )
    });
    let limit = advice.limit.as_ref().filter(|_| borne)?;
    let shown = reader
        .words
        .mass(limit.each.value(), reader.units, Rounding::Down);
    Some(
        reader
            .words
            .format("care-limit", &[("limit", Arg::Text(shown))]),
    )
}

fn ruled_out(reader: Reader<'_>, advice: &MoveAdvice) -> Vec<RuledOutWay> {
    let clause = |id: &Id| {
        let met = advice.reasons.iter().find(|reason| reason.id == *id);
        let reason = met.cloned().unwrap_or_else(|| Reason::of(*id));
        crate::words::sentence(&reader.words.because(&reason, reader.units))
    };
    let ways = advice.ruled_out.iter().map(|out| RuledOutWay {
        way: out.way.id(),
        name: reader.words.text(&message_id("way", out.way.id())),
        why: out.because.first().map(clause).unwrap_or_default(),
    });
    ways.collect()
}

fn reasons(reader: Reader<'_>, advice: &MoveAdvice) -> Vec<CardReason> {
    let plain = crate::card::Reader {
        words: reader.words,
        units: reader.units,
        stature: None,
    };
    let mut shown: Vec<CardReason> = Vec::new();
    for reason in &advice.reasons {
        let mut one = crate::card::reason(reason, &plain);
        if is_care_plan(reason.id) {
            one.authority_text = reader.words.text("care-authority-plan");
        }
        if !shown.contains(&one) {
            shown.push(one);
        }
    }
    shown
}

/// Whether a reason is the care plan's word, not that of the worker's own plan.
const fn is_care_plan(id: Id) -> bool {
    matches!(
        id,
        Id::CarePlanCovers
            | Id::CarePlanOld
            | Id::CarePlanDiffers
            | Id::CarePlanOtherWay
            | Id::CarePlanMoreWorkers
            | Id::BeltByPlan
            | Id::HandsByPlan
    )
}

fn who(reader: Reader<'_>, advice: &MoveAdvice) -> Vec<IdText> {
    let ids: &[&'static str] = match (&advice.outcome, advice.outcome.urgency()) {
        (_, Urgency::Emergency) => &["emergency_number", "care_office"],
        (
            MoveOutcome::SeekCare {
                how_soon: HowSoon::SameDay,
            },
            _,
        ) => &["clinician_today", "nurse_line", "care_office"],
        (MoveOutcome::Refuse, _) => &["clinician", "care_office"],
        (MoveOutcome::DoNotMove { .. }, _) => &["care_office"],
        _ => &[],
    };
    of_ids(reader, "who", ids.iter().copied())
}

/// What is read aloud: how, then what to look at first, then the steps.
fn speech(headline: &str, ways: &[MoveWay], checks: &[IdText]) -> Vec<String> {
    let Some(first) = ways.first() else {
        return Vec::new();
    };
    let head = [headline.to_owned(), first.people.clone()];
    head.into_iter()
        .chain(checks.iter().map(|check| check.text.clone()))
        .chain(first.steps.iter().cloned())
        .collect()
}
