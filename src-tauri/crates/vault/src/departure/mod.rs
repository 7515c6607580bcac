//! The list of what left this device.

use record::{Departure, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{VaultError, row};

/// Names one entry; never used twice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct DepartureId(pub i64);

/// Most entries that are kept (house rule): years of daily use. The oldest make room.
pub const MOST_DEPARTURES: u32 = 2000;

/// Access to the list.
pub struct Departures<'v> {
    connection: &'v Connection,
}

impl<'v> Departures<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps an entry. To be done in one step with what leaves.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn add(&self, departure: &Departure) -> Result<DepartureId, VaultError> {
        let bytes = departure.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute([bytes])?;
            let id = DepartureId(connection.last_insert_rowid());
            connection
                .prepare_cached(include_str!("trim.sql"))?
                .execute([MOST_DEPARTURES])?;
            Ok(id)
        })
    }

    /// At most `limit` entries, the newest first, and only those before `before` if it is given.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn newest(
        &self,
        before: Option<DepartureId>,
        limit: u32,
    ) -> Result<Vec<(DepartureId, Departure)>, VaultError> {
        let before = before.map_or(i64::MAX, |id| id.0);
        row::all(
            self.connection,
            include_str!("before.sql"),
            (before, limit),
            |found| Ok((DepartureId(found.get(0)?), row::record(found, 1)?)),
        )
    }

    /// Changes an entry. Returns whether there was one.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn save(&self, id: DepartureId, departure: &Departure) -> Result<bool, VaultError> {
        let bytes = departure.to_bytes()?;
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((id.0, bytes))?
                > 0)
        })
    }

    /// Removes an entry: what it stands for did not leave after all. Returns whether there was one.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove(&self, id: DepartureId) -> Result<bool, VaultError> {
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("remove.sql"))?
                .execute([id.0])?
                > 0)
        })
    }

    /// Clears the list.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn clear(&self) -> Result<(), VaultError> {
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("clear.sql"))?
                .execute([])?;
            Ok(())
        })
    }
}
