//! The first start: what the app is for, and the passphrase.

use crate::call::Call;
use crate::failure::Failure;
use crate::secret::Secret;
use crate::session::Session;
use door::ErrorCode;
use record::{Settings, Units, UsedFor};
use serde::{Deserialize, Serialize};
use vault::{NoRandomness, Vault, VaultState};

/// The fewest characters of a passphrase. House rule.
pub(crate) const SHORTEST_PASSPHRASE: usize = 10;

/// The command `first_start`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct FirstStart {
    r#use: String,
    passphrase: Secret,
    again: Secret,
    units: String,
}

/// The reply of `first_start` and of `unlock`.
#[derive(Debug, Serialize)]
pub(crate) struct Opened {
    /// What the app is mostly used for.
    pub(crate) r#use: &'static str,
}

/// Makes the vault and leaves it open.
///
/// # Errors
/// `not_a_choice`, `passphrase_short`, `passphrase_mismatch`, `already_set_up`, `randomness_failed`,
/// `disk_full`, `storage_failed`.
pub(crate) fn first_start(call: &mut Call<'_>, asked: FirstStart) -> Result<Opened, Failure> {
    if Vault::state(call.folder)? == VaultState::Present {
        return Err(Failure::new(ErrorCode::AlreadySetUp));
    }
    let settings = Settings {
        used_for: read(UsedFor::from_id(&asked.r#use), "use")?,
        units: read(Units::from_id(&asked.units), "units")?,
    };
    check_new(&asked.passphrase, &asked.again, "passphrase")?;
    let world = call.world;
    let mut random = |bytes: &mut [u8]| world.fill_random(bytes).map_err(|_| NoRandomness);
    let vault = Vault::create_at_cost(
        call.folder,
        asked.passphrase.passphrase(),
        call.cost,
        &mut random,
    )?;
    vault.settings().save(&settings)?;
    call.state.session = Session::open(vault, call.world.uptime());
    Ok(Opened {
        r#use: settings.used_for.id(),
    })
}

/// Whether a new passphrase, named `field`, is long enough and was typed the same twice.
///
/// # Errors
/// `passphrase_short` at `field`; `passphrase_mismatch` at `again`.
pub(crate) fn check_new(new: &Secret, again: &Secret, field: &str) -> Result<(), Failure> {
    if new.passphrase().characters() < SHORTEST_PASSPHRASE {
        return Err(Failure::at(ErrorCode::PassphraseShort, field));
    }
    if new.passphrase() != again.passphrase() {
        return Err(Failure::at(ErrorCode::PassphraseMismatch, "again"));
    }
    Ok(())
}

/// A word from a closed list, or the failure that names its field.
///
/// # Errors
/// `not_a_choice`.
pub(crate) fn read<T>(found: Option<T>, field: &str) -> Result<T, Failure> {
    found.ok_or_else(|| Failure::at(ErrorCode::NotAChoice, field))
}
