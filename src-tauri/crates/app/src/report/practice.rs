//! What a report says of the plan's practice: what was done, where the level stands, what the rule proposes.

use super::Passage;
use crate::convert::practice::{Noted, PlanDay, day_of};
use crate::walk::text::Reader;
use crate::words::{Arg, Rounding, message_id};
use lifting::body::Person;
use lifting::progress::{Proposal, sessions_needed};
use lifting::quantity::Kilograms;
use record::PracticeEvent;
use std::collections::BTreeSet;

/// Practice with a plan, as far as it was told.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Practised {
    /// The log of the plan, oldest first, from the first day looked at.
    pub(crate) log: Vec<Noted>,
    /// Where the plan stands.
    pub(crate) day: PlanDay,
    /// What the rule proposes.
    pub(crate) proposal: Proposal,
}

impl Practised {
    /// From the log of a plan and what is known of the person.
    #[must_use]
    pub(crate) fn of(log: Vec<Noted>, day: PlanDay, person: &Person) -> Self {
        let proposal = day.proposal(person);
        Self { log, day, proposal }
    }
}

/// What was practised, and what the rule proposes. Nothing where the plan has no level.
#[must_use]
pub(super) fn passages(practised: &Practised, reader: Reader<'_>) -> Vec<Passage> {
    let Some(level) = practised.day.level else {
        return Vec::new();
    };
    [
        ("practice", told(practised, level, reader)),
        ("progress", proposed(practised, level, reader)),
    ]
    .into_iter()
    .map(|(id, sentences)| Passage {
        id,
        title: reader.words.text(&message_id("report-title", id)),
        sentences,
    })
    .collect()
}

fn told(practised: &Practised, level: Kilograms, reader: Reader<'_>) -> Vec<String> {
    let words = reader.words;
    let done = practised.log.iter();
    let done: Vec<&Noted> = done
        .filter(|noted| noted.event == PracticeEvent::Done)
        .collect();
    let days: BTreeSet<_> = done
        .iter()
        .map(|noted| day_of(noted.at.date_naive()))
        .collect();
    let args = [
        ("days", count(days.len())),
        ("times", count(done.len())),
        ("mass", mass(level, reader)),
    ];
    let mut lines = vec![words.format("report-practice", &args)];
    for (id, event) in [
        ("report-practice-left", PracticeEvent::Left),
        ("report-practice-flares", PracticeEvent::Flare),
    ] {
        let log = practised.log.iter();
        let found = log.filter(|noted| noted.event == event).count();
        if found > 0 {
            lines.push(words.format(id, &[("n", count(found))]));
        }
    }
    lines
}

fn proposed(practised: &Practised, level: Kilograms, reader: Reader<'_>) -> Vec<String> {
    let words = reader.words;
    let day = &practised.day;
    let proposal = &practised.proposal;
    // On the day of a flare-up less was taken already: it is told from the level before.
    let from = day.plan.current.unwrap_or(level);
    let next = day.proposed(proposal).unwrap_or(level);
    let steps = [("level", mass(from, reader)), ("next", mass(next, reader))];
    let what = message_id("report-progress", proposal.progress.id());
    let history = day.history();
    let not_told = || words.text("report-progress-not-told");
    let pain = history
        .worst_during
        .map_or_else(not_told, |pain| pain.value().to_string());
    let settled = match history.settled_next_morning {
        Some(true) => words.text("report-progress-yes"),
        Some(false) => words.text("report-progress-no"),
        None => not_told(),
    };
    let numbers = [
        ("good", day.good().into()),
        ("need", sessions_needed(Some(&day.plan)).into()),
        ("pain", Arg::text(pain)),
        ("settled", Arg::text(settled)),
    ];
    let reasons = proposal.reasons.iter();
    let why: Vec<String> = reasons
        .map(|reason| words.reason(reason, reader.units))
        .collect();
    vec![
        words.format(&what, &steps),
        words.format("report-progress-from", &numbers),
        why.join(" "),
    ]
}

fn mass(mass: Kilograms, reader: Reader<'_>) -> Arg {
    let text = reader
        .words
        .mass(mass.value(), reader.units, Rounding::Down);
    Arg::text(text)
}

fn count(of: usize) -> Arg {
    u32::try_from(of).unwrap_or(u32::MAX).into()
}
