//! Tasks kept under a name.

use record::{Record, SavedTask};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{VaultError, row};

/// Names one saved task.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct SavedTaskId(pub i64);

/// Access to the saved tasks.
pub struct SavedTasks<'v> {
    connection: &'v Connection,
}

impl<'v> SavedTasks<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps a task. On return it is on the disk.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn add(&self, task: &SavedTask) -> Result<SavedTaskId, VaultError> {
        let bytes = task.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute([bytes])?;
            Ok(SavedTaskId(connection.last_insert_rowid()))
        })
    }

    /// The task with this id, if there is one.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn find(&self, id: SavedTaskId) -> Result<Option<SavedTask>, VaultError> {
        row::find(self.connection, include_str!("find.sql"), [id.0])
    }

    /// Every task, oldest first.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn all(&self) -> Result<Vec<(SavedTaskId, SavedTask)>, VaultError> {
        row::all(self.connection, include_str!("all.sql"), [], |found| {
            Ok((SavedTaskId(found.get(0)?), row::record(found, 1)?))
        })
    }

    /// Removes a task. Returns whether there was one.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove(&self, id: SavedTaskId) -> Result<bool, VaultError> {
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("remove.sql"))?
                .execute([id.0])?
                > 0)
        })
    }
}
