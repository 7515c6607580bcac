//! Argon2id at one fixed cost, for check words and one-time codes.

use argon2::{Algorithm, Argon2, Params, Version};
use zeroize::Zeroizing;

/// 64 MiB, 3 passes, 1 lane: RFC 9106 section 4, second recommended option, for a single thread. Part of
/// the format: no parcel names its own cost, so no stranger can ask for more memory.
const MEMORY_KIB: u32 = 64 * 1024;
const PASSES: u32 = 3;
const LANES: u32 = 1;

/// The memory could not be had.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct NoMemory;

/// 32 bytes from `secret` and `salt` (Argon2id, RFC 9106, version 0x13).
pub(crate) fn slow_hash(secret: &[u8], salt: &[u8]) -> Result<Zeroizing<[u8; 32]>, NoMemory> {
    let params = Params::new(MEMORY_KIB, PASSES, LANES, Some(32)).map_err(|_| NoMemory)?;
    let mut hash = Zeroizing::new([0; 32]);
    Argon2::new(Algorithm::Argon2id, Version::V0x13, params)
        .hash_password_into(secret, salt, hash.as_mut_slice())
        .map_err(|_| NoMemory)?;
    Ok(hash)
}
