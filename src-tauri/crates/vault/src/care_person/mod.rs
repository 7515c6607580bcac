//! People who are helped to move.

use record::{CarePerson, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{VaultError, row};

/// Names one care person; never used twice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct CarePersonId(pub i64);

/// Access to the care people.
pub struct CarePeople<'v> {
    connection: &'v Connection,
}

impl<'v> CarePeople<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps a new person. On return it is on the disk.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn add(&self, person: &CarePerson) -> Result<CarePersonId, VaultError> {
        let bytes = person.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute([bytes])?;
            Ok(CarePersonId(connection.last_insert_rowid()))
        })
    }

    /// Keeps what changed about a person.
    ///
    /// # Errors
    /// [`VaultError::NotFound`], [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn save(&self, id: CarePersonId, person: &CarePerson) -> Result<(), VaultError> {
        let bytes = person.to_bytes()?;
        transact(self.connection, |connection| {
            let changed = connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((id.0, bytes))?;
            match changed {
                0 => Err(VaultError::NotFound),
                _ => Ok(()),
            }
        })
    }

    /// The person with this id, if there is one.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn find(&self, id: CarePersonId) -> Result<Option<CarePerson>, VaultError> {
        row::find(self.connection, include_str!("find.sql"), [id.0])
    }

    /// Everybody, in the order they were written down.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn all(&self) -> Result<Vec<(CarePersonId, CarePerson)>, VaultError> {
        row::all(self.connection, include_str!("all.sql"), [], |found| {
            Ok((CarePersonId(found.get(0)?), row::record(found, 1)?))
        })
    }

    /// Removes a person; entries of the log stay. Returns whether there was one.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove(&self, id: CarePersonId) -> Result<bool, VaultError> {
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("remove.sql"))?
                .execute([id.0])?
                > 0)
        })
    }
}
