//! Why a version of a plan is as it is, where the person is not told. It never leaves this device.

use record::{Note, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{PlanId, VaultError, row};

/// Access to the reasons.
pub struct PlanWhys<'v> {
    connection: &'v Connection,
}

impl<'v> PlanWhys<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps why a version is as it is, in place of what was kept for it.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`]; [`VaultError::Storage`], also if there is no such plan.
    pub fn save(&self, plan: PlanId, version: u32, why: &Note) -> Result<(), VaultError> {
        let bytes = why.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((plan.0, version, bytes))?;
            Ok(())
        })
    }

    /// Why this version is as it is, if that was kept.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn find(&self, plan: PlanId, version: u32) -> Result<Option<Note>, VaultError> {
        row::find(self.connection, include_str!("find.sql"), (plan.0, version))
    }

    /// Removes what was kept for a version, if anything was.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove(&self, plan: PlanId, version: u32) -> Result<(), VaultError> {
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("remove.sql"))?
                .execute((plan.0, version))?;
            Ok(())
        })
    }
}
