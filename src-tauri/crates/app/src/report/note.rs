//! A short note to paste into a record: plain lines, in the reader's language and units.

use super::Report;
use super::gather::date_of;
use crate::walk::text::Reader;
use crate::words::{Arg, Rounding, Words, message_id};
use chrono::{Datelike, NaiveDate};
use lifting::review::{Change, Enough, NotYet, Pain, Response, Review, Trend};
use serde::Serialize;

/// The note.
#[must_use]
pub(crate) fn note(report: &Report, reader: Reader<'_>) -> String {
    let words = reader.words;
    let mut lines = vec![
        words.format(
            "report-note-title",
            &[("day", date_text(words, report.made.date_naive()))],
        ),
        told_by(report, words),
    ];
    lines.extend(sentences(report, reader));
    lines.push(words.text("report-note-limits"));
    lines.join("\n")
}

/// Who told it.
#[must_use]
pub(super) fn told_by(report: &Report, words: &Words) -> String {
    match &report.of {
        Some(name) => words.format("report-note-of", &[("name", Arg::text(name.as_str()))]),
        None => words.text("report-note-own"),
    }
}

/// What the look back says, one sentence each.
#[must_use]
pub(crate) fn sentences(report: &Report, reader: Reader<'_>) -> Vec<String> {
    let passages = passages(report, reader).into_iter();
    passages.flat_map(|passage| passage.sentences).collect()
}

/// Sentences about one thing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct Passage {
    /// About what.
    pub(crate) id: &'static str,
    /// Its heading.
    pub(crate) title: String,
    /// What is said of it.
    pub(crate) sentences: Vec<String>,
}

/// What the look back says, thing by thing; a thing of which nothing can be said is left out.
#[must_use]
pub(crate) fn passages(report: &Report, reader: Reader<'_>) -> Vec<Passage> {
    let words = reader.words;
    let review = &report.review;
    let practised = report.practice.as_ref();
    let practised = practised.map_or_else(Vec::new, |practised| {
        super::practice::passages(practised, reader)
    });
    if review.counts.entries == 0 {
        let nothing = Passage {
            id: "counted",
            title: words.text("report-title-counted"),
            sentences: vec![words.text("report-nothing")],
        };
        return std::iter::once(nothing).chain(practised).collect();
    }
    [
        ("counted", vec![counted(report, words)]),
        ("pain", pain(review, words)),
        ("weeks", weeks(review, reader)),
        ("ways", ways(review, words)),
        ("response", vec![response(&review.response, reader)]),
        ("against", against(review, words)),
        ("missing", missing(review, words)),
    ]
    .into_iter()
    .filter(|(_, sentences)| !sentences.is_empty())
    .map(|(id, sentences)| Passage {
        id,
        title: words.text(&message_id("report-title", id)),
        sentences,
    })
    .chain(practised)
    .collect()
}

/// A date with its year, for inside a sentence.
#[must_use]
pub(crate) fn date_text(words: &Words, day: NaiveDate) -> Arg {
    let month = words.text(&format!("date-month-{}", day.month()));
    let args = [
        ("day", day.day().into()),
        ("month", month.into()),
        ("year", Arg::text(day.year().to_string())),
    ];
    words.format("report-date", &args).into()
}

fn counted(report: &Report, words: &Words) -> String {
    let counts = &report.review.counts;
    let (first, last) = (report.told.first(), report.told.last());
    let day = |told: Option<&super::Told>| {
        date_text(
            words,
            told.map(|told| told.at.date_naive()).unwrap_or_default(),
        )
    };
    words.format(
        "report-counted",
        &[
            ("done", counts.done.into()),
            ("left", counts.left.into()),
            ("days", counts.days.into()),
            ("first", day(first)),
            ("last", day(last)),
        ],
    )
}

/// The last four weeks, newest first. House rule.
fn weeks(review: &Review, reader: Reader<'_>) -> Vec<String> {
    let recent = review.weeks.iter().rev().take(4);
    recent
        .map(|week| {
            let mass = |kilograms: f64| {
                Arg::from(
                    reader
                        .words
                        .mass(kilograms, reader.units, Rounding::Nearest),
                )
            };
            let args = [
                ("from", date_text(reader.words, date_of(week.from))),
                ("times", week.times.into()),
                ("lifted", mass(week.lifted.value())),
                (
                    "heaviest",
                    mass(week.heaviest.map_or(0.0, |heaviest| heaviest.value())),
                ),
            ];
            let id = match (week.times, week.heaviest) {
                (0, _) => "report-week-none",
                (_, None) => "report-week-unknown",
                _ => "report-week",
            };
            reader.words.format(id, &args)
        })
        .collect()
}

