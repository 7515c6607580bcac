//! One slot: the data key wrapped under a passphrase.

use argon2::{Algorithm, Argon2, Params, Version};
use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};
use zeroize::Zeroizing;

use super::random::{Random, make_bytes};
use super::{Cost, DataKey, Passphrase};
use crate::{Damage, StorageFailure, VaultError};

/// Bytes of one slot: version 1, kind 1, memory 4, passes 4, lanes 4, salt 16, nonce 24, wrapped key 48.
pub(crate) const SLOT_BYTES: usize = HEADER_BYTES + WRAPPED_BYTES;
const HEADER_BYTES: usize = 2 + 3 * 4 + SALT_BYTES + NONCE_BYTES;
const SALT_BYTES: usize = 16;
const NONCE_BYTES: usize = 24;
const WRAPPED_BYTES: usize = 32 + 16;

/// The only slot version so far.
const VERSION: u8 = 1;
/// Opened by a passphrase. Kinds 2 (recovery code) and 3 (the phone's keystore) are set aside.
const KIND_PASSPHRASE: u8 = 1;

/// A slot as it lies in the file. Kinds this version cannot open are carried along untouched.
#[derive(Clone, PartialEq, Eq)]
pub(crate) struct Slot([u8; SLOT_BYTES]);

impl Slot {
    /// Wraps `key` under `passphrase`. `file_header` is bound in, so that a slot opens in no other file.
    pub(crate) fn make(
        key: &DataKey,
        passphrase: &Passphrase,
        cost: Cost,
        file_header: &[u8],
        random: &mut Random<'_>,
    ) -> Result<Self, VaultError> {
        let salt: [u8; SALT_BYTES] = make_bytes(random)?;
        let nonce: [u8; NONCE_BYTES] = make_bytes(random)?;
        let mut bytes = Vec::with_capacity(SLOT_BYTES);
        bytes.extend([VERSION, KIND_PASSPHRASE]);
        for parameter in [cost.memory_kib(), cost.passes(), cost.lanes()] {
            bytes.extend(parameter.to_be_bytes());
        }
        bytes.extend(salt);
        bytes.extend(nonce);
        let bound = [file_header, &bytes].concat();
        let wrapped = cipher(passphrase, cost, &salt)?
            .encrypt(
                &XNonce::from(nonce),
                Payload {
                    msg: key.bytes(),
                    aad: &bound,
                },
            )
            .map_err(|_| VaultError::Storage(StorageFailure::Derivation))?;
        bytes.extend(wrapped);
        Self::from_bytes(&bytes)
    }

    /// Unwraps the data key; `None` if the tag does not accept the passphrase.
    pub(crate) fn open(
        &self,
        passphrase: &Passphrase,
        file_header: &[u8],
    ) -> Result<Option<DataKey>, VaultError> {
        let damaged = VaultError::Damaged(Damage::Slots);
        let (header, wrapped) = self.0.split_at_checked(HEADER_BYTES).ok_or(damaged)?;
        let mut reader = Reader(header.get(2..).ok_or(damaged)?);
        let [memory_kib, passes, lanes] = [reader.number(), reader.number(), reader.number()];
        let (salt, nonce) = (reader.take::<SALT_BYTES>(), reader.take::<NONCE_BYTES>());
        let (Some(memory_kib), Some(passes), Some(lanes), Some(salt), Some(nonce)) =
            (memory_kib, passes, lanes, salt, nonce)
        else {
            return Err(damaged);
        };
        let cost = Cost::new(memory_kib, passes, lanes).map_err(|_| damaged)?;
        let bound = [file_header, header].concat();
        let opened = cipher(passphrase, cost, &salt)?
            .decrypt(
                &XNonce::from(nonce),
                Payload {
                    msg: wrapped,
                    aad: &bound,
                },
            )
            .map(Zeroizing::new);
        let Ok(opened) = opened else { return Ok(None) };
        let mut key = Zeroizing::new([0; 32]);
        if opened.len() != key.len() {
            return Err(damaged);
        }
        key.copy_from_slice(&opened);
        Ok(Some(DataKey::from_bytes(key)))
    }

    pub(crate) fn from_bytes(bytes: &[u8]) -> Result<Self, VaultError> {
        bytes
            .try_into()
            .map(Self)
            .map_err(|_| VaultError::Damaged(Damage::Slots))
    }

    pub(crate) fn bytes(&self) -> &[u8] {
        &self.0
    }

    pub(crate) fn is_for_passphrase(&self) -> bool {
        self.0.starts_with(&[VERSION, KIND_PASSPHRASE])
    }
}

/// Argon2id version 0x13 (RFC 9106) gives the key; XChaCha20-Poly1305 wraps with it.
fn cipher(
    passphrase: &Passphrase,
    cost: Cost,
    salt: &[u8],
) -> Result<XChaCha20Poly1305, VaultError> {
    let failed = VaultError::Storage(StorageFailure::Derivation);
    let params = Params::new(cost.memory_kib(), cost.passes(), cost.lanes(), Some(32))
        .map_err(|_| failed)?;
    let mut key = Zeroizing::new([0_u8; 32]);
    Argon2::new(Algorithm::Argon2id, Version::V0x13, params)
        .hash_password_into(passphrase.bytes(), salt, key.as_mut_slice())
        .map_err(|_| failed)?;
    XChaCha20Poly1305::new_from_slice(key.as_slice()).map_err(|_| failed)
}

/// Takes fixed-size parts off the front.
struct Reader<'b>(&'b [u8]);

impl Reader<'_> {
    fn take<const N: usize>(&mut self) -> Option<[u8; N]> {
        let (taken, rest) = self.0.split_first_chunk::<N>()?;
        self.0 = rest;
        Some(*taken)
    }

    fn number(&mut self) -> Option<u32> {
        self.take().map(u32::from_be_bytes)
    }
}
