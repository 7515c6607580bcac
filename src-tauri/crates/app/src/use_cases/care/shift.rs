//! The shift: what leaves is shown first; once it is handed over, its entries may be erased.

use crate::call::Call;
use crate::convert::moment;
use crate::failure::Failure;
use crate::moving::text::{equipment_name, move_name};
use crate::use_cases::Nothing;
use crate::use_cases::departure::note;
use crate::use_cases::departure::tell::of_open_shift;
use crate::walk::text::Reader;
use crate::words::{Arg, message_id};
use door::ErrorCode;
use lifting::transfer::checks::StopSign;
use lifting::transfer::way::PeopleWay;
use record::{DepartureHow, Erased, MoveEntry, Shift};
use serde::{Deserialize, Serialize};
use vault::{MoveEntryId, ShiftId};

/// The reply of `shift`, `shift_hand_over` and `shift_erase`.
#[derive(Debug, Serialize)]
pub(crate) struct ShiftView {
    open: Option<OneShift>,
    last: Option<OneShift>,
}

#[derive(Debug, Serialize)]
struct OneShift {
    id: i64,
    title: String,
    entries: Vec<EntryRow>,
    plain: usize,
    proofs: usize,
    text: String,
    erased_text: Option<String>,
}

#[derive(Debug, Serialize)]
struct EntryRow {
    id: i64,
    text: String,
    proof: bool,
}

/// The open shift, and the last one that was handed over.
///
/// # Errors
/// What the vault gives.
pub(crate) fn shift(call: &mut Call<'_>, _: Nothing) -> Result<ShiftView, Failure> {
    let vault = call.vault()?;
    let open = vault.shifts().open()?;
    let last = vault.shifts().last_handed_over()?;
    Ok(ShiftView {
        open: open.map(|(id, shift)| view(call, id, &shift)).transpose()?,
        last: last.map(|(id, shift)| view(call, id, &shift)).transpose()?,
    })
}

fn view(call: &Call<'_>, id: ShiftId, shift: &Shift) -> Result<OneShift, Failure> {
    let reader = call.reader()?;
    let entries = call.vault()?.move_entries().of(id)?;
    let title = title(reader, shift);
    let mut lines = vec![title.clone()];
    for (_, entry) in &entries {
        lines.push(line(reader, entry));
        lines.extend(entry.report.iter().map(|report| indented(report)));
    }
    let proofs = entries
        .iter()
        .filter(|(_, entry)| entry.result.is_proof())
        .count();
    lines.push(count(reader, entries.len(), proofs));
    Ok(OneShift {
        id: id.0,
        plain: entries.len() - proofs,
        proofs,
        entries: entries
            .iter()
            .map(|(id, entry)| row(reader, *id, entry))
            .collect(),
        erased_text: shift.erased.map(|erased| {
            let args = [
                ("plain", Arg::count(erased.plain)),
                ("proofs", Arg::count(erased.proofs)),
            ];
            reader.words.format("care-shift-erased", &args)
        }),
        text: lines.join("\n"),
        title,
    })
}

fn row(reader: Reader<'_>, id: MoveEntryId, entry: &MoveEntry) -> EntryRow {
    EntryRow {
        id: id.0,
        text: line(reader, entry),
        proof: entry.result.is_proof(),
    }
}

fn title(reader: Reader<'_>, shift: &Shift) -> String {
    let began = moment::from_record(shift.began_at);
    let args = [
        ("day", Arg::Text(reader.words.day_text(began.date_naive()))),
        ("time", Arg::Text(reader.words.time_text(began.time()))),
    ];
    reader.words.format("care-shift-title", &args)
}

fn count(reader: Reader<'_>, all: usize, proofs: usize) -> String {
    let number = |count: usize| Arg::count(u32::try_from(count).unwrap_or(u32::MAX));
    let args = [("all", number(all)), ("proofs", number(proofs))];
    reader.words.format("care-shift-count", &args)
}

fn indented(text: &str) -> String {
    let lines: Vec<String> = text.lines().map(|line| format!("    {line}")).collect();
    lines.join("\n")
}

