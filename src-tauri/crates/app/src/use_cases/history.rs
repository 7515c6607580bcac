//! What was lifted and what was left, newest first.

use super::entry::{Entry, entry};
use super::walk::cards::kept_card;
use crate::call::Call;
use crate::card::AdviceCard;
use crate::convert::{body, task};
use crate::failure::Failure;
use crate::walk::answer::{Answers, NumberUnit};
use crate::walk::flow::{Purpose, Walk};
use crate::walk::page::Row;
use crate::walk::view;
use crate::words::Units;
use chrono::{NaiveDate, NaiveTime, TimeZone};
use door::ErrorCode;
use record::{Lift, Way};
use serde::{Deserialize, Serialize};
use vault::{LiftFilter, LiftId};

/// Entries on a page when the screen does not say. House rule.
const USUAL_LIMIT: u32 = 30;
/// Most entries on a page. House rule.
const MOST_ENTRIES: u32 = 100;

/// The command `history`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct History {
    #[serde(default)]
    show: Option<String>,
    #[serde(default)]
    way: Option<String>,
    #[serde(default)]
    since: Option<String>,
    #[serde(default)]
    before: Option<i64>,
    #[serde(default)]
    limit: Option<u32>,
}

/// The reply of `history`.
#[derive(Debug, Serialize)]
pub(crate) struct Entries {
    entries: Vec<Entry>,
    more: bool,
    /// Whether practice with a plan was noted as well.
    practised: bool,
}

/// A page of the history.
///
/// # Errors
/// `not_a_choice` for `show`, `way` or `since`; `out_of_range` for `limit`; what the vault gives.
pub(crate) fn history(call: &mut Call<'_>, asked: History) -> Result<Entries, Failure> {
    let not_a_choice = |field| Failure::at(ErrorCode::NotAChoice, field);
    let limit = asked.limit.unwrap_or(USUAL_LIMIT);
    if !(1..=MOST_ENTRIES).contains(&limit) {
        return Err(Failure::at(ErrorCode::OutOfRange, "limit"));
    }
    let done = match asked.show.as_deref() {
        None | Some("all") => None,
        Some("done") => Some(true),
        Some("left") => Some(false),
        Some(_) => return Err(not_a_choice("show")),
    };
    let way = match &asked.way {
        Some(id) => Some(Way::from_id(id).ok_or_else(|| not_a_choice("way"))?),
        None => None,
    };
    let since_ms = match &asked.since {
        Some(day) => Some(start_of_day(call, day).ok_or_else(|| not_a_choice("since"))?),
        None => None,
    };
    // One more than asked for tells whether there are more.
    let filter = LiftFilter {
        done,
        way,
        since_ms,
        before: asked.before.map(LiftId),
        limit: limit + 1,
    };
    entries(call, &filter, limit)
}

/// Entries for a filter whose own limit is one more than `limit`.
fn entries(call: &Call<'_>, filter: &LiftFilter, limit: u32) -> Result<Entries, Failure> {
    let vault = call.vault()?;
    let reader = call.reader()?;
    let lifts = vault.lifts().newest(filter)?;
    let shown = usize::try_from(limit).unwrap_or(usize::MAX);
    let more = lifts.len() > shown;
    let entries = lifts
        .iter()
        .take(shown)
        .map(|(id, lift)| entry(vault, *id, lift, call.now, reader))
        .collect::<Result<_, _>>()?;
    Ok(Entries {
        entries,
        more,
        practised: vault.practice().is_any()?,
    })
}

/// The newest few, for the home screen.
///
/// # Errors
/// What the vault gives.
pub(crate) fn newest(call: &Call<'_>, limit: u32) -> Result<Vec<Entry>, Failure> {
    let filter = LiftFilter {
        limit,
        ..LiftFilter::default()
    };
    Ok(entries(call, &filter, limit)?.entries)
}

fn start_of_day(call: &Call<'_>, day: &str) -> Option<i64> {
    let day = NaiveDate::parse_from_str(day, "%Y-%m-%d").ok()?;
    let start = day.and_time(NaiveTime::MIN);
    Some(
        call.now
            .offset()
            .from_local_datetime(&start)
            .single()?
            .timestamp_millis(),
    )
}

/// The command `history_entry`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OneEntry {
    id: i64,
}

/// The reply of `history_entry`.
#[derive(Debug, Serialize)]
pub(crate) struct WholeEntry {
    entry: Entry,
    rows: Vec<Row>,
    advice: AdviceCard,
}

/// One entry with the answers and the advice of that day.
///
/// # Errors
/// `not_found`; what the vault gives.
pub(crate) fn history_entry(call: &mut Call<'_>, asked: OneEntry) -> Result<WholeEntry, Failure> {
    let vault = call.vault()?;
    let reader = call.reader()?;
    let id = LiftId(asked.id);
    let lift = vault.lifts().find(id)?;
    let lift = lift.ok_or_else(|| Failure::at(ErrorCode::NotFound, "id"))?;
    let answers = answers_of(&lift, reader.units);
    let kept = Answers::default();
    let walk = Walk {
        purpose: Purpose::Lift,
        given: &answers,
        kept: &kept,
        whole_list_due: false,
        times_a_bout: None,
    };
    Ok(WholeEntry {
        entry: entry(vault, id, &lift, call.now, reader)?,
        rows: view::rows(&walk, reader),
        advice: kept_card(call, &lift.advice)?,
    })
}

/// The answers that a lift was kept from, as far as it holds them.
#[must_use]
pub(crate) fn answers_of(lift: &Lift, units: Units) -> Answers {
    let unit = match units {
        Units::Kilograms => NumberUnit::Kilograms,
        Units::Pounds => NumberUnit::Pounds,
    };
    let mut answers = task::from_record(&lift.task, unit);
    answers.take_over(&body::from_record(&lift.body, false));
    answers
}
