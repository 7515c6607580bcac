//! Looks back at lifts.

use std::collections::BTreeMap;

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

    /// The check-ins of every lift kept at or after this time (milliseconds since 1970-01-01T00:00:00Z; `None`: of
    /// all), each lift's in the order they were kept. One question for all, for looking back at thousands.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn since(
        &self,
        since_ms: Option<i64>,
    ) -> Result<BTreeMap<LiftId, Vec<CheckIn>>, VaultError> {
        let mut of: BTreeMap<LiftId, Vec<CheckIn>> = BTreeMap::new();
        row::each(
            self.connection,
            include_str!("since.sql"),
            [since_ms],
            |found| {
                let lift = LiftId(found.get(0)?);
                of.entry(lift)
                    .or_default()
                    .push(row::read(found, 1, CheckIn::from_bytes)?);
                Ok(())
            },
        )?;
        Ok(of)
    }
}
