//! Records of which there is one at a time.

use std::marker::PhantomData;

use record::Record;
use rusqlite::Connection;

use crate::transact::transact;
use crate::{VaultError, row};

/// The one record of its kind.
pub struct Current<'v, R> {
    connection: &'v Connection,
    kind: PhantomData<R>,
}

impl<'v, R: Record> Current<'v, R> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self {
            connection,
            kind: PhantomData,
        }
    }

    /// The record, if one is kept.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn load(&self) -> Result<Option<R>, VaultError> {
        row::find(self.connection, include_str!("load.sql"), [R::KIND])
    }

    /// Keeps a record in place of the one before. On return it is on the disk.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn save(&self, record: &R) -> Result<(), VaultError> {
        let bytes = record.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((R::KIND, bytes))?;
            Ok(())
        })
    }

    /// Removes the record, if one is kept.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn clear(&self) -> Result<(), VaultError> {
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("clear.sql"))?
                .execute([R::KIND])?;
            Ok(())
        })
    }
}
