//! Why the version that is being made is as it is, where the person is not told. It is kept apart from the plan and by
//! version, so that nothing which hands a plan over can hold it. Once a version was handed over, its reason stays as it is.

use crate::call::Call;
use crate::convert::moment;
use crate::failure::Failure;
use record::Note;
use vault::PlanId;

/// The private reason of the version that would be handed over next, if one was typed.
///
/// # Errors
/// What the vault gives.
pub(super) fn of_next(call: &Call<'_>, id: PlanId) -> Result<Option<String>, Failure> {
    let version = next(call, id)?;
    let note = call.vault()?.plan_whys().find(id, version)?;
    Ok(note.map(|note| note.text))
}

/// Keeps the private reason of the version that would be handed over next; `None` removes it.
///
/// # Errors
/// What the vault gives.
pub(super) fn set_next(call: &Call<'_>, id: PlanId, text: Option<String>) -> Result<(), Failure> {
    let version = next(call, id)?;
    let whys = call.vault()?.plan_whys();
    match text {
        Some(text) => {
            let at = moment::to_record(call.now);
            whys.save(id, version, &Note { at, text })?;
        }
        None => whys.remove(id, version)?,
    }
    Ok(())
}

fn next(call: &Call<'_>, id: PlanId) -> Result<u32, Failure> {
    let newest = call.vault()?.plan_versions().newest(id)?;
    Ok(newest.map_or(0, |newest| newest.version).saturating_add(1))
}
