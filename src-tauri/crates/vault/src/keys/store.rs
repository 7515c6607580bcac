//! The two copies of the slots on the disk.
//!
//! `slots` rules; `slots.copy` stands in when `slots` is gone or damaged. They are written in this
//! order, each by rename, so a stop in between leaves at least one whole.

use super::slots::{LONGEST, Slots};
use crate::{Folder, MissingFile, VaultError, atomic};

/// The slots of a vault, from the first copy that is whole.
pub(crate) fn load(folder: &Folder) -> Result<Slots, VaultError> {
    let wrong = match read(folder, Copy::First)? {
        Some(Ok(slots)) => return Ok(slots),
        // Written by a newer app: an older copy must not take its place.
        Some(Err(VaultError::Newer)) => return Err(VaultError::Newer),
        Some(Err(error)) => Some(error),
        None => None,
    };
    match read(folder, Copy::Second)? {
        Some(Ok(slots)) => Ok(slots),
        // Of two unusable copies the first tells what is wrong.
        Some(Err(error)) => Err(wrong.unwrap_or(error)),
        None => Err(wrong.unwrap_or(VaultError::Missing(MissingFile::Slots))),
    }
}

/// Writes both copies.
pub(crate) fn save(folder: &Folder, slots: &Slots) -> Result<(), VaultError> {
    let bytes = slots.to_bytes();
    atomic::write(&folder.slots(), &bytes)?;
    atomic::write(&folder.slots_copy(), &bytes)?;
    Ok(())
}

/// Brings a lost, damaged or outdated copy back to `slots`, which have just opened the vault.
pub(crate) fn restore_copies(folder: &Folder, slots: &Slots) -> Result<(), VaultError> {
    for copy in [Copy::First, Copy::Second] {
        match read(folder, copy)? {
            Some(Ok(there)) if there == *slots => {}
            Some(Err(VaultError::Newer)) => {}
            _ => atomic::write(&copy.path(folder), &slots.to_bytes())?,
        }
    }
    Ok(())
}

#[derive(Clone, Copy)]
enum Copy {
    First,
    Second,
}

impl Copy {
    fn path(self, folder: &Folder) -> std::path::PathBuf {
        match self {
            Self::First => folder.slots(),
            Self::Second => folder.slots_copy(),
        }
    }
}

/// `None` if the file is not there.
fn read(folder: &Folder, copy: Copy) -> Result<Option<Result<Slots, VaultError>>, VaultError> {
    // One byte more than the longest file, so that a longer one is seen to be longer.
    let limit = LONGEST as u64 + 1;
    Ok(atomic::read_up_to(&copy.path(folder), limit)?.map(|bytes| Slots::from_bytes(&bytes)))
}
