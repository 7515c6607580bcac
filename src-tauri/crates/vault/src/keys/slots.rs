//! The layout of the slots file.
//!
//! `magic 8 | layout 1 | vault id 16 | count 1 | slots, 102 each | SHA-256 of all before, 32`.
//! The checksum tells a damaged file from a wrong passphrase; it proves nothing about who wrote it.

use sha2::{Digest, Sha256};

use super::random::Random;
use super::slot::{SLOT_BYTES, Slot};
use super::{Cost, DataKey, Passphrase};
use crate::{Damage, ForeignFile, VaultError};

const MAGIC: &[u8; 8] = b"HFTWSLOT";
const LAYOUT: u8 = 1;
/// Bytes of the vault id.
pub(crate) const VAULT_ID_BYTES: usize = 16;
const HEADER_BYTES: usize = MAGIC.len() + 1 + VAULT_ID_BYTES;
const CHECKSUM_BYTES: usize = 32;
/// Most slots in a file (house rule).
const MOST_SLOTS: usize = 8;
/// Longest slots file, in bytes.
pub(crate) const LONGEST: usize = HEADER_BYTES + 1 + MOST_SLOTS * SLOT_BYTES + CHECKSUM_BYTES;

/// The slots of one vault.
#[derive(Clone, PartialEq, Eq)]
pub(crate) struct Slots {
    vault_id: [u8; VAULT_ID_BYTES],
    slots: Vec<Slot>,
}

impl Slots {
    /// Slots with one passphrase.
    pub(crate) fn make(
        vault_id: [u8; VAULT_ID_BYTES],
        key: &DataKey,
        passphrase: &Passphrase,
        cost: Cost,
        random: &mut Random<'_>,
    ) -> Result<Self, VaultError> {
        let slot = Slot::make(key, passphrase, cost, &header(&vault_id), random)?;
        Ok(Self {
            vault_id,
            slots: vec![slot],
        })
    }

    /// The first 16 bytes of the database these slots belong to.
    pub(crate) fn vault_id(&self) -> &[u8; VAULT_ID_BYTES] {
        &self.vault_id
    }

    /// The data key.
    ///
    /// # Errors
    /// [`VaultError::WrongPassphrase`] if no slot's tag accepts the passphrase.
    pub(crate) fn open(&self, passphrase: &Passphrase) -> Result<DataKey, VaultError> {
        let header = header(&self.vault_id);
        for slot in self.slots.iter().filter(|slot| slot.is_for_passphrase()) {
            if let Some(key) = slot.open(passphrase, &header)? {
                return Ok(key);
            }
        }
        Err(VaultError::WrongPassphrase)
    }

    /// The same vault with one passphrase in place of another. Slots of other kinds stay.
    pub(crate) fn with_passphrase(
        &self,
        key: &DataKey,
        passphrase: &Passphrase,
        cost: Cost,
        random: &mut Random<'_>,
    ) -> Result<Self, VaultError> {
        let mut changed = Self::make(self.vault_id, key, passphrase, cost, random)?;
        changed.slots.extend(
            self.slots
                .iter()
                .filter(|slot| !slot.is_for_passphrase())
                .cloned(),
        );
        Ok(changed)
    }

    pub(crate) fn to_bytes(&self) -> Vec<u8> {
        let mut bytes = header(&self.vault_id).to_vec();
        // At most eight slots are ever read, and none is ever added without one being taken out.
        bytes.push(u8::try_from(self.slots.len()).unwrap_or(u8::MAX));
        for slot in &self.slots {
            bytes.extend(slot.bytes());
        }
        bytes.extend(Sha256::digest(&bytes));
        bytes
    }

    /// # Errors
    /// [`VaultError::Foreign`] without the magic, [`VaultError::Newer`] for a newer layout,
    /// [`VaultError::Damaged`] for everything else.
    pub(crate) fn from_bytes(bytes: &[u8]) -> Result<Self, VaultError> {
        let damaged = VaultError::Damaged(Damage::Slots);
        let rest = bytes
            .strip_prefix(MAGIC)
            .ok_or(VaultError::Foreign(ForeignFile::Slots))?;
        let (&layout, rest) = rest.split_first().ok_or(damaged)?;
        let (covered, checksum) = bytes.split_last_chunk::<CHECKSUM_BYTES>().ok_or(damaged)?;
        // The checksum is the last 32 bytes in every layout, so damage is not taken for a newer layout.
        if Sha256::digest(covered).as_slice() != checksum {
            return Err(damaged);
        }
        if layout > LAYOUT {
            return Err(VaultError::Newer);
        }
        let (vault_id, rest) = rest.split_first_chunk::<VAULT_ID_BYTES>().ok_or(damaged)?;
        let (&count, rest) = rest.split_first().ok_or(damaged)?;
        let slots = rest.strip_suffix(checksum).ok_or(damaged)?;
        let count = usize::from(count);
        if layout != LAYOUT
            || !(1..=MOST_SLOTS).contains(&count)
            || slots.len() != count * SLOT_BYTES
        {
            return Err(damaged);
        }
        let slots = slots
            .chunks_exact(SLOT_BYTES)
            .map(Slot::from_bytes)
            .collect::<Result<_, _>>()?;
        Ok(Self {
            vault_id: *vault_id,
            slots,
        })
    }
}

fn header(vault_id: &[u8; VAULT_ID_BYTES]) -> [u8; HEADER_BYTES] {
    let mut header = [0; HEADER_BYTES];
    let fields = MAGIC.iter().chain([&LAYOUT]).chain(vault_id);
    header
        .iter_mut()
        .zip(fields)
        .for_each(|(to, from)| *to = *from);
    header
}
