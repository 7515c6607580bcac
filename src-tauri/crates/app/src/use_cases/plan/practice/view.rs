//! The plan day by day, in words: what to practise, the step that is offered, a flare-up.

use super::step::offer;
use super::{Today, flare, item_grams, log_of};
use crate::call::Call;
use crate::convert::moment::from_record;
use crate::failure::Failure;
use crate::use_cases::plan::lines::{call as call_text, limit, way_name};
use crate::walk::text::Reader;
use crate::words::{Arg, Rounding, message_id};
use lifting::progress::{Progress, Proposal};
use lifting::quantity::Kilograms;
use lifting::reason::ReasonId;
use record::{Pain, PracticeEntry, PracticeEvent};
use serde::Serialize;

/// What the plan asks for today.
#[derive(Debug, Serialize)]
pub(crate) struct DayView {
    practice: Vec<ItemView>,
    step: Option<StepView>,
    flare: FlareView,
}

#[derive(Debug, Serialize)]
struct ItemView {
    item: usize,
    name: String,
    text: String,
    today: Option<String>,
}

/// Where the level stands and what comes next.
#[derive(Debug, Serialize)]
struct StepView {
    text: String,
    why: Vec<String>,
    need: Option<String>,
    offer: Option<OfferView>,
}

#[derive(Debug, Serialize)]
struct OfferView {
    step: &'static str,
    take: String,
    leave: String,
}

#[derive(Debug, Serialize)]
struct FlareView {
    today: bool,
    steps: Vec<String>,
    often: Option<String>,
    /// Whom to call.
    call: Option<String>,
}

/// The day in words.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn day(call: &Call<'_>, today: &Today, reader: Reader<'_>) -> Result<DayView, Failure> {
    let log = log_of(call.vault()?, today.followed.plan.id)?;
    let is_today =
        |entry: &&PracticeEntry| from_record(entry.at).date_naive() == call.now.date_naive();
    let of_today: Vec<&PracticeEntry> = log
        .iter()
        .map(|(_, entry)| entry)
        .filter(is_today)
        .collect();
    let items = today.followed.plan.practice.iter().enumerate();
    let often = flare::is_often(call, today)?;
    Ok(DayView {
        practice: items
            .map(|(place, item)| ItemView {
                item: place,
                name: way_name(item.way, reader),
                text: item_text(today, item, reader),
                today: noted_today(&of_today, item, reader),
            })
            .collect(),
        step: step(call, today, reader)?,
        flare: FlareView {
            today: today.day.flare_today,
            steps: flare::steps(&today.followed.plan, reader),
            often: often.then(|| reader.words.text("plan-flare-often")),
            call: call_text(&today.followed.plan, reader),
        },
    })
}

/// What is practised, with today's level.
#[must_use]
pub(crate) fn item_text(today: &Today, item: &record::Practice, reader: Reader<'_>) -> String {
    reader.words.format(
        "plan-item",
        &[
            ("mass", limit(item_grams(today, item), reader).into()),
            ("sets", item.sets.into()),
            ("times", item.times.into()),
            ("days", item.days_a_week.into()),
        ],
    )
}

/// What was noted of it today, the last of it.
fn noted_today(
    log: &[&PracticeEntry],
    item: &record::Practice,
    reader: Reader<'_>,
) -> Option<String> {
    let mut latest = log.iter().rev();
    let entry = latest.find(|entry| {
        matches!(entry.event, PracticeEvent::Done | PracticeEvent::Left)
            && entry.way == Some(item.way)
    })?;
    Some(match (entry.event, entry.pain.map(Pain::rating)) {
        (PracticeEvent::Left, _) => reader.words.text("plan-item-left"),
        (_, Some(pain)) => reader
            .words
            .format("plan-item-done-pain", &[("pain", pain.into())]),
        (_, None) => reader.words.text("plan-item-done"),
    })
}

fn step(call: &Call<'_>, today: &Today, reader: Reader<'_>) -> Result<Option<StepView>, Failure> {
    let Some(level) = today.day.level else {
        return Ok(None);
    };
    let (proposal, offered) = offer(call, today)?;
    Ok(Some(StepView {
        text: step_text(today, level, &proposal, offered, reader),
        why: why(today, &proposal, offered, reader),
        need: need(today, &proposal, reader),
        offer: offered.map(|_| OfferView {
            step: proposal.progress.id(),
            take: reader
                .words
                .text(&message_id("plan-take", proposal.progress.id())),
            leave: reader
                .words
                .text(&message_id("plan-leave", proposal.progress.id())),
        }),
    }))
}

/// The line that says what to do about the level.
fn step_text(
    today: &Today,
    level: Kilograms,
    proposal: &Proposal,
    offered: Option<Kilograms>,
    reader: Reader<'_>,
) -> String {
    let id = match (today.day.flare_today, offered, proposal.progress) {
        (true, _, _) => "plan-step-flare",
        (_, Some(_), Progress::StepUp) => "plan-step-up",
        (_, Some(_), Progress::StepDown) => "plan-step-down",
        _ => "plan-step-stay",
    };
    let next = offered.unwrap_or(level);
    let more = Kilograms::clamped((next.value() - level.value()).abs());
    let args = [("mass", shown(next, reader)), ("more", shown(more, reader))];
    reader.words.format(id, &args)
}

fn why(
    today: &Today,
    proposal: &Proposal,
    offered: Option<Kilograms>,
    reader: Reader<'_>,
) -> Vec<String> {
    let words = reader.words;
    if offered.is_none() && proposal.progress != Progress::Hold && !today.day.flare_today {
        let id = if today.day.plan.steps_locked {
            "plan-step-ask"
        } else {
            "plan-step-was-left"
        };
        return vec![words.text(id)];
    }
    let reasons = proposal.reasons.iter();
    // What is not complete yet is said as what is still needed.
    let said = reasons.filter(|reason| {
        !matches!(
            reason.id,
            ReasonId::TooFewSessions | ReasonId::HistoryIncomplete
        )
    });
    said.map(|reason| words.reason(reason, reader.units))
        .collect()
}

/// What a step up still needs, where one is open at all.
fn need(today: &Today, proposal: &Proposal, reader: Reader<'_>) -> Option<String> {
    let closed = |id: ReasonId| {
        matches!(
            id,
            ReasonId::AtCeiling
                | ReasonId::StepsLocked
                | ReasonId::PlanExpired
                | ReasonId::NoLevelKnown
        )
    };
    let is_open = proposal.progress == Progress::Hold
        && !proposal.reasons.iter().any(|reason| closed(reason.id));
    let count = today.day.still_needed();
    if !is_open || count == 0 {
        return None;
    }
    let more = today.day.next_step()?;
    let args = [("count", count.into()), ("more", shown(more, reader))];
    Some(reader.words.format("plan-step-need", &args))
}

fn shown(mass: Kilograms, reader: Reader<'_>) -> Arg {
    let text = reader
        .words
        .mass(mass.value(), reader.units, Rounding::Down);
    Arg::text(text)
}
