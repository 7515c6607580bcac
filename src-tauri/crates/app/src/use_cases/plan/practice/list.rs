//! What was practised so far, newest first.

use super::log_of;
use crate::call::Call;
use crate::convert::moment::from_record;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::use_cases::plan::lines::{limit, way_name};
use crate::walk::text::Reader;
use crate::words::{Arg, message_id};
use record::{BackToUsual, PracticeEntry};
use serde::Serialize;

/// Entries that are shown. House rule.
const MOST: usize = 200;

/// The reply of `practice_list`.
#[derive(Debug, Serialize)]
pub(crate) struct Entries {
    entries: Vec<EntryView>,
}

#[derive(Debug, Serialize)]
struct EntryView {
    id: i64,
    event: &'static str,
    when_text: String,
    text: String,
    pain_text: Option<String>,
}

/// The log of the plan that is followed, or of the one that was followed last.
///
/// # Errors
/// What the vault gives.
pub(crate) fn practice_list(call: &mut Call<'_>, _: Nothing) -> Result<Entries, Failure> {
    let vault = call.vault()?;
    let reader = call.reader()?;
    let Some(last) = vault.followed().all()?.pop() else {
        return Ok(Entries {
            entries: Vec::new(),
        });
    };
    let log = log_of(vault, last.plan.id)?;
    let entries = log.iter().rev().take(MOST).map(|(id, entry)| {
        let at = from_record(entry.at);
        let day = reader
            .words
            .day_text_from(at.date_naive(), call.now.date_naive());
        let time = reader.words.time_text(at.time());
        EntryView {
            id: id.0,
            event: entry.event.id(),
            when_text: format!("{day}, {time}"),
            text: text(entry, reader),
            pain_text: pain_text(entry, reader),
        }
    });
    Ok(Entries {
        entries: entries.collect(),
    })
}

fn text(entry: &PracticeEntry, reader: Reader<'_>) -> String {
    let words = reader.words;
    let way = entry.way.map_or_else(
        || words.text("plan-log-practice"),
        |way| way_name(way, reader),
    );
    let mass = entry.grams.map_or_else(
        || words.text("plan-log-no-level"),
        |grams| limit(grams, reader),
    );
    let args = [("way", Arg::text(way)), ("mass", Arg::text(mass))];
    words.format(&message_id("plan-log", entry.event.id()), &args)
}

fn pain_text(entry: &PracticeEntry, reader: Reader<'_>) -> Option<String> {
    let words = reader.words;
    let during = entry
        .pain
        .map(|pain| words.format("plan-log-pain", &[("pain", pain.rating().into())]));
    let morning = entry.morning.and_then(|morning| morning.pain);
    let morning =
        morning.map(|pain| words.format("entry-pain-morning", &[("pain", pain.rating().into())]));
    let usual = entry.morning.and_then(|morning| morning.back_to_usual);
    let usual = usual.map(|usual| {
        words.text(match usual {
            BackToUsual::Yes => "entry-usual-yes",
            BackToUsual::No => "entry-usual-no",
            BackToUsual::NotSure => "entry-usual-not-sure",
        })
    });
    let parts: Vec<String> = [during, morning, usual].into_iter().flatten().collect();
    (!parts.is_empty()).then(|| parts.join(" "))
}
