//! The random key of a vault, and one key for each use derived from it.

use hkdf::Hkdf;
use sha2::Sha256;
use zeroize::Zeroizing;

use super::random::{Random, make_bytes};
use crate::VaultError;

/// The random 32-byte key that a slot wraps. Used for nothing but deriving other keys.
pub(crate) struct DataKey(Zeroizing<[u8; 32]>);

/// The raw key of the database. The key pragma is built from nothing else.
pub(crate) struct DatabaseKey(Zeroizing<[u8; 32]>);

/// The key of the chain over the lifts.
pub(crate) struct LogKey(Zeroizing<[u8; 32]>);

impl DataKey {
    pub(crate) fn make(random: &mut Random<'_>) -> Result<Self, VaultError> {
        Ok(Self(Zeroizing::new(make_bytes(random)?)))
    }

    pub(crate) fn from_bytes(bytes: Zeroizing<[u8; 32]>) -> Self {
        Self(bytes)
    }

    pub(crate) fn bytes(&self) -> &[u8; 32] {
        &self.0
    }

    pub(crate) fn derive_database_key(&self) -> DatabaseKey {
        DatabaseKey(self.derive(b"heftwell vault 1 database"))
    }

    pub(crate) fn derive_log_key(&self) -> LogKey {
        LogKey(self.derive(b"heftwell vault 1 lift log"))
    }

    /// HKDF-SHA256 (RFC 5869) with no salt: the data key is uniformly random, so none is needed
    /// (section 3.1). One label, one use.
    fn derive(&self, label: &[u8]) -> Zeroizing<[u8; 32]> {
        let mut key = Zeroizing::new([0; 32]);
        // 32 bytes are far below the 8160 that HKDF-SHA256 can give, so this cannot fail.
        let expanded =
            Hkdf::<Sha256>::new(None, self.0.as_slice()).expand(label, key.as_mut_slice());
        debug_assert!(expanded.is_ok());
        key
    }
}

impl DatabaseKey {
    pub(crate) fn bytes(&self) -> &[u8; 32] {
        &self.0
    }
}

impl LogKey {
    pub(crate) fn bytes(&self) -> &[u8; 32] {
        &self.0
    }
}
