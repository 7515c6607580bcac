//! Plans that came from somebody and were taken up. One is followed at a time; none is removed.

use record::{Followed, Identity, Moment, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{VaultError, row};

/// Access to the plans followed here.
pub struct FollowedPlans<'v> {
    connection: &'v Connection,
}

impl<'v> FollowedPlans<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// The plan that is followed now, if there is one.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn active(&self) -> Result<Option<Followed>, VaultError> {
        Ok(active(self.connection)?.map(|(_, followed)| followed))
    }

    /// The version of a plan that was taken up last, followed still or not.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn newest_of(&self, plan: Identity) -> Result<Option<Followed>, VaultError> {
        row::find(self.connection, include_str!("newest_of.sql"), [plan.0])
    }

    /// Every plan that was ever taken up, oldest first.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn all(&self) -> Result<Vec<Followed>, VaultError> {
        row::all(self.connection, include_str!("all.sql"), [], |found| {
            row::record(found, 0)
        })
    }

    /// Follows a plan from now on. The one that was followed stops at that moment, and is kept.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn follow(&self, followed: &Followed) -> Result<(), VaultError> {
        let bytes = followed.to_bytes()?;
        transact(self.connection, |connection| {
            stop(connection, followed.at)?;
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute((followed.plan.id.0, bytes))?;
            Ok(())
        })
    }

    /// Stops following. Returns whether a plan was followed.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn stop(&self, at: Moment) -> Result<bool, VaultError> {
        transact(self.connection, |connection| stop(connection, at))
    }
}

fn active(connection: &Connection) -> Result<Option<(i64, Followed)>, VaultError> {
    let found = row::all(connection, include_str!("active.sql"), [], |found| {
        Ok((found.get(0)?, row::record(found, 1)?))
    })?;
    Ok(found.into_iter().next())
}

fn stop(connection: &Connection, at: Moment) -> Result<bool, VaultError> {
    let Some((id, mut followed)) = active(connection)? else {
        return Ok(false);
    };
    followed.stopped_at = Some(at);
    connection
        .prepare_cached(include_str!("stop.sql"))?
        .execute((id, followed.to_bytes()?))?;
    Ok(true)
}
