//! Plans made here, as they stand.

use record::{Plan, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{VaultError, row};

/// Names one plan made here.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PlanId(pub i64);

/// Access to the plans made here.
pub struct Plans<'v> {
    connection: &'v Connection,
}

impl<'v> Plans<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps a new plan. On return it is on the disk.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn add(&self, plan: &Plan) -> Result<PlanId, VaultError> {
        let bytes = plan.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute([bytes])?;
            Ok(PlanId(connection.last_insert_rowid()))
        })
    }

    /// Keeps a plan as it stands now. Returns whether it was there.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn save(&self, id: PlanId, plan: &Plan) -> Result<bool, VaultError> {
        let bytes = plan.to_bytes()?;
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((id.0, bytes))?
                > 0)
        })
    }

    /// The plan with this id, if there is one.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn find(&self, id: PlanId) -> Result<Option<Plan>, VaultError> {
        row::find(self.connection, include_str!("find.sql"), [id.0])
    }

    /// Every plan, the newest first.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn all(&self) -> Result<Vec<(PlanId, Plan)>, VaultError> {
        row::all(self.connection, include_str!("all.sql"), [], |found| {
            Ok((PlanId(found.get(0)?), row::record(found, 1)?))
        })
    }

    /// Removes a plan with its versions. Returns whether there was one.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove(&self, id: PlanId) -> Result<bool, VaultError> {
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("remove.sql"))?
                .execute([id.0])?
                > 0)
        })
    }
}
