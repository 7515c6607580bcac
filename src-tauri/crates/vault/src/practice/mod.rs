//! The log of the plan that is followed: practice, steps taken, flare-ups.

use record::{PracticeEntry, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{VaultError, row};

/// Names one entry of the log.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PracticeId(pub i64);

/// Access to the log of the plan.
pub struct PracticeLog<'v> {
    connection: &'v Connection,
}

impl<'v> PracticeLog<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps an entry. On return it is on the disk.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn add(&self, entry: &PracticeEntry) -> Result<PracticeId, VaultError> {
        let bytes = entry.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute((entry.at.at_ms, bytes))?;
            Ok(PracticeId(connection.last_insert_rowid()))
        })
    }

    /// Every entry, in the order they were kept.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn all(&self) -> Result<Vec<(PracticeId, PracticeEntry)>, VaultError> {
        row::all(self.connection, include_str!("all.sql"), [], |found| {
            Ok((PracticeId(found.get(0)?), row::record(found, 1)?))
        })
    }

    /// Whether there is any entry.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Storage`].
    pub fn is_any(&self) -> Result<bool, VaultError> {
        let mut statement = self.connection.prepare_cached(include_str!("any.sql"))?;
        Ok(statement.exists([])?)
    }

    /// One entry, if there is one.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn find(&self, id: PracticeId) -> Result<Option<PracticeEntry>, VaultError> {
        row::find(self.connection, include_str!("find.sql"), [id.0])
    }

    /// Keeps an entry in place of what it was: for how it was the next morning. Returns whether it is there.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn save(&self, id: PracticeId, entry: &PracticeEntry) -> Result<bool, VaultError> {
        let bytes = entry.to_bytes()?;
        transact(self.connection, |connection| {
            let changed = connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((id.0, bytes))?;
            Ok(changed > 0)
        })
    }

    /// Removes an entry that was kept by mistake. Returns whether it was there.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove(&self, id: PracticeId) -> Result<bool, VaultError> {
        transact(self.connection, |connection| {
            let removed = connection
                .prepare_cached(include_str!("remove.sql"))?
                .execute([id.0])?;
            Ok(removed > 0)
        })
    }
}
