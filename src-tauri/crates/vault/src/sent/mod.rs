//! The last number used in parcels through a pairing.

use record::{Identity, ParcelPurpose};
use rusqlite::{Connection, OptionalExtension};

use crate::VaultError;
use crate::transact::transact;

/// Access to the numbers that were sent.
pub struct Sent<'v> {
    connection: &'v Connection,
}

impl<'v> Sent<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// The last number used for this purpose, if any was.
    ///
    /// # Errors
    /// [`VaultError::Storage`].
    pub fn last(
        &self,
        pairing: Identity,
        purpose: ParcelPurpose,
    ) -> Result<Option<u64>, VaultError> {
        let number: Option<i64> = self
            .connection
            .prepare_cached(include_str!("last.sql"))?
            .query_row((pairing.0, purpose.code()), |row| row.get(0))
            .optional()?;
        // Kept in 64 bits with a sign; the same bits come back.
        Ok(number.map(i64::cast_unsigned))
    }

    /// Keeps the number just used. To be kept before the parcel is shown.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`]; [`VaultError::Storage`], also if there is no such pairing.
    pub fn save(
        &self,
        pairing: Identity,
        purpose: ParcelPurpose,
        number: u64,
    ) -> Result<(), VaultError> {
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((pairing.0, purpose.code(), number.cast_signed()))?;
            Ok(())
        })
    }
}