/// Where pain goes. What there is too little of is told once where that is so of all.
fn pain(review: &Review, words: &Words) -> Vec<String> {
    let mut lines: Vec<String> = review
        .pain
        .iter()
        .filter_map(|pain| change(pain, words))
        .collect();
    if !lines.is_empty() {
        lines.push(words.text("report-change-rule"));
    }
    let needs = review.pain.iter().map(|pain| match pain.trend {
        Enough::NotYet(NotYet::Days { need, .. }) => Some(need),
        _ => None,
    });
    match needs.collect::<Option<Vec<u32>>>().as_deref() {
        Some([need, ..]) => {
            lines.push(words.format("report-trend-none-yet", &[("need", (*need).into())]));
        }
        _ => lines.extend(review.pain.iter().map(|pain| trend(pain, words))),
    }
    lines
}

fn change(pain: &Pain, words: &Words) -> Option<String> {
    let Enough::Yes(Change {
        first,
        last,
        verdict,
    }) = pain.change
    else {
        return None;
    };
    let args = [
        ("kind", kind(pain, words)),
        ("first", first.value().into()),
        ("last", last.value().into()),
    ];
    Some(words.format(&message_id("report-change", verdict.id()), &args))
}

fn trend(pain: &Pain, words: &Words) -> String {
    let mut args = vec![("kind", kind(pain, words))];
    match pain.trend {
        Enough::Yes(trend) => {
            let Trend { slope, low, high } = trend;
            args.extend(amounts(
                trend.is_clear(),
                [slope.value(), low.value(), high.value()],
            ));
            words.format(trend_id(&trend), &args)
        }
        Enough::NotYet(_) => words.format("report-trend-not-yet", &args),
    }
}

fn kind(pain: &Pain, words: &Words) -> Arg {
    words
        .text(&message_id("report-pain", pain.kind.id()))
        .into()
}

fn trend_id(trend: &Trend) -> &'static str {
    match (trend.is_clear(), trend.slope.value() > 0.0) {
        (false, _) => "report-trend-unclear",
        (true, true) => "report-trend-up",
        (true, false) => "report-trend-down",
    }
}

/// A slope and its interval. Words that say "less" take amounts without a sign, the smaller one first.
fn amounts(clear: bool, [slope, low, high]: [f64; 3]) -> [(&'static str, Arg); 3] {
    let (slope, low, high) = if clear && slope < 0.0 {
        (-slope, -high, -low)
    } else {
        (slope, low, high)
    };
    [
        ("slope", slope.into()),
        ("low", low.into()),
        ("high", high.into()),
    ]
}

fn ways(review: &Review, words: &Words) -> Vec<String> {
    let used: Vec<String> = review
        .variety
        .used
        .iter()
        .map(|(way, count)| {
            let name = words.text(&message_id("way", way.id()));
            words.format(
                "report-way",
                &[("way", name.into()), ("times", words.times(*count).into())],
            )
        })
        .collect();
    if used.is_empty() {
        return Vec::new();
    }
    let share = review
        .variety
        .evenness
        .map_or(0.0, |evenness| (evenness.value() * 100.0).round());
    let counts = &review.counts;
    let other = [
        ("n", counts.other_way.into()),
        ("of", counts.way_and_advised.into()),
    ];
    let other = (counts.other_way > 0).then(|| words.format("report-other-way", &other));
    let list = [("list", used.join(", ").into()), ("even", share.into())];
    std::iter::once(words.format("report-ways", &list))
        .chain(other)
        .collect()
}

fn response(response: &Enough<Response>, reader: Reader<'_>) -> String {
    let words = reader.words;
    let response = match response {
        Enough::Yes(response) => response,
        Enough::NotYet(NotYet::Days { .. }) => return words.text("report-response-not-yet"),
        Enough::NotYet(NotYet::TooAlike) => return words.text("report-response-alike"),
    };
    // Told for ten kilograms (house rule): one kilogram moves pain by too little to read.
    let per_ten = [response.slope, response.low, response.high].map(|slope| slope.value() * 10.0);
    let mass = words.mass(10.0, reader.units, Rounding::Nearest);
    let mut args = vec![("days", response.days.into()), ("mass", mass.into())];
    args.extend(amounts(response.is_clear(), per_ten));
    let id = match (response.is_clear(), response.slope.value() > 0.0) {
        (false, _) => "report-response-unclear",
        (true, true) => "report-response-more",
        (true, false) => "report-response-less",
    };
    words.format(id, &args)
}

fn against(review: &Review, words: &Words) -> Vec<String> {
    let counts = &review.counts;
    [
        ("report-done-against", counts.done_against),
        ("report-done-unchanged", counts.done_unchanged),
        ("report-done-without-aid", counts.done_without_aid),
        ("report-flares", counts.flare_days),
    ]
    .into_iter()
    .filter(|(_, count)| *count > 0)
    .map(|(id, count)| words.format(id, &[("n", count.into())]))
    .collect()
}

fn missing(review: &Review, words: &Words) -> Vec<String> {
    let counts = &review.counts;
    [
        ("report-no-during", counts.no_pain_during),
        ("report-no-morning", counts.no_next_morning),
        ("report-no-mass", counts.no_mass),
    ]
    .into_iter()
    .filter(|(_, count)| *count > 0)
    .map(|(id, count)| words.format(id, &[("n", count.into()), ("of", counts.done.into())]))
    .collect()
}
