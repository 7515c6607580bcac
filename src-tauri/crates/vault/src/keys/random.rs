//! Randomness, as it comes in from the caller.

use crate::VaultError;

/// No random numbers could be had.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("no random numbers")]
pub struct NoRandomness;

/// Fills a buffer from the operating system's random source, or says that it cannot.
pub type Random<'a> = dyn FnMut(&mut [u8]) -> Result<(), NoRandomness> + 'a;

/// Fresh random bytes.
pub(crate) fn make_bytes<const N: usize>(random: &mut Random<'_>) -> Result<[u8; N], VaultError> {
    let mut bytes = [0; N];
    random(&mut bytes).map_err(|NoRandomness| VaultError::Randomness)?;
    Ok(bytes)
}
