//! The log of moving people.

use record::{MoveEntry, Record};
use rusqlite::Connection;

use crate::shift::ShiftId;
use crate::transact::transact;
use crate::{VaultError, row};

/// Names one entry; larger is newer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct MoveEntryId(pub i64);

/// Access to the log of moves.
pub struct MoveEntries<'v> {
    connection: &'v Connection,
}

impl<'v> MoveEntries<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps an entry of a shift. On return it is on the disk.
    ///
    /// # Errors
    /// [`VaultError::Storage`] also for a shift that is not there; [`VaultError::TooLong`],
    /// [`VaultError::DiskFull`].
    pub fn add(&self, shift: ShiftId, entry: &MoveEntry) -> Result<MoveEntryId, VaultError> {
        let bytes = entry.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute((shift.0, entry.result.is_proof(), bytes))?;
            Ok(MoveEntryId(connection.last_insert_rowid()))
        })
    }

    /// The entry with this id, if there is one.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn find(&self, id: MoveEntryId) -> Result<Option<MoveEntry>, VaultError> {
        row::find(self.connection, include_str!("find.sql"), [id.0])
    }

    /// The entries of a shift, oldest first.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn of(&self, shift: ShiftId) -> Result<Vec<(MoveEntryId, MoveEntry)>, VaultError> {
        row::all(
            self.connection,
            include_str!("of_shift.sql"),
            [shift.0],
            |found| Ok((MoveEntryId(found.get(0)?), row::record(found, 1)?)),
        )
    }

    /// Keeps what was added to an entry.
    ///
    /// # Errors
    /// [`VaultError::NotFound`], [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn save(&self, id: MoveEntryId, entry: &MoveEntry) -> Result<(), VaultError> {
        let bytes = entry.to_bytes()?;
        transact(self.connection, |connection| {
            let changed = connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((id.0, entry.result.is_proof(), bytes))?;
            match changed {
                0 => Err(VaultError::NotFound),
                _ => Ok(()),
            }
        })
    }

    /// Removes one entry. Returns whether there was one.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove(&self, id: MoveEntryId) -> Result<bool, VaultError> {
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("remove.sql"))?
                .execute([id.0])?
                > 0)
        })
    }

    /// Erases a shift's entries: either those that are proof (near misses and refusals) or the others. Returns
    /// how many.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn erase(&self, shift: ShiftId, proofs: bool) -> Result<u32, VaultError> {
        transact(self.connection, |connection| {
            let erased = connection
                .prepare_cached(include_str!("erase.sql"))?
                .execute((shift.0, proofs))?;
            Ok(u32::try_from(erased).unwrap_or(u32::MAX))
        })
    }
}
