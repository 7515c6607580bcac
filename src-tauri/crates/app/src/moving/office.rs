//! The text for the office: facts only. No judgement of the person, and nothing of the worker's own body.

use super::flow::MoveWalk;
use super::ids::MoveQuestion as Q;
use super::options::TRAINING;
use super::request::there;
use super::text;
use crate::walk::answer::Answer;
use crate::walk::text::Reader;
use crate::words::{Arg, message_id};
use chrono::{DateTime, FixedOffset};
use lifting::reason::ReasonId as Id;
use lifting::transfer::advice::{MoveAdvice, MoveOutcome};
use lifting::transfer::client::Move;
use lifting::transfer::moves::takings;
use std::collections::BTreeSet;

/// Questions whose answers are facts for the office, in order.
const FACTS: [Q; 12] = [
    Q::Independent,
    Q::Limb,
    Q::Able,
    Q::Legs,
    Q::Follows,
    Q::Arms,
    Q::Help,
    Q::Mass,
    Q::Hold,
    Q::Reclines,
    Q::Here,
    Q::Harder,
];

/// What the text is about.
pub(crate) struct About<'a> {
    /// The person's code.
    pub(crate) code: &'a str,
    /// The walk.
    pub(crate) walk: &'a MoveWalk<'a>,
    /// The advice it led to.
    pub(crate) advice: &'a MoveAdvice,
    /// What the worker is trained on.
    pub(crate) trained: &'a BTreeSet<String>,
    /// The time of the text.
    pub(crate) now: DateTime<FixedOffset>,
}

/// The text, a line each.
#[must_use]
pub(crate) fn lines(reader: Reader<'_>, about: &About<'_>) -> Vec<String> {
    let words = reader.words;
    let walk = about.walk;
    let say =
        |id: &str, name: &'static str, text: String| words.format(id, &[(name, Arg::Text(text))]);
    let head = [
        ("code", Arg::text(about.code)),
        ("what", Arg::Text(text::move_name(reader, walk.what.id()))),
    ];
    let when = [
        ("day", Arg::Text(words.day_text(about.now.date_naive()))),
        ("time", Arg::Text(words.time_text(about.now.time()))),
    ];
    let mut lines = vec![
        words.format("care-office-head", &head),
        words.format("care-office-when", &when),
    ];
    if !matches!(about.advice.outcome, MoveOutcome::GoAhead { .. }) {
        lines.push(words.text("care-office-not-done"));
    }
    if walk.what == Move::FloorToChair {
        lines.push(words.text("care-office-floor"));
        lines.extend(
            answered(walk, Q::Unhurt).map(|given| text::line(reader, Q::Unhurt, walk.what, given)),
        );
    }
    if walk.chose(Q::New, "they_say_no") {
        lines.push(words.text("care-office-says-no"));
    }
    if let Some(Answer::Choices(signs)) = answered(walk, Q::Signs)
        && !signs.is_empty()
    {
        let given = Answer::Choices(signs.clone());
        let named = text::answer(reader, Q::Signs, walk.what, &given);
        lines.push(say("care-office-signs", "signs", named));
    }
    if let Some(plan) = walk.plan {
        lines.push(text::plan_line(reader, plan, about.now.date_naive()));
    }
    if walk.differs_from_plan() {
        let ticked = answered(walk, Q::Differs).filter(|given| **given != Answer::choices([]));
        lines.push(match ticked {
            Some(given) => {
                let named = text::answer(reader, Q::Differs, walk.what, given);
                say("care-office-differs", "what", named)
            }
            None => words.text("care-office-not-as-planned"),
        });
    }
    for question in FACTS {
        lines.extend(
            answered(walk, question).map(|given| text::line(reader, question, walk.what, given)),
        );
    }
    lines.extend(wanted(reader, about));
    lines.push(words.text("care-office-ask"));
    lines
}

fn answered<'a>(walk: &MoveWalk<'a>, question: Q) -> Option<&'a Answer> {
    walk.answer(question).filter(|_| walk.asks(question))
}

/// What would make a way possible, where only people or equipment are missing; and what of it is there and the
/// worker is not trained on.
fn wanted(reader: Reader<'_>, about: &About<'_>) -> Vec<String> {
    if matches!(about.advice.outcome, MoveOutcome::GoAhead { .. }) {
        return Vec::new();
    }
    let there = there(about.walk);
    let takings = takings(about.walk.what);
    let mut lines = Vec::new();
    let mut untrained: BTreeSet<&'static str> = BTreeSet::new();
    for out in &about.advice.ruled_out {
        let only_missing = out.because.iter().all(|id| {
            matches!(
                id,
                Id::EquipmentMissing | Id::TooFewWorkers | Id::CarePlanMoreWorkers
            )
        });
        let Some(taking) = takings.iter().find(|taking| taking.way == out.way) else {
            continue;
        };
        if !only_missing {
            continue;
        }
        let equipment: Vec<String> = taking
            .equipment
            .iter()
            .map(|piece| text::equipment_name(reader, piece.id()))
            .collect();
        let planned = about.walk.plan.and_then(|plan| plan.workers).unwrap_or(0);
        let args = [
            (
                "way",
                Arg::Text(reader.words.text(&message_id("way", out.way.id()))),
            ),
            ("equipment", Arg::Text(equipment.join("; "))),
            ("workers", Arg::count(taking.workers.max(planned).max(1))),
        ];
        lines.push(reader.words.format("care-office-wanted", &args));
        untrained.extend(
            taking
                .equipment
                .iter()
                .filter(|piece| there.contains(piece) && TRAINING.contains(piece))
                .map(|piece| piece.id())
                .filter(|id| !about.trained.contains(*id)),
        );
    }
    if !untrained.is_empty() {
        let names: Vec<String> = untrained
            .into_iter()
            .map(|id| text::equipment_name(reader, id))
            .collect();
        let args = [("equipment", Arg::Text(names.join("; ")))];
        lines.push(reader.words.format("care-office-untrained", &args));
    }
    lines
}
