//! Erasing everything on purpose.

use super::Nothing;
use super::unlock::try_passphrase;
use crate::backoff::WrongTries;
use crate::call::Call;
use crate::device::Device;
use crate::failure::Failure;
use crate::secret::Secret;
use door::ErrorCode;
use serde::Deserialize;
use vault::Vault;

/// The command `erase_everything`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct EraseEverything {
    passphrase: Secret,
}

/// Erases the vault for good: the keys first, then the files. Asks for the passphrase, so that a phone left
/// open is not emptied by somebody else. Afterwards the app is as before its first start; the language stays.
///
/// # Errors
/// `try_later`, `wrong_passphrase`: nothing was erased. `erase_unfinished`: it goes on at the next start.
pub(crate) fn erase_everything(
    call: &mut Call<'_>,
    asked: EraseEverything,
) -> Result<Nothing, Failure> {
    try_passphrase(call, "passphrase", |call| {
        Vault::check_passphrase(call.folder, asked.passphrase.passphrase())
    })?;
    call.state.session.lock();
    let erased = Vault::erase(call.folder);
    // Before the outcome is told: whatever is left is nobody's demo, and nobody's wrong tries.
    let device = Device {
        tries: WrongTries::default(),
        demo: false,
        ..call.state.device
    };
    if call.keep_device(device).is_err() || erased.is_err() {
        return Err(Failure::new(ErrorCode::EraseUnfinished));
    }
    Ok(Nothing {})
}
