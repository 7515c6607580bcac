//! Shifts: one is open at a time, from its first entry until it is handed over.

use record::{Record, Shift};
use rusqlite::{Connection, OptionalExtension};

use crate::transact::transact;
use crate::{VaultError, row};

/// Names one shift; larger is newer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ShiftId(pub i64);

/// Access to the shifts.
pub struct Shifts<'v> {
    connection: &'v Connection,
}

impl<'v> Shifts<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Begins a shift.
    ///
    /// # Errors
    /// [`VaultError::Storage`] also when one is open already; [`VaultError::DiskFull`].
    pub fn begin(&self, shift: &Shift) -> Result<ShiftId, VaultError> {
        let bytes = shift.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("begin.sql"))?
                .execute([bytes])?;
            Ok(ShiftId(connection.last_insert_rowid()))
        })
    }

    /// The shift that is open, if one is.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn open(&self) -> Result<Option<(ShiftId, Shift)>, VaultError> {
        self.one(include_str!("find_open.sql"))
    }

    /// The newest shift that was handed over, if there is one.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn last_handed_over(&self) -> Result<Option<(ShiftId, Shift)>, VaultError> {
        self.one(include_str!("last_closed.sql"))
    }

    /// The shift with this id, if there is one.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn find(&self, id: ShiftId) -> Result<Option<Shift>, VaultError> {
        row::find(self.connection, include_str!("find.sql"), [id.0])
    }

    /// Keeps what changed about a shift; one that was handed over is no longer open.
    ///
    /// # Errors
    /// [`VaultError::NotFound`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn save(&self, id: ShiftId, shift: &Shift) -> Result<(), VaultError> {
        let bytes = shift.to_bytes()?;
        transact(self.connection, |connection| {
            let changed = connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((id.0, shift.handed_at.is_none(), bytes))?;
            match changed {
                0 => Err(VaultError::NotFound),
                _ => Ok(()),
            }
        })
    }

    fn one(&self, sql: &str) -> Result<Option<(ShiftId, Shift)>, VaultError> {
        let found: Option<(i64, Vec<u8>)> = self
            .connection
            .prepare_cached(sql)?
            .query_row([], |row| Ok((row.get(0)?, row.get(1)?)))
            .optional()?;
        found
            .map(|(id, bytes)| Ok((ShiftId(id), Shift::from_bytes(&bytes)?)))
            .transpose()
    }
}
