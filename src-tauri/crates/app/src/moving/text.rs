//! Questions, options and answers of the walk before a move, in words.

use super::facts::grams;
use super::flow::{Given, MoveWalk};
use super::ids::MoveQuestion as Q;
use super::options::{BANDS, offer};
use super::plan_age::{is_old, last_day};
use crate::convert::moment::from_record;
use crate::walk::answer::Answer;
use crate::walk::text::Reader;
use crate::words::{Arg, message_id};
use chrono::{Datelike, Days, NaiveDate};
use lifting::transfer::client::Move;
use lifting::transfer::equipment::Equipment;
use record::{CareMove, CarePerson, CarePlan};

/// The id of a message about a question: `care-legs`, with a part after it.
#[must_use]
pub(crate) fn word_id(question: Q, part: Option<&str>) -> String {
    let id = message_id("care", question.id());
    match part {
        Some(part) => message_id(&id, part),
        None => id,
    }
}

/// The name of a move.
#[must_use]
pub(crate) fn move_name(reader: Reader<'_>, what: &str) -> String {
    match Move::from_id(what) {
        Some(known) => reader.words.text(&message_id("move", known.id())),
        None => reader.words.text("care-move-unknown"),
    }
}

/// The name of a piece of equipment.
#[must_use]
pub(crate) fn equipment_name(reader: Reader<'_>, id: &str) -> String {
    match Equipment::from_id(id) {
        Some(piece) => reader.words.text(&message_id("equipment", piece.id())),
        None => reader.words.text("care-equipment-unknown"),
    }
}

/// An option.
#[must_use]
pub(crate) fn option(reader: Reader<'_>, question: Q, id: &str) -> String {
    match question {
        Q::Signs => reader.words.text(&message_id("client-sign", id)),
        Q::Here if Equipment::from_id(id).is_some() => equipment_name(reader, id),
        Q::Mass => match (grams(id), id) {
            (_, "more") | (None, _) => {
                let last = BANDS.iter().rev().nth(1).map_or(0, |(_, grams)| *grams);
                reader.with_mass("mass-over", last)
            }
            (Some(grams), _) => reader.with_mass("mass-up-to", grams),
        },
        _ => reader.words.text(&word_id(question, Some(id))),
    }
}

/// An answer in words.
#[must_use]
pub(crate) fn answer(reader: Reader<'_>, question: Q, what: Move, answer: &Answer) -> String {
    match answer {
        Answer::Choice(id) => option(reader, question, id),
        Answer::Choices(ids) if ids.is_empty() => reader.words.text("answer-none"),
        Answer::Choices(ids) => {
            // In the order of the options, not of their ids.
            let offered = offer(question, what, false);
            let listed = offered.ids().iter().filter(|id| ids.contains(**id));
            let texts: Vec<String> = listed.map(|id| option(reader, question, id)).collect();
            texts.join("; ")
        }
        _ => reader.words.text("answer-not-sure"),
    }
}

/// One answer as a line: "Weight on the legs: part of it".
#[must_use]
pub(crate) fn line(reader: Reader<'_>, question: Q, what: Move, given: &Answer) -> String {
    let args = [
        (
            "label",
            Arg::Text(reader.words.text(&word_id(question, Some("row")))),
        ),
        ("text", Arg::Text(answer(reader, question, what, given))),
    ];
    reader.words.format("care-line", &args)
}

/// What is confirmed with "all as before": the care plan, and what was noted and matters for this move.
#[must_use]
pub(crate) fn noted_lines(
    reader: Reader<'_>,
    walk: &MoveWalk<'_>,
    today: NaiveDate,
) -> Vec<String> {
    let mut given: Given = walk.given.clone();
    given.insert(Q::Same, Answer::choice("as_noted"));
    let confirmed = MoveWalk {
        given: &given,
        ..*walk
    };
    let plan = walk.plan.map(|plan| plan_line(reader, plan, today));
    let facts = Q::ALL
        .iter()
        .filter(|question| {
            // What a plan's ways take is assumed to be there, so it is shown from the start.
            let planned = **question == Q::Here && walk.plan.is_some();
            planned || confirmed.asks(**question)
        })
        .filter_map(|question| {
            let kept = walk.kept.get(question)?;
            Some(line(reader, *question, walk.what, kept))
        });
    plan.into_iter().chain(facts).collect()
}

