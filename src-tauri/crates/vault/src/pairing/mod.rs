//! Devices that this one is paired with.

use record::{Identity, Paired, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{VaultError, row};

/// Access to the pairings.
pub struct Pairings<'v> {
    connection: &'v Connection,
}

impl<'v> Pairings<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps a pairing. On return it is on the disk.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn add(&self, paired: &Paired) -> Result<(), VaultError> {
        let bytes = paired.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute((paired.id.0, bytes))?;
            Ok(())
        })
    }

    /// The pairing with this id, if there is one.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn find(&self, id: Identity) -> Result<Option<Paired>, VaultError> {
        row::find(self.connection, include_str!("find.sql"), [id.0])
    }

    /// Every pairing, oldest first.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn all(&self) -> Result<Vec<Paired>, VaultError> {
        row::all(self.connection, include_str!("all.sql"), [], |found| {
            row::record(found, 0)
        })
    }

    /// Keeps a pairing that is there already, under another name. Returns whether it was there.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn save(&self, paired: &Paired) -> Result<bool, VaultError> {
        let bytes = paired.to_bytes()?;
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((paired.id.0, bytes))?
                > 0)
        })
    }

    /// Removes a pairing with the numbers that belong to it. Returns whether there was one.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove(&self, id: Identity) -> Result<bool, VaultError> {
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("remove.sql"))?
                .execute([id.0])?
                > 0)
        })
    }
}
