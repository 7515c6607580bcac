//! Warning signs: raised, and cleared with a date. None is ever removed.

use record::{Cleared, OpenSign, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{VaultError, row};

/// Access to the warning signs.
pub struct Signs<'v> {
    connection: &'v Connection,
}

impl<'v> Signs<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// The signs that are open, the longest open first.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn open(&self) -> Result<Vec<OpenSign>, VaultError> {
        row::all(self.connection, include_str!("open.sql"), [], |found| {
            row::record(found, 0)
        })
    }

    /// Every sign that was ever raised, oldest first.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn all(&self) -> Result<Vec<OpenSign>, VaultError> {
        row::all(self.connection, include_str!("all.sql"), [], |found| {
            row::record(found, 0)
        })
    }

    /// Raises a sign. One that is open already stays as it was, with its earlier date.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn raise(&self, sign: &OpenSign) -> Result<(), VaultError> {
        let bytes = sign.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("raise.sql"))?
                .execute((&sign.sign, sign.cleared.is_none(), bytes))?;
            Ok(())
        })
    }

    /// Clears the open sign with this text id. Returns whether it was open.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn clear(&self, sign: &str, cleared: Cleared) -> Result<bool, VaultError> {
        transact(self.connection, |connection| {
            let Some(mut record) =
                row::find::<OpenSign>(connection, include_str!("find_open.sql"), [sign])?
            else {
                return Ok(false);
            };
            record.cleared = Some(cleared);
            connection
                .prepare_cached(include_str!("clear.sql"))?
                .execute((sign, record.to_bytes()?))?;
            Ok(true)
        })
    }
}
