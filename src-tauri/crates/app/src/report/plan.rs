//! The plan behind a history.

use crate::failure::Failure;
use record::{Identity, Plan};
use vault::Vault;

/// The plan that is followed here.
///
/// # Errors
/// What the vault gives.
pub(super) fn followed(vault: &Vault) -> Result<Option<Plan>, Failure> {
    Ok(vault.followed().active()?.map(|followed| followed.plan))
}

/// The version of a plan made here that the newest history of a pairing was kept under; `None` when the history names none, or
/// one that was not made here.
///
/// # Errors
/// What the vault gives.
pub(super) fn of_pairing(vault: &Vault, pairing: Identity) -> Result<Option<Plan>, Failure> {
    let histories = vault.received().of(Some(pairing))?;
    let newest = histories.iter().max_by_key(|(id, _)| *id);
    let Some(named) = newest.and_then(|(_, received)| received.history.plan) else {
        return Ok(None);
    };
    for (id, plan) in vault.plans().all()? {
        if plan.id == named.id {
            let versions = vault.plan_versions().of(id)?;
            return Ok(versions
                .into_iter()
                .find(|plan| plan.version == named.version));
        }
    }
    Ok(None)
}
