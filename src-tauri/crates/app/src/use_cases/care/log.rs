//! The log of moves: done, not done, near miss, refused; what helped; who was told.

use super::standing::MoveStanding;
use super::walk::{judge, report_lines};
use super::worker;
use crate::call::Call;
use crate::card::IdText;
use crate::convert::moment;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::use_cases::first_start::read;
use crate::use_cases::keep::{Kept, UNDO_WITHIN};
use crate::words::message_id;
use door::ErrorCode;
use lifting::transfer::advice::MoveOutcome;
use lifting::transfer::checks::StopSign;
use record::{MoveEntry, MoveResult, Outcome, Shift, Told};
use serde::{Deserialize, Serialize};
use vault::{MoveEntryId, ShiftId, Vault, VaultError};

/// What can have helped.
pub(crate) const HELPED: [&str; 8] = [
    "talked",
    "slower",
    "second_worker",
    "equipment",
    "bed_raised",
    "room",
    "rest_first",
    "pause",
];

/// Signs to stop that can be written down. What the worker's own body said is not among them: it is nobody's
/// business but theirs, and the log is handed over.
pub(crate) fn seen() -> impl Iterator<Item = StopSign> {
    StopSign::ALL
        .iter()
        .copied()
        .filter(|sign| *sign != StopSign::OwnPain)
}

/// The message for a sign as it stands in the log, which others read.
#[must_use]
pub(crate) fn seen_word(sign: StopSign) -> String {
    match sign {
        StopSign::TooHeavy => "care-seen-too-heavy".to_owned(),
        _ => message_id("move-stop", sign.id()),
    }
}

/// The command `move_keep`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct KeepMove {
    result: String,
    #[serde(default)]
    way: Option<String>,
    #[serde(default)]
    signs: Vec<String>,
    #[serde(default)]
    told: Option<String>,
}

/// Keeps what became of the move and ends the walk. On return it is on the disk.
///
/// # Errors
/// `no_draft`; `not_a_choice`; `contradiction` for a way that was not used; what the vault gives.
pub(crate) fn move_keep(call: &mut Call<'_>, asked: KeepMove) -> Result<Kept, Failure> {
    let result = read(MoveResult::from_id(&asked.result), "result")?;
    let told = asked
        .told
        .as_deref()
        .map(|id| read(Told::from_id(id), "told"))
        .transpose()?;
    check_signs(&asked.signs)?;
    let standing = MoveStanding::open(call)?;
    let (_, advice) = judge(&standing, &worker::today(call)?);
    let used = match &asked.way {
        None => None,
        Some(_) if result != MoveResult::Done && result != MoveResult::NearMiss => {
            return Err(Failure::at(ErrorCode::Contradiction, "way"));
        }
        Some(id) => {
            let offers = advice.outcome.offers();
            let found = offers.into_iter().find(|offer| offer.way.id() == id);
            Some(read(found.cloned(), "way")?)
        }
    };
    let reported = result == MoveResult::Refused || told.is_some();
    let report = match reported {
        true => Some(report_lines(call, &standing)?.join("\n")),
        false => None,
    };
    let entry = MoveEntry {
        at: moment::to_record(call.now),
        person: standing.id.0,
        code: standing.person.code.clone(),
        what: standing.what.id().to_owned(),
        result,
        outcome: Some(match advice.outcome {
            MoveOutcome::GoAhead { .. } => Outcome::Lift,
            MoveOutcome::DoNotMove { .. } => Outcome::DoNotLift,
            MoveOutcome::SeekCare { .. } => Outcome::SeekCare,
            MoveOutcome::Refuse => Outcome::Refuse,
        }),
        way: used.as_ref().map(|offer| offer.way.id().to_owned()),
        workers: used.as_ref().map(|offer| offer.workers),
        equipment: used
            .iter()
            .flat_map(|offer| offer.equipment.iter())
            .map(|piece| piece.id().to_owned())
            .collect(),
        helped: Vec::new(),
        signs: asked.signs,
        report,
        told,
        rule_version: crate::card::RULE_VERSION.to_owned(),
    };
    let id = call.vault()?.together(|vault| {
        let shift = open_shift(vault, entry.at)?;
        let id = vault.move_entries().add(shift, &entry)?;
        vault.move_draft().clear()?;
        Ok(id)
    })?;
    Ok(Kept { id: id.0 })
}

