//! Notes about patients. They never leave this device.

use record::{Note, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{PatientId, VaultError, row};

/// Names one note; never used twice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PatientNoteId(pub i64);

/// Access to the notes.
pub struct PatientNotes<'v> {
    connection: &'v Connection,
}

impl<'v> PatientNotes<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps a note. On return it is on the disk.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`]; [`VaultError::Storage`], also if there is no such patient.
    pub fn add(&self, patient: PatientId, note: &Note) -> Result<PatientNoteId, VaultError> {
        let bytes = note.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute((patient.0, bytes))?;
            Ok(PatientNoteId(connection.last_insert_rowid()))
        })
    }

    /// The notes about a patient, the newest first.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn of(&self, patient: PatientId) -> Result<Vec<(PatientNoteId, Note)>, VaultError> {
        row::all(
            self.connection,
            include_str!("of.sql"),
            [patient.0],
            |found| Ok((PatientNoteId(found.get(0)?), row::record(found, 1)?)),
        )
    }

    /// Removes a note about this patient. Returns whether there was one.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove(&self, patient: PatientId, note: PatientNoteId) -> Result<bool, VaultError> {
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("remove.sql"))?
                .execute((note.0, patient.0))?
                > 0)
        })
    }
}
