//! Unlocking with the passphrase, and locking.

use super::Nothing;
use super::first_start::Opened;
use crate::backoff::WrongTries;
use crate::call::Call;
use crate::device::Device;
use crate::failure::Failure;
use crate::secret::Secret;
use crate::session::Session;
use door::ErrorCode;
use serde::Deserialize;
use vault::{Vault, VaultError, VaultState};

/// The command `unlock`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Unlock {
    passphrase: Secret,
}

/// Opens the vault.
///
/// # Errors
/// `not_set_up`, `try_later`, `wrong_passphrase`, `vault_missing`, `vault_damaged`, `vault_foreign`,
/// `vault_newer`, `disk_full`, `storage_failed`.
pub(crate) fn unlock(call: &mut Call<'_>, asked: Unlock) -> Result<Opened, Failure> {
    if Vault::state(call.folder)? == VaultState::Absent {
        return Err(Failure::new(ErrorCode::NotSetUp));
    }
    let vault = try_passphrase(call, "passphrase", |call| {
        Vault::open(call.folder, asked.passphrase.passphrase())
    })?;
    call.state.session = Session::open(vault, call.world.uptime());
    Ok(Opened {
        r#use: call.settings()?.used_for.id(),
    })
}

/// Makes one try at the passphrase. After three wrong ones there is a wait, which a restart does not shorten:
/// the try is counted on the disk before it is made.
///
/// # Errors
/// `try_later`; `wrong_passphrase` at `field`; whatever else `open` gives, which does not count as a try.
pub(crate) fn try_passphrase<T>(
    call: &mut Call<'_>,
    field: &str,
    open: impl FnOnce(&mut Call<'_>) -> Result<T, VaultError>,
) -> Result<T, Failure> {
    let before = call.state.device.tries;
    let left_s = before.left_s(call.now);
    if left_s > 0 {
        if before.is_ahead_of(call.now) {
            // The clock was set back: the wait runs from now, or it could last for years.
            let last_ms = call.now.timestamp_millis();
            keep_tries(call, WrongTries { last_ms, ..before });
        }
        return Err(Failure::try_later(left_s));
    }
    keep_tries(call, before.and_one(call.now));
    match open(call) {
        Ok(opened) => {
            keep_tries(call, WrongTries::default());
            Ok(opened)
        }
        Err(VaultError::WrongPassphrase) => Err(Failure::at(ErrorCode::WrongPassphrase, field)),
        Err(error) => {
            // No passphrase was tried to the end, so it does not count.
            keep_tries(call, before);
            Err(error.into())
        }
    }
}

/// Keeps the count in memory and on the disk. A full disk does not keep anybody out of their own vault:
/// then the count holds until the app is closed.
fn keep_tries(call: &mut Call<'_>, tries: WrongTries) {
    let device = Device {
        tries,
        ..call.state.device
    };
    if device != call.state.device && call.keep_device(device).is_err() {
        call.state.device = device;
    }
}

/// Closes the vault and wipes its keys.
///
/// # Errors
/// None.
pub(crate) fn lock(call: &mut Call<'_>, _: Nothing) -> Result<Nothing, Failure> {
    call.state.session.lock();
    Ok(Nothing {})
}
