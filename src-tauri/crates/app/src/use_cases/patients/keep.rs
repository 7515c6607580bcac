//! Putting people on the list, renaming and removing them, and notes about them.

use super::find;
use super::page::OfPatient;
use super::seen::begin;
use crate::call::Call;
use crate::convert::moment::to_record;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::use_cases::handoff::device::read_alias;
use door::ErrorCode;
use record::{Note, Patient};
use serde::{Deserialize, Serialize};
use vault::PatientNoteId;

/// Longest note, in characters (house rule).
const LONGEST_NOTE: usize = 1000;

/// The command `patient_new`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct NewPatient {
    alias: String,
}

/// The reply of `patient_new`.
#[derive(Debug, Serialize)]
pub(crate) struct NewId {
    id: i64,
}

/// Puts somebody on the list. On return they are kept.
///
/// # Errors
/// `alias_length`, `alias_character` at `alias`; what the vault gives.
pub(crate) fn patient_new(call: &mut Call<'_>, asked: NewPatient) -> Result<NewId, Failure> {
    let alias = read_alias(&asked.alias)?;
    let patient = begin(alias.as_str().to_owned(), to_record(call.now), None);
    let id = call.vault()?.patients().add(&patient)?;
    Ok(NewId { id: id.0 })
}

/// The command `patient_rename`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Rename {
    id: i64,
    alias: String,
}

/// Gives somebody another name on this list. Plans keep the name that they were made with.
///
/// # Errors
/// `not_found` at `id`; `alias_length`, `alias_character` at `alias`; what the vault gives.
pub(crate) fn patient_rename(call: &mut Call<'_>, asked: Rename) -> Result<Nothing, Failure> {
    let (id, patient) = find(call, asked.id)?;
    let alias = read_alias(&asked.alias)?;
    let renamed = Patient {
        alias: alias.as_str().to_owned(),
        ..patient
    };
    call.vault()?.patients().save(id, &renamed)?;
    Ok(Nothing {})
}

/// Takes somebody off the list, with the notes about them. What they handed over and their pairing stay.
///
/// # Errors
/// `not_found` at `id`; what the vault gives.
pub(crate) fn patient_remove(call: &mut Call<'_>, asked: OfPatient) -> Result<Nothing, Failure> {
    let (id, _) = find(call, asked.id)?;
    let vault = call.vault()?;
    vault.together(|vault| {
        // Their plans go too, or they would come back with their name.
        for plan in vault.patients().plans(id)? {
            vault.plans().remove(plan)?;
        }
        vault.patients().remove(id)
    })?;
    Ok(Nothing {})
}

/// The command `patient_note`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct NewNote {
    id: i64,
    text: String,
}

/// Keeps a note about somebody. It never leaves this device.
///
/// # Errors
/// `not_found` at `id`; `missing_field`, `too_long` at `text`; what the vault gives.
pub(crate) fn patient_note(call: &mut Call<'_>, asked: NewNote) -> Result<NewId, Failure> {
    let (id, _) = find(call, asked.id)?;
    let text = asked.text.trim();
    if text.is_empty() {
        return Err(Failure::at(ErrorCode::MissingField, "text"));
    }
    if text.chars().count() > LONGEST_NOTE {
        return Err(Failure::at(ErrorCode::TooLong, "text"));
    }
    let note = Note {
        at: to_record(call.now),
        text: text.to_owned(),
    };
    let note = call.vault()?.patient_notes().add(id, &note)?;
    Ok(NewId { id: note.0 })
}

/// The command `patient_note_remove`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OfNote {
    id: i64,
    note: i64,
}

/// Removes a note for good.
///
/// # Errors
/// `not_found` at `id` or `note`; what the vault gives.
pub(crate) fn patient_note_remove(call: &mut Call<'_>, asked: OfNote) -> Result<Nothing, Failure> {
    let (id, _) = find(call, asked.id)?;
    let notes = call.vault()?.patient_notes();
    if notes.remove(id, PatientNoteId(asked.note))? {
        Ok(Nothing {})
    } else {
        Err(Failure::at(ErrorCode::NotFound, "note"))
    }
}
