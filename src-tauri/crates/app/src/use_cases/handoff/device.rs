//! The keys of this device. They are made the first time they are needed.

use crate::call::Call;
use crate::convert::moment;
use crate::failure::Failure;
use door::ErrorCode;
use handoff::{Alias, AliasError, DeviceKeys, NoRandomness, Role};
use record::{Device, SecretBytes, UsedFor};

/// This device as kept, and its keys.
///
/// # Errors
/// `randomness_failed`; `vault_damaged` for keys that are none; what the vault gives.
pub(crate) fn own(call: &Call<'_>) -> Result<(Device, DeviceKeys), Failure> {
    let vault = call.vault()?;
    if let Some(device) = vault.device().load()? {
        let keys = DeviceKeys::from_secret_bytes(device.keys.bytes())
            .map_err(|_| Failure::new(ErrorCode::VaultDamaged))?;
        return Ok((device, keys));
    }
    let keys = DeviceKeys::make(&mut random(call))
        .map_err(|NoRandomness| Failure::new(ErrorCode::RandomnessFailed))?;
    let device = Device {
        keys: SecretBytes::new(keys.to_secret_bytes().to_vec()),
        alias: None,
        made_at: moment::to_record(call.now),
    };
    vault.device().save(&device)?;
    Ok((device, keys))
}

/// What the holder is called on other devices.
///
/// # Errors
/// `alias_needed` until they have said; as [`own`].
pub(crate) fn own_alias(call: &Call<'_>) -> Result<Alias, Failure> {
    let (device, _) = own(call)?;
    let alias = device
        .alias
        .as_deref()
        .and_then(|text| Alias::new(text).ok());
    alias.ok_or_else(|| Failure::new(ErrorCode::AliasNeeded))
}

/// What the holder mostly does.
///
/// # Errors
/// What the vault gives.
pub(crate) fn own_role(call: &Call<'_>) -> Result<Role, Failure> {
    Ok(match call.settings()?.used_for {
        UsedFor::Lift => Role::Lift,
        UsedFor::Help => Role::Help,
        UsedFor::Treat => Role::Treat,
    })
}

/// The world's randomness, as the hand-off takes it.
pub(crate) fn random<'c>(
    call: &'c Call<'_>,
) -> impl FnMut(&mut [u8]) -> Result<(), NoRandomness> + use<'c> {
    let world = call.world;
    move |bytes: &mut [u8]| world.fill_random(bytes).map_err(|_| NoRandomness)
}

/// A typed alias, or why it is none.
///
/// # Errors
/// `alias_length` or `alias_character` at `alias`.
pub(crate) fn read_alias(text: &str) -> Result<Alias, Failure> {
    Alias::typed(text).map_err(|error| {
        let code = match error {
            AliasError::Length => ErrorCode::AliasLength,
            _ => ErrorCode::AliasCharacter,
        };
        Failure::at(code, "alias")
    })
}

/// What the screens call a role.
#[must_use]
pub(crate) const fn role_id(role: Role) -> &'static str {
    match role {
        Role::Lift => "lifts",
        Role::Help => "helps",
        Role::Treat => "treats",
    }
}
