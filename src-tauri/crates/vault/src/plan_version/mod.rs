//! Versions of plans made here, as they were handed over.

use record::{Plan, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{PlanId, VaultError, row};

/// Access to the versions that were handed over.
pub struct PlanVersions<'v> {
    connection: &'v Connection,
}

impl<'v> PlanVersions<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps a version that is about to be handed over.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`]; [`VaultError::Storage`], also if there is no such
    /// plan, or if it has this version already.
    pub fn add(&self, id: PlanId, plan: &Plan) -> Result<(), VaultError> {
        let bytes = plan.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute((id.0, plan.version, bytes))?;
            Ok(())
        })
    }

    /// The newest version that was handed over, if any was.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn newest(&self, id: PlanId) -> Result<Option<Plan>, VaultError> {
        row::find(self.connection, include_str!("newest.sql"), [id.0])
    }

    /// Every version that was handed over, oldest first.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn of(&self, id: PlanId) -> Result<Vec<Plan>, VaultError> {
        row::all(self.connection, include_str!("of.sql"), [id.0], |found| {
            row::record(found, 0)
        })
    }
}