/// One entry in one line: "9:12 A7, from bed to chair: done. Stand aid, 1 worker."
#[must_use]
pub(crate) fn line(reader: Reader<'_>, entry: &MoveEntry) -> String {
    let words = reader.words;
    let at = moment::from_record(entry.at);
    let result = words.text(&message_id("care-result", entry.result.id()));
    let head = [
        ("time", Arg::Text(words.time_text(at.time()))),
        ("code", Arg::text(entry.code.clone())),
        ("what", Arg::Text(move_name(reader, &entry.what))),
        ("result", Arg::Text(result)),
    ];
    let mut parts = vec![words.format("care-entry", &head)];
    if let Some(way) = entry.way.as_deref().and_then(PeopleWay::from_id) {
        parts.push(words.text(&message_id("way", way.id())));
    }
    for id in &entry.equipment {
        let name = equipment_name(reader, id);
        if !parts.contains(&name) {
            parts.push(name);
        }
    }
    if let Some(workers) = entry.workers.filter(|count| *count > 0) {
        parts.push(words.format("care-people", &[("workers", Arg::count(workers))]));
    }
    let known = entry.signs.iter().filter_map(|id| StopSign::from_id(id));
    parts.extend(known.map(|sign| words.text(&super::log::seen_word(sign))));
    let helped = entry
        .helped
        .iter()
        .filter(|id| super::log::HELPED.contains(&id.as_str()));
    let helped: Vec<String> = helped
        .map(|id| words.text(&message_id("care-helped", id)))
        .collect();
    if !helped.is_empty() {
        let args = [("what", Arg::Text(helped.join("; ")))];
        parts.push(words.format("care-entry-helped", &args));
    }
    if let Some(told) = entry.told {
        parts.push(words.text(&message_id("care-told", told.id())));
    }
    let parts: Vec<&str> = parts
        .iter()
        .map(|part| part.trim_end_matches('.'))
        .collect();
    format!("{}.", parts.join(". "))
}

/// Notes that the open shift was handed over. Its entries stay until they are erased.
///
/// # Errors
/// `not_found` when none is open; what the vault gives.
pub(crate) fn shift_hand_over(call: &mut Call<'_>, _: Nothing) -> Result<ShiftView, Failure> {
    let vault = call.vault()?;
    let open = vault.shifts().open()?;
    let (id, mut kept) = open.ok_or_else(|| Failure::new(ErrorCode::NotFound))?;
    kept.handed_at = Some(moment::to_record(call.now));
    vault.together(|vault| {
        if let Some(leaving) = of_open_shift(vault)? {
            note(vault, call.now, &leaving, DepartureHow::Told)?;
        }
        vault.shifts().save(id, &kept)
    })?;
    shift(call, Nothing {})
}

/// The command `shift_erase`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct EraseShift {
    id: i64,
    #[serde(default)]
    proofs: bool,
}

/// Erases the entries of a shift that was handed over. Near misses and refusals go only with `proofs`; how many
/// went stays known.
///
/// # Errors
/// `not_found`; `contradiction` before it was handed over; what the vault gives.
pub(crate) fn shift_erase(call: &mut Call<'_>, asked: EraseShift) -> Result<ShiftView, Failure> {
    let id = ShiftId(asked.id);
    let vault = call.vault()?;
    let found = vault.shifts().find(id)?;
    let mut kept = found.ok_or_else(|| Failure::at(ErrorCode::NotFound, "id"))?;
    if kept.handed_at.is_none() {
        return Err(Failure::at(ErrorCode::Contradiction, "id"));
    }
    let now = moment::to_record(call.now);
    vault.together(|vault| {
        let before = kept.erased.unwrap_or(Erased {
            at: now,
            plain: 0,
            proofs: 0,
        });
        let plain = vault.move_entries().erase(id, false)?;
        let proofs = match asked.proofs {
            true => vault.move_entries().erase(id, true)?,
            false => 0,
        };
        kept.erased = Some(Erased {
            at: now,
            plain: before.plain.saturating_add(plain),
            proofs: before.proofs.saturating_add(proofs),
        });
        vault.shifts().save(id, &kept)
    })?;
    shift(call, Nothing {})
}