/// A care plan in one line: "Care plan (the office, 12 November): stand aid. Workers: 2". With its review date, or
/// that it is past its date.
#[must_use]
pub(crate) fn plan_line(reader: Reader<'_>, plan: &CarePlan, today: NaiveDate) -> String {
    let ways: Vec<String> = plan
        .ways
        .iter()
        .map(|way| reader.words.text(&message_id("way", way)))
        .collect();
    let args = [
        ("day", Arg::Text(day_text(reader, plan.issued_day, today))),
        (
            "who",
            Arg::Text(reader.words.text(&message_id("care-by", &plan.issued_by))),
        ),
        ("ways", Arg::Text(ways.join("; "))),
        (
            "workers",
            plan.workers.map_or(Arg::from("none"), Arg::count),
        ),
    ];
    let mut line = reader.words.format("care-plan-line", &args);
    let age = if is_old(plan, today) {
        Some(("care-plan-old", last_day(plan.issued_day, plan.review_day)))
    } else {
        plan.review_day.map(|day| ("care-plan-review", day))
    };
    if let Some((id, day)) = age {
        let day = Arg::Text(day_text(reader, day, today));
        line.push_str(". ");
        line.push_str(&reader.words.format(id, &[("day", day)]));
    }
    line
}

/// A day of a plan in words.
#[must_use]
pub(crate) fn day_text(reader: Reader<'_>, day: i32, today: NaiveDate) -> String {
    let day = day_of(day);
    // The date itself, never "today": the line may be read on another day.
    if day.year() == today.year() {
        reader.words.day_text(day)
    } else {
        reader.words.day_text_from(day, today)
    }
}

/// The day with this number since 1970-01-01.
#[must_use]
pub(crate) fn day_of(number: i32) -> NaiveDate {
    let start = NaiveDate::default();
    let days = Days::new(u64::from(number.unsigned_abs()));
    let day = if number < 0 {
        start.checked_sub_days(days)
    } else {
        start.checked_add_days(days)
    };
    day.unwrap_or(start)
}

/// The number of a day since 1970-01-01.
#[must_use]
pub(crate) fn number_of(day: NaiveDate) -> i32 {
    i32::try_from(day.signed_duration_since(NaiveDate::default()).num_days()).unwrap_or(0)
}

/// One move of a person in one line for the list: what the plan says, or since when it is noted.
#[must_use]
pub(crate) fn move_line(reader: Reader<'_>, noted: &CareMove, today: NaiveDate) -> Option<String> {
    match (&noted.plan, noted.noted_at) {
        (Some(plan), _) => Some(plan_line(reader, plan, today)),
        (None, Some(at)) => {
            let day = reader
                .words
                .day_text_from(from_record(at).date_naive(), today);
            Some(
                reader
                    .words
                    .format("care-noted", &[("day", Arg::Text(day))]),
            )
        }
        (None, None) => None,
    }
}

/// What is known of a person, a line each.
#[must_use]
pub(crate) fn person_lines(reader: Reader<'_>, person: &CarePerson) -> Vec<String> {
    let yes_no = |said: bool| if said { "yes" } else { "no" };
    let band = |grams: u32| {
        BANDS
            .iter()
            .find(|(_, upper)| grams <= *upper)
            .map(|(id, _)| *id)
    };
    let choices = [
        (Q::Legs, person.legs.map(record::WeightBearing::id)),
        (Q::Follows, person.follows.map(record::Follows::id)),
        (Q::Arms, person.arms_strong.map(yes_no)),
        (Q::Mass, person.mass_g.and_then(band)),
    ];
    let facts = choices.into_iter().filter_map(|(question, id)| {
        let given = Answer::choice(id?);
        Some(line(reader, question, Move::BedToChair, &given))
    });
    let here = person.equipment.as_ref().map(|ids| {
        let names: Vec<String> = ids.iter().map(|id| equipment_name(reader, id)).collect();
        let text = if names.is_empty() {
            reader.words.text("answer-none")
        } else {
            names.join("; ")
        };
        let args = [
            ("label", Arg::Text(reader.words.text("care-equipment-row"))),
            ("text", Arg::Text(text)),
        ];
        reader.words.format("care-line", &args)
    });
    facts.chain(here).collect()
}
