//! Warning signs: the list to read at any time, and clearing one that was ticked.

use super::Nothing;
use super::first_start::read;
use crate::call::Call;
use crate::card::{SignsPage, signs_page};
use crate::convert::moment;
use crate::failure::Failure;
use door::ErrorCode;
use lifting::advise::advice::HowSoon;
use lifting::body::{Condition, Person, WarningSign};
use lifting::rules::warning_signs::how_soon;
use record::{About, Cleared, ClearedBy};
use serde::Deserialize;

/// All warning signs by what to do, and whom to call. Readable while locked: it says nothing about anybody.
///
/// # Errors
/// None.
pub(crate) fn signs(call: &mut Call<'_>, _: Nothing) -> Result<SignsPage, Failure> {
    Ok(signs_page(&call.state.words))
}

/// The command `sign_clear`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct ClearSign {
    sign: String,
    by: String,
}

/// Clears a sign with today's date. An emergency sign only after a clinician has looked.
///
/// # Errors
/// `not_a_choice`; `contradiction` at `by` for an emergency sign cleared by oneself; `not_found` when it is
/// not open; what the vault gives.
pub(crate) fn sign_clear(call: &mut Call<'_>, asked: ClearSign) -> Result<Nothing, Failure> {
    let by = read(ClearedBy::from_id(&asked.by), "by")?;
    let sign = read(WarningSign::from_id(&asked.sign), "sign")?;
    let about = call.vault()?.about().load()?.unwrap_or_default();
    if !clearing(&about, sign.id()).contains(&by) {
        return Err(Failure::at(ErrorCode::Contradiction, "by"));
    }
    let cleared = Cleared {
        at: moment::to_record(call.now),
        by,
    };
    if call.vault()?.signs().clear(sign.id(), cleared)? {
        Ok(Nothing {})
    } else {
        Err(Failure::at(ErrorCode::NotFound, "sign"))
    }
}

/// Who may clear a sign: an emergency only a clinician.
pub(crate) fn clearing(about: &About, sign: &str) -> &'static [ClearedBy] {
    if is_emergency(about, sign) {
        &[ClearedBy::Clinician]
    } else {
        &[ClearedBy::Me, ClearedBy::Clinician]
    }
}

/// Whether a sign is an emergency for this person: a replaced joint or a fall makes some signs one. What this
/// version does not know counts as one too.
pub(crate) fn is_emergency(about: &About, sign: &str) -> bool {
    let conditions = about.conditions.iter().flatten();
    let person = Person {
        conditions: conditions.filter_map(|id| Condition::from_id(id)).collect(),
        fell_last_year: about.fell_last_year,
        ..Person::default()
    };
    match WarningSign::from_id(sign).map(|sign| how_soon(sign, &person)) {
        Some(Some(HowSoon::SameDay) | None) => false,
        Some(Some(HowSoon::Emergency)) | None => true,
    }
}
