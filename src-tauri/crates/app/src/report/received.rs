//! The facts of a report, from histories that somebody handed over.

use super::gather::{report_of, since_is};
use super::{Before, Report, Told, plan};
use crate::convert::moment::from_record;
use crate::failure::Failure;
use crate::walk::text::Reader;
use chrono::{DateTime, FixedOffset, NaiveDate};
use record::{BackState, CheckInKind, History, HistoryLift, Identity, Mass, Moment, Pain};
use std::collections::BTreeMap;
use vault::Vault;

const MINUTE_MS: i64 = 60_000;

/// Everything that was handed over by one pairing since a day. A lift that is in several histories counts once, as the
/// newest history has it.
///
/// # Errors
/// What the vault gives.
pub(crate) fn gather_received(
    vault: &Vault,
    pairing: Identity,
    since: Option<NaiveDate>,
    now: DateTime<FixedOffset>,
    reader: Reader<'_>,
) -> Result<Report, Failure> {
    let mut histories = vault.received().of(Some(pairing))?;
    histories.sort_by_key(|(id, _)| *id);
    let mut told: BTreeMap<(i64, usize), Told> = BTreeMap::new();
    for (_, received) in &histories {
        let history = &received.history;
        let first = history.start_min;
        // What this history tells again is taken from it alone, also what it no longer holds.
        if !history.lifts.is_empty() {
            told.retain(|(minute, _), _| *minute < first);
        }
        let mut minute = first;
        for (place, lift) in history.lifts.iter().enumerate() {
            minute = minute.saturating_add(i64::try_from(lift.after_min).unwrap_or(i64::MAX));
            told.insert((minute, place), tell(history, lift, minute, reader));
        }
    }
    let told = told.into_values().filter(|told| since_is(since, told));
    Ok(Report {
        plan: plan::of_pairing(vault, pairing)?,
        ..report_of(told.collect(), since, now)
    })
}

fn tell(history: &History, lift: &HistoryLift, minute: i64, reader: Reader<'_>) -> Told {
    let rating = |pain: Option<Pain>| pain.map(Pain::rating);
    let said = |kinds: &[CheckInKind]| {
        let mut looks = lift.looks.iter().rev();
        let last = looks.find(|look| kinds.contains(&look.kind) && look.pain.is_some());
        rating(last.and_then(|look| look.pain))
    };
    let [back, knee_left, knee_right, hip_left, hip_right, shoulders] = lift.pain.map(rating);
    Told {
        at: from_record(Moment {
            at_ms: minute.saturating_mul(MINUTE_MS),
            offset_min: history.made_at.offset_min,
        }),
        title: history
            .word(lift.title)
            .map_or_else(|| reader.words.text("report-no-title"), str::to_owned),
        advised: lift.outcome,
        rules: String::new(),
        done: lift.done,
        way: lift.way,
        first: lift.advised,
        aid_first: lift.aid_first,
        mass_g: match lift.mass {
            Some(Mass::Known { grams }) => Some((grams, grams)),
            Some(Mass::Untested {
                low_grams,
                high_grams,
            }) => Some((low_grams, high_grams)),
            Some(Mass::Unknown) | None => None,
        },
        times: lift.times.max(1),
        before: Before {
            back,
            knee_left,
            knee_right,
            hip_left,
            hip_right,
            shoulders,
        },
        during: said(&[CheckInKind::During, CheckInKind::After]),
        next_morning: said(&[CheckInKind::NextMorning]),
        flare: lift.back_state == Some(BackState::Flare),
    }
}
