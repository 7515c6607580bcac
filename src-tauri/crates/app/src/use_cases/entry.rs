//! One entry of the history in words.

use crate::convert::moment::from_record;
use crate::failure::Failure;
use crate::walk::text::Reader;
use crate::words::message_id;
use chrono::{DateTime, FixedOffset, SecondsFormat};
use record::{BackToUsual, CheckIn, CheckInKind, Lift};
use serde::Serialize;
use vault::{LiftId, Vault};

/// One entry of the history.
#[derive(Debug, Serialize)]
pub(crate) struct Entry {
    id: i64,
    at: String,
    day_text: String,
    time_text: String,
    title: String,
    outcome: &'static str,
    outcome_text: String,
    done: bool,
    done_text: String,
    way: Option<&'static str>,
    way_name: Option<String>,
    pain_after: Option<u8>,
    pain_morning: Option<u8>,
    pain_text: Option<String>,
}

/// A lift as an entry, with its check-ins.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn entry(
    vault: &Vault,
    id: LiftId,
    lift: &Lift,
    now: DateTime<FixedOffset>,
    reader: Reader<'_>,
) -> Result<Entry, Failure> {
    let at = from_record(lift.at);
    let check_ins = vault.check_ins().of(id)?;
    let words = reader.words;
    let pain_of = |kind| latest(&check_ins, kind).and_then(|check_in| check_in.pain);
    Ok(Entry {
        id: id.0,
        at: at.to_rfc3339_opts(SecondsFormat::Secs, false),
        day_text: words.day_text_from(at.date_naive(), now.date_naive()),
        time_text: words.time_text(at.time()),
        title: lift.title.clone(),
        outcome: lift.advice.outcome.id(),
        outcome_text: words.text(&message_id("entry", lift.advice.outcome.id())),
        done: lift.done,
        done_text: done_text(lift, reader),
        way: lift.way.map(record::Way::id),
        way_name: lift.way.map(|way| way_name(way, reader)),
        pain_after: pain_of(CheckInKind::During).map(record::Pain::rating),
        pain_morning: pain_of(CheckInKind::NextMorning).map(record::Pain::rating),
        pain_text: pain_text(&check_ins, reader),
    })
}

fn way_name(way: record::Way, reader: Reader<'_>) -> String {
    reader.words.text(&message_id("way", way.id()))
}

fn done_text(lift: &Lift, reader: Reader<'_>) -> String {
    let words = reader.words;
    match (lift.done, lift.way, &lift.instead) {
        (true, Some(way), _) => {
            words.format("entry-done-way", &[("way", way_name(way, reader).into())])
        }
        (true, None, _) => words.text("entry-done"),
        (false, _, Some(instead)) => {
            let other = words.text(&message_id("alternative", instead));
            words.format("entry-left-instead", &[("instead", other.into())])
        }
        (false, _, None) => words.text("entry-left"),
    }
}

/// The last answer counts: somebody may have changed their mind.
fn latest(check_ins: &[CheckIn], kind: CheckInKind) -> Option<&CheckIn> {
    check_ins
        .iter()
        .rev()
        .find(|check_in| check_in.kind == kind && !check_in.skipped)
}

/// What was told of pain; nothing when nobody told.
fn pain_text(check_ins: &[CheckIn], reader: Reader<'_>) -> Option<String> {
    let words = reader.words;
    let mut parts = Vec::new();
    if let Some(pain) = latest(check_ins, CheckInKind::During).and_then(|check_in| check_in.pain) {
        parts.push(words.format("entry-pain-after", &[("pain", pain.rating().into())]));
    }
    if let Some(morning) = latest(check_ins, CheckInKind::NextMorning) {
        if let Some(pain) = morning.pain {
            parts.push(words.format("entry-pain-morning", &[("pain", pain.rating().into())]));
        }
        if let Some(usual) = morning.back_to_usual {
            parts.push(words.text(match usual {
                BackToUsual::Yes => "entry-usual-yes",
                BackToUsual::No => "entry-usual-no",
                BackToUsual::NotSure => "entry-usual-not-sure",
            }));
        }
    }
    (!parts.is_empty()).then(|| parts.join(" "))
}
