//! Looks back at lifts.

use record::{CheckIn, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{LiftId, VaultError, row};

/// Access to the check-ins.
pub struct CheckIns<'v> {
    connection: &'v Connection,
}

impl<'v> CheckIns<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps a check-in of a lift. On return it is on the disk.
    ///
    /// # Errors
    /// [`VaultError::NotFound`] if there is no such lift, [`VaultError::TooLong`],
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn add(&self, lift: LiftId, check_in: &CheckIn) -> Result<(), VaultError> {
        let bytes = check_in.to_bytes()?;
        transact(self.connection, |connection| {
            let added = connection
                .prepare_cached(include_str!("add.sql"))?
                .execute((lift.0, check_in.at.at_ms, bytes))?;
            if added == 0 {
                Err(VaultError::NotFound)
            } else {
                Ok(())
            }
        })
    }

    /// The check-ins of a lift, in the order they were kept.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn of(&self, lift: LiftId) -> Result<Vec<CheckIn>, VaultError> {
        row::all(self.connection, include_str!("of.sql"), [lift.0], |found| {
            row::record(found, 0)
        })
    }
}
