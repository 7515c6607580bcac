//! Bringing a database from an older layout to the newest, one step at a time, forward only.

use std::io::ErrorKind;
use std::path::Path;

use rusqlite::Connection;

use crate::transact::transact;
use crate::{Damage, Folder, StorageFailure, VaultError, atomic, connection};

/// One step: the SQL that brings layout `n` to `n + 1`, where `n` is the step's place in the list.
pub(crate) type Step = &'static str;

/// Every step so far. Steps that were released are never changed.
pub(crate) const STEPS: &[Step] = &[
    include_str!("../migrations/0001_first.sql"),
    include_str!("../migrations/0002_care.sql"),
    include_str!("../migrations/0003_handoff.sql"),
    include_str!("../migrations/0004_practice.sql"),
    include_str!("../migrations/0005_patient.sql"),
    include_str!("../migrations/0006_departure.sql"),
];

/// "Hftw", the mark the first step puts on the file.
const APPLICATION_ID: i64 = 1_214_674_039;

/// Brings the database, whose pages have been checked, to the newest layout.
///
/// A database that holds data is first copied, still encrypted, beside itself. The copy stays until the
/// new layout has been checked; if anything fails it stays for good, and the database is as it was.
///
/// # Errors
/// [`VaultError::Newer`] for a layout above the newest, [`VaultError::Damaged`] for one that was never written.
pub(crate) fn upgrade(
    connection: &Connection,
    folder: &Folder,
    steps: &[Step],
) -> Result<(), VaultError> {
    let newest = u32::try_from(steps.len()).map_err(|_| VaultError::Newer)?;
    let found = version(connection)?;
    if found > newest {
        return Err(VaultError::Newer);
    }
    if found < newest {
        if found > 0 {
            copy(connection, &folder.database_before(newest))?;
        }
        for (before, step) in (0..newest)
            .zip(steps)
            .skip_while(|(before, _)| *before < found)
        {
            transact(connection, |connection| {
                connection.execute_batch(step)?;
                Ok(connection.pragma_update(None, "user_version", before + 1)?)
            })?;
        }
        prove(connection)?;
    }
    // Also those of an earlier try that failed, or that was stopped just before this line.
    for layout in 1..=newest {
        atomic::remove(&folder.database_before(layout))?;
    }
    Ok(())
}

/// Makes sure that the file carries our mark and a layout this version reads.
pub(crate) fn check_mark(connection: &Connection) -> Result<(), VaultError> {
    let mark: i64 = connection.query_row("PRAGMA application_id;", [], |row| row.get(0))?;
    if mark == APPLICATION_ID {
        Ok(())
    } else {
        Err(VaultError::Damaged(Damage::Schema))
    }
}

/// Layout of the file; 0 for an empty one.
pub(crate) fn version(connection: &Connection) -> Result<u32, VaultError> {
    let version: i64 = connection.query_row("PRAGMA user_version;", [], |row| row.get(0))?;
    u32::try_from(version).map_err(|_| VaultError::Damaged(Damage::Schema))
}

/// Makes a whole, encrypted copy of the database at `path`.
///
/// SQLite makes it, not a file copy: closing a file that SQLite has open would let go of its locks
/// (sqlite.org/howtocorrupt.html, section 2.2).
fn copy(connection: &Connection, path: &Path) -> Result<(), VaultError> {
    let unfinished = atomic::beside(path);
    atomic::remove(&unfinished)?;
    atomic::create_empty(&unfinished)?;
    let name = unfinished
        .to_str()
        .ok_or(VaultError::Storage(StorageFailure::Io(
            ErrorKind::InvalidFilename,
        )))?;
    connection.execute("VACUUM INTO ?1", [name])?;
    atomic::sync(&unfinished)?;
    Ok(atomic::rename(&unfinished, path)?)
}

fn prove(connection: &Connection) -> Result<(), VaultError> {
    connection::check_pages(connection)?;
    let mut statement = connection.prepare("PRAGMA foreign_key_check;")?;
    if statement.query([])?.next()?.is_some() {
        return Err(VaultError::Damaged(Damage::Schema));
    }
    Ok(())
}

#[cfg(test)]
#[path = "migrate_tests.rs"]
mod tests;