/// The shift that is open; the first entry begins one.
fn open_shift(vault: &Vault, now: record::Moment) -> Result<ShiftId, VaultError> {
    match vault.shifts().open()? {
        Some((id, _)) => Ok(id),
        None => vault.shifts().begin(&Shift {
            began_at: now,
            handed_at: None,
            erased: None,
        }),
    }
}

fn check_signs(signs: &[String]) -> Result<(), Failure> {
    let known = |id: &String| seen().any(|sign| sign.id() == id);
    if signs.iter().all(known) {
        Ok(())
    } else {
        Err(Failure::at(ErrorCode::NotAChoice, "signs"))
    }
}

/// A command that names an entry.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OneEntry {
    id: i64,
}

/// The reply of `move_entry`: what can be added to it.
#[derive(Debug, Serialize)]
pub(crate) struct EntryView {
    id: i64,
    text: String,
    result: &'static str,
    helped: Vec<IdText>,
    signs: Vec<IdText>,
    ticked: Vec<String>,
}

/// One entry of the open shift, with what can be added to it.
///
/// # Errors
/// `not_found`; what the vault gives.
pub(crate) fn move_entry(call: &mut Call<'_>, asked: OneEntry) -> Result<EntryView, Failure> {
    let entry = of_open_shift(call, asked.id)?;
    let reader = call.reader()?;
    let named = |prefix: &str, id: &str| IdText {
        id: id.to_owned(),
        text: reader.words.text(&message_id(prefix, id)),
    };
    Ok(EntryView {
        id: asked.id,
        text: super::shift::line(reader, &entry),
        result: entry.result.id(),
        helped: HELPED.iter().map(|id| named("care-helped", id)).collect(),
        signs: seen()
            .map(|sign| IdText {
                id: sign.id().to_owned(),
                text: reader.words.text(&seen_word(sign)),
            })
            .collect(),
        ticked: entry.helped.iter().chain(&entry.signs).cloned().collect(),
    })
}

/// The command `move_more`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct MoreOfMove {
    id: i64,
    #[serde(default)]
    helped: Option<Vec<String>>,
    #[serde(default)]
    signs: Option<Vec<String>>,
    #[serde(default)]
    near_miss: bool,
}

/// Adds to an entry of the open shift: what helped, which signs were seen, that it nearly went wrong. A near
/// miss or a refusal never turns into anything less.
///
/// # Errors
/// `not_found`, `not_a_choice`; what the vault gives.
pub(crate) fn move_more(call: &mut Call<'_>, asked: MoreOfMove) -> Result<Nothing, Failure> {
    let mut entry = of_open_shift(call, asked.id)?;
    if let Some(helped) = asked.helped {
        if !helped.iter().all(|id| HELPED.contains(&id.as_str())) {
            return Err(Failure::at(ErrorCode::NotAChoice, "helped"));
        }
        entry.helped = helped;
    }
    if let Some(signs) = asked.signs {
        check_signs(&signs)?;
        entry.signs = signs;
    }
    if asked.near_miss && !entry.result.is_proof() {
        entry.result = MoveResult::NearMiss;
    }
    call.vault()?
        .move_entries()
        .save(MoveEntryId(asked.id), &entry)?;
    Ok(Nothing {})
}

/// Takes the newest entry of the open shift back, within ten minutes. Never a near miss or a refusal.
///
/// # Errors
/// `not_found` for any other entry, or later; what the vault gives.
pub(crate) fn move_undo(call: &mut Call<'_>, asked: OneEntry) -> Result<Nothing, Failure> {
    let not_found = || Failure::at(ErrorCode::NotFound, "id");
    let vault = call.vault()?;
    let (shift, _) = vault.shifts().open()?.ok_or_else(not_found)?;
    let newest = vault.move_entries().of(shift)?.pop();
    let (id, entry) = newest.ok_or_else(not_found)?;
    let may_go = id.0 == asked.id
        && !entry.result.is_proof()
        && moment::still_holds(entry.at, call.now, UNDO_WITHIN);
    if !may_go || !vault.move_entries().remove(id)? {
        return Err(not_found());
    }
    Ok(Nothing {})
}

fn of_open_shift(call: &Call<'_>, id: i64) -> Result<MoveEntry, Failure> {
    let vault = call.vault()?;
    let open = vault.shifts().open()?;
    let entries = match open {
        Some((shift, _)) => vault.move_entries().of(shift)?,
        None => Vec::new(),
    };
    let found = entries.into_iter().find(|(found, _)| found.0 == id);
    found
        .map(|(_, entry)| entry)
        .ok_or_else(|| Failure::at(ErrorCode::NotFound, "id"))
}
