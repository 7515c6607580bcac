//! Whom a clinician treats: a list that can be searched, and for each their plans, what came from them, and notes that never
//! leave this device.

mod changes;
pub(crate) mod keep;
pub(crate) mod list;
pub(crate) mod page;
mod search;
pub(crate) mod seen;

use crate::call::Call;
use crate::failure::Failure;
use door::ErrorCode;
use record::Patient;
use vault::PatientId;

/// The patient with this id.
///
/// # Errors
/// `not_found` at `id`; what the vault gives.
fn find(call: &Call<'_>, id: i64) -> Result<(PatientId, Patient), Failure> {
    let id = PatientId(id);
    let found = call.vault()?.patients().find(id)?;
    let patient = found.ok_or_else(|| Failure::at(ErrorCode::NotFound, "id"))?;
    Ok((id, patient))
}
