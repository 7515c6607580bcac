//! The history of lifts.

use record::{Lift, LiftFacts, Record, Way};
use rusqlite::{Connection, named_params};

use crate::keys::LogKey;
use crate::lift_log::{self, Event, RowDigest};
use crate::transact::transact;
use crate::{VaultError, row};

/// Names one lift in the history; larger is newer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct LiftId(pub i64);

/// Which lifts to show.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LiftFilter {
    /// Only those done (`true`) or left (`false`).
    pub done: Option<bool>,
    /// Only those done this way.
    pub way: Option<Way>,
    /// Only those at or after this time, milliseconds since 1970-01-01T00:00:00Z.
    pub since_ms: Option<i64>,
    /// Only those older than this one.
    pub before: Option<LiftId>,
    /// At most so many.
    pub limit: u32,
}

impl Default for LiftFilter {
    /// The newest thirty of all.
    fn default() -> Self {
        Self {
            done: None,
            way: None,
            since_ms: None,
            before: None,
            limit: 30,
        }
    }
}

/// Access to the history of lifts.
pub struct Lifts<'v> {
    connection: &'v Connection,
    log_key: &'v LogKey,
}

impl<'v> Lifts<'v> {
    pub(crate) fn new(connection: &'v Connection, log_key: &'v LogKey) -> Self {
        Self {
            connection,
            log_key,
        }
    }

    /// Keeps a lift. On return it is on the disk.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn add(&self, lift: &Lift) -> Result<LiftId, VaultError> {
        let bytes = lift.to_bytes()?;
        let (at_ms, way) = (lift.at.at_ms, way_code(lift.way));
        let digest = RowDigest::of(at_ms, lift.done, way, &bytes);
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute((at_ms, lift.done, way, bytes))?;
            let id = LiftId(connection.last_insert_rowid());
            lift_log::append(connection, self.log_key, Event::Added, id, digest)?;
            Ok(id)
        })
    }

    /// The lift with this id, if there is one.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn find(&self, id: LiftId) -> Result<Option<Lift>, VaultError> {
        row::find(self.connection, include_str!("find.sql"), [id.0])
    }

    /// Lifts that fit the filter, newest first. "Newest" is the order of keeping: a wrong clock changes nothing.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn newest(&self, filter: &LiftFilter) -> Result<Vec<(LiftId, Lift)>, VaultError> {
        let params = named_params! {
            ":done": filter.done,
            ":way": filter.way.map(Way::code),
            ":since_ms": filter.since_ms,
            ":before": filter.before.map(|id| id.0),
            ":limit": filter.limit,
        };
        row::all(
            self.connection,
            include_str!("newest.sql"),
            params,
            |found| Ok((LiftId(found.get(0)?), row::record(found, 1)?)),
        )
    }

    /// The figures of every lift kept at or after this time (milliseconds since 1970-01-01T00:00:00Z; `None`: of
    /// all), in the order they were kept.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn facts_since(
        &self,
        since_ms: Option<i64>,
    ) -> Result<Vec<(LiftId, LiftFacts)>, VaultError> {
        row::all(
            self.connection,
            include_str!("facts.sql"),
            [since_ms],
            |found| {
                let facts = row::read(found, 1, LiftFacts::from_bytes)?;
                Ok((LiftId(found.get(0)?), facts))
            },
        )
    }

    /// Removes a lift and its check-ins. The log keeps that a lift was removed, not what it was.
    /// Returns whether there was one.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove(&self, id: LiftId) -> Result<bool, VaultError> {
        transact(self.connection, |connection| {
            let removed = connection
                .prepare_cached(include_str!("remove.sql"))?
                .execute([id.0])?
                > 0;
            if removed {
                lift_log::append(
                    connection,
                    self.log_key,
                    Event::Removed,
                    id,
                    RowDigest::NONE,
                )?;
            }
            Ok(removed)
        })
    }
}

/// The way's code, 0 for none.
fn way_code(way: Option<Way>) -> u32 {
    way.map_or(0, Way::code)
}
