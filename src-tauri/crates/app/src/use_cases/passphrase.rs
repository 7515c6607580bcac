//! A new passphrase in place of the old one.

use super::Nothing;
use super::first_start::check_new;
use super::unlock::try_passphrase;
use crate::call::Call;
use crate::failure::Failure;
use crate::secret::Secret;
use serde::Deserialize;
use vault::NoRandomness;

/// The command `passphrase_change`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct ChangePassphrase {
    old: Secret,
    new: Secret,
    again: Secret,
}

/// Puts a new passphrase in place of the old one. Only the key slots are written; what is kept is not touched,
/// and the vault stays open. A wrong old one counts as a wrong try, as for `unlock`.
///
/// # Errors
/// `passphrase_short` at `new`, `passphrase_mismatch`, `try_later`, `wrong_passphrase` at `old`,
/// `randomness_failed`, `disk_full`, `storage_failed`. Then the old one is still in force.
pub(crate) fn passphrase_change(
    call: &mut Call<'_>,
    asked: ChangePassphrase,
) -> Result<Nothing, Failure> {
    check_new(&asked.new, &asked.again, "new")?;
    call.vault()?;
    try_passphrase(call, "old", |call| {
        let (world, cost) = (call.world, call.cost);
        let mut random = |bytes: &mut [u8]| world.fill_random(bytes).map_err(|_| NoRandomness);
        let Some(vault) = call.state.session.vault_mut() else {
            return Ok(());
        };
        let (old, new) = (asked.old.passphrase(), asked.new.passphrase());
        vault.change_passphrase_at_cost(old, new, cost, &mut random)
    })?;
    Ok(Nothing {})
}
