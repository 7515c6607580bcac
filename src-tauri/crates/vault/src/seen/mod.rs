//! The numbers accepted through a pairing, so that nothing is taken twice.

use record::{Identity, ParcelPurpose};
use rusqlite::{Connection, OptionalExtension};

use crate::VaultError;
use crate::transact::transact;

/// Access to the numbers that were accepted.
pub struct SeenNumbers<'v> {
    connection: &'v Connection,
}

impl<'v> SeenNumbers<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// The numbers accepted for this purpose, in the hand-off's own form, if any were.
    ///
    /// # Errors
    /// [`VaultError::Storage`].
    pub fn load(
        &self,
        pairing: Identity,
        purpose: ParcelPurpose,
    ) -> Result<Option<Vec<u8>>, VaultError> {
        Ok(self
            .connection
            .prepare_cached(include_str!("load.sql"))?
            .query_row((pairing.0, purpose.code()), |row| row.get(0))
            .optional()?)
    }

    /// Keeps the numbers. To be done in one step with what was accepted: see
    /// [`Vault::together`](crate::Vault::together).
    ///
    /// # Errors
    /// [`VaultError::DiskFull`]; [`VaultError::Storage`], also if there is no such pairing.
    pub fn save(
        &self,
        pairing: Identity,
        purpose: ParcelPurpose,
        numbers: &[u8],
    ) -> Result<(), VaultError> {
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((pairing.0, purpose.code(), numbers))?;
            Ok(())
        })
    }
}
