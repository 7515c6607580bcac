//! Parcels under a code that were accepted: each is taken once.

use rusqlite::Connection;

use crate::VaultError;
use crate::transact::transact;

/// Access to what was opened with a code.
pub struct Opened<'v> {
    connection: &'v Connection,
}

impl<'v> Opened<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Whether the content with this SHA-256 was accepted before.
    ///
    /// # Errors
    /// [`VaultError::Storage`].
    pub fn has(&self, digest: &[u8; 32]) -> Result<bool, VaultError> {
        let found: i64 = self
            .connection
            .prepare_cached(include_str!("count.sql"))?
            .query_row([digest], |row| row.get(0))?;
        Ok(found > 0)
    }

    /// Remembers a content that is accepted. To be done in one step with what was accepted.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`]; [`VaultError::Storage`], also if it was accepted before.
    pub fn add(&self, digest: &[u8; 32], at_ms: i64) -> Result<(), VaultError> {
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute((digest, at_ms))?;
            Ok(())
        })
    }
}
