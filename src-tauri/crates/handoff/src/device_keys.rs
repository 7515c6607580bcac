//! The secret keys of a device.

use std::fmt;

use ed25519_dalek::SigningKey;
use x25519_dalek::{PublicKey, StaticSecret};
use zeroize::Zeroizing;

use crate::card::{Alias, Card, CardError, Role};
use crate::random::{NoRandomness, Random, make_bytes};

/// Bytes of both secrets together.
const SECRET_BYTES: usize = 64;

/// One X25519 secret for opening and one Ed25519 secret for signing. Made once an install, kept in the
/// vault, wiped from memory when dropped.
pub struct DeviceKeys {
    opening: StaticSecret,
    signing: SigningKey,
}

/// Bytes that are not device keys.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("not device keys")]
pub struct KeysError;

impl DeviceKeys {
    /// Fresh keys.
    ///
    /// # Errors
    /// [`NoRandomness`] if the caller has none.
    pub fn make(random: &mut Random<'_>) -> Result<Self, NoRandomness> {
        let opening = Zeroizing::new(make_bytes::<32>(random)?);
        let signing = Zeroizing::new(make_bytes::<32>(random)?);
        Ok(Self {
            opening: StaticSecret::from(*opening),
            signing: SigningKey::from_bytes(&signing),
        })
    }

    /// The secrets, for the vault and nowhere else: X25519 scalar, then Ed25519 seed, 32 bytes each.
    #[must_use]
    pub fn to_secret_bytes(&self) -> Zeroizing<[u8; SECRET_BYTES]> {
        let mut bytes = Zeroizing::new([0; SECRET_BYTES]);
        let both = self
            .opening
            .as_bytes()
            .iter()
            .chain(self.signing.as_bytes());
        bytes
            .iter_mut()
            .zip(both)
            .for_each(|(to, from)| *to = *from);
        bytes
    }

    /// Takes keys back from the vault.
    ///
    /// # Errors
    /// [`KeysError`] unless there are exactly 64 bytes.
    pub fn from_secret_bytes(bytes: &[u8]) -> Result<Self, KeysError> {
        let (opening, rest) = bytes.split_first_chunk::<32>().ok_or(KeysError)?;
        let signing: &[u8; 32] = rest.try_into().map_err(|_| KeysError)?;
        Ok(Self {
            opening: StaticSecret::from(*opening),
            signing: SigningKey::from_bytes(signing),
        })
    }

    /// The public side.
    ///
    /// # Errors
    /// [`CardError::WeakKey`], which keys made here never give.
    pub fn card(&self, alias: Alias, role: Role) -> Result<Card, CardError> {
        let sealing = PublicKey::from(&self.opening).to_bytes();
        Card::new(
            sealing,
            self.signing.verifying_key().to_bytes(),
            alias,
            role,
        )
    }

    /// Both public keys, as they are bound into parcels and hashed to the key id.
    pub(crate) fn public_keys(&self) -> [u8; 64] {
        let sealing = PublicKey::from(&self.opening).to_bytes();
        let signing = self.signing.verifying_key().to_bytes();
        let mut keys = [0; 64];
        let both = sealing.iter().chain(&signing);
        keys.iter_mut().zip(both).for_each(|(to, from)| *to = *from);
        keys
    }

    pub(crate) fn opening(&self) -> &StaticSecret {
        &self.opening
    }

    pub(crate) fn signing(&self) -> &SigningKey {
        &self.signing
    }
}

impl fmt::Debug for DeviceKeys {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str("DeviceKeys(…)")
    }
}

#[cfg(test)]
mod tests {
    use super::{DeviceKeys, KeysError};
    use crate::NoRandomness;

    #[test]
    fn keys_come_back_from_the_vault_as_they_were() {
        let keys = DeviceKeys::from_secret_bytes(&[7; 64]).unwrap();
        let again = DeviceKeys::from_secret_bytes(keys.to_secret_bytes().as_slice()).unwrap();
        assert_eq!(keys.public_keys(), again.public_keys());
        assert_eq!(*keys.to_secret_bytes(), [7; 64]);
    }

    #[test]
    fn refuses_keys_of_another_length() {
        for length in [0, 32, 63, 65, 128] {
            let found = DeviceKeys::from_secret_bytes(&vec![7; length]).err();
            assert_eq!(found, Some(KeysError), "{length}");
        }
    }

    #[test]
    fn without_randomness_there_are_no_keys() {
        let made = DeviceKeys::make(&mut |_: &mut [u8]| Err(NoRandomness));
        assert_eq!(made.err(), Some(NoRandomness));
    }

    #[test]
    fn debug_shows_nothing() {
        let keys = DeviceKeys::from_secret_bytes(&[7; 64]).unwrap();
        assert_eq!(format!("{keys:?}"), "DeviceKeys(…)");
    }
}
