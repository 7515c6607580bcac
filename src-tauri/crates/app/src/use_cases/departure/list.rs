//! The list as a page shows it, and clearing it.

use crate::call::Call;
use crate::convert::moment::from_record;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::walk::text::Reader;
use crate::words::{Arg, message_id};
use chrono::NaiveDate;
use door::ErrorCode;
use record::{Departure, DepartureWhat, Seal};
use serde::{Deserialize, Serialize};
use vault::DepartureId;

/// Entries on a page when the screen does not say. House rule.
const USUAL_LIMIT: u32 = 30;
/// Most entries on a page. House rule.
const MOST_ENTRIES: u32 = 100;

/// The command `departures`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Asked {
    #[serde(default)]
    before: Option<i64>,
    #[serde(default)]
    limit: Option<u32>,
}

/// The reply of `departures`: the newest first.
#[derive(Debug, Serialize)]
pub(crate) struct Listed {
    entries: Vec<Row>,
    more: bool,
}

#[derive(Debug, Serialize)]
struct Row {
    id: i64,
    when: String,
    what: String,
    parts: Vec<String>,
    how: String,
    to: String,
}

/// What left, the newest first.
///
/// # Errors
/// `out_of_range` for `limit`; what the vault gives.
pub(crate) fn departures(call: &mut Call<'_>, asked: Asked) -> Result<Listed, Failure> {
    let limit = asked.limit.unwrap_or(USUAL_LIMIT);
    if !(1..=MOST_ENTRIES).contains(&limit) {
        return Err(Failure::at(ErrorCode::OutOfRange, "limit"));
    }
    let before = asked.before.map(DepartureId);
    // One more than asked for tells whether there are more.
    let found = call.vault()?.departures().newest(before, limit + 1)?;
    let shown = usize::try_from(limit).unwrap_or(usize::MAX);
    let today = call.now.date_naive();
    let reader = call.reader()?;
    Ok(Listed {
        more: found.len() > shown,
        entries: found
            .iter()
            .take(shown)
            .map(|(id, kept)| row(*id, kept, today, reader))
            .collect(),
    })
}

/// Clears the list. What left is not called back by it.
///
/// # Errors
/// What the vault gives.
pub(crate) fn departures_clear(call: &mut Call<'_>, _: Nothing) -> Result<Nothing, Failure> {
    call.vault()?.departures().clear()?;
    Ok(Nothing {})
}

fn row(id: DepartureId, kept: &Departure, today: NaiveDate, reader: Reader<'_>) -> Row {
    let words = reader.words;
    let at = from_record(kept.at);
    let when = [
        (
            "day",
            Arg::Text(words.day_text_from(at.date_naive(), today)),
        ),
        ("time", Arg::Text(words.time_text(at.time()))),
    ];
    let how: Vec<String> = kept
        .how
        .iter()
        .map(|how| words.text(&message_id("departure-how", how.id())))
        .collect();
    Row {
        id: id.0,
        when: words.format("departure-when", &when),
        what: what(kept, reader),
        parts: parts(kept, reader),
        how: how.join(" "),
        to: to(kept, reader),
    }
}

fn what(kept: &Departure, reader: Reader<'_>) -> String {
    let words = reader.words;
    let kind = message_id("departure-what", kept.what.id());
    match &kept.about {
        None => words.text(&kind),
        Some(about) => words.format(
            "departure-about",
            &[
                ("what", Arg::Text(words.text(&kind))),
                ("about", Arg::text(about.as_str())),
            ],
        ),
    }
}

/// What is known of it: version, time, number of entries, whether names of things went along.
fn parts(kept: &Departure, reader: Reader<'_>) -> Vec<String> {
    let words = reader.words;
    let mut parts = Vec::new();
    if let Some(version) = kept.version {
        parts.push(words.format("departure-version", &[("version", version.into())]));
    }
    let has_days = matches!(
        kept.what,
        DepartureWhat::History
            | DepartureWhat::Note
            | DepartureWhat::Page
            | DepartureWhat::Table
            | DepartureWhat::Document
    );
    match kept.days {
        Some(days) => parts.push(words.format("departure-days", &[("days", Arg::count(days))])),
        None if has_days => parts.push(words.text("departure-all-days")),
        None => {}
    }
    if let Some(entries) = kept.entries {
        parts.push(words.format("departure-entries", &[("entries", Arg::count(entries))]));
    }
    match kept.with_notes {
        Some(true) => parts.push(words.text("departure-names")),
        Some(false) => parts.push(words.text("departure-no-names")),
        None => {}
    }
    parts
}

/// Who can read it.
fn to(kept: &Departure, reader: Reader<'_>) -> String {
    let words = reader.words;
    let name = |id: &str, name: &String| words.format(id, &[("name", Arg::text(name.as_str()))]);
    match (kept.what, kept.seal, &kept.to) {
        (_, Some(Seal::Code), _) => words.text("departure-to-code"),
        (_, Some(Seal::Device), Some(to)) => name("departure-to-device", to),
        (DepartureWhat::Card, _, Some(to)) => name("departure-to-card", to),
        (DepartureWhat::PlanPage, _, Some(to)) => name("departure-to-symbol", to),
        _ => words.text("departure-to-all"),
    }
}
