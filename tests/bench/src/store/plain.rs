//! The same rows in a plain SQLite file: same library, no key, no chain over the lifts.

use std::path::Path;

use record::{Lift, Record, Way};
use rusqlite::Connection;

use super::lift;
use crate::trouble::Trouble;

/// The settings of the vault that have a price of their own, so that only the rest is compared.
const SETTINGS: &str = "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; \
    PRAGMA secure_delete = ON; PRAGMA temp_store = MEMORY; PRAGMA foreign_keys = ON;";

const TABLE: &str = "CREATE TABLE lift (id INTEGER PRIMARY KEY AUTOINCREMENT, at_ms INTEGER NOT NULL, \
    done INTEGER NOT NULL, way INTEGER NOT NULL DEFAULT 0, record BLOB NOT NULL) STRICT;";

/// The vault's own question, with all its filters, none of them set.
const NEWEST: &str = "SELECT record FROM lift WHERE (?1 IS NULL OR done = ?1) \
    AND (?2 IS NULL OR way = ?2) AND (?3 IS NULL OR at_ms >= ?3) AND (?4 IS NULL OR id < ?4) \
    ORDER BY id DESC LIMIT 30";

/// Makes the file with so many lifts.
///
/// # Errors
/// What the database gives.
pub(crate) fn fill(path: &Path, lifts: i64) -> Result<(), Trouble> {
    let connection = Connection::open(path)?;
    connection.execute_batch(SETTINGS)?;
    connection.execute_batch(TABLE)?;
    connection.execute_batch("BEGIN;")?;
    for number in 0..lifts {
        add(&connection, &lift::numbered(number))?;
    }
    connection.execute_batch("COMMIT; PRAGMA wal_checkpoint(TRUNCATE);")?;
    Ok(())
}

/// Opens it and reads its first page.
///
/// # Errors
/// What the database gives.
pub(crate) fn open(path: &Path) -> Result<Connection, Trouble> {
    let connection = Connection::open(path)?;
    connection.execute_batch(SETTINGS)?;
    connection.query_row("SELECT count(*) FROM sqlite_schema", [], |_| Ok(()))?;
    Ok(connection)
}

/// As [`open`], and has SQLite look at every page.
///
/// # Errors
/// What the database gives; [`Trouble::Answer`] if the file is damaged.
pub(crate) fn open_checked(path: &Path) -> Result<Connection, Trouble> {
    let connection = open(path)?;
    let found: String = connection.query_row("PRAGMA quick_check(1);", [], |row| row.get(0))?;
    if found == "ok" {
        Ok(connection)
    } else {
        Err(Trouble::Answer("the plain database"))
    }
}

/// Keeps one lift.
///
/// # Errors
/// What the record or the database gives.
pub(crate) fn add(connection: &Connection, lift: &Lift) -> Result<(), Trouble> {
    let way = lift.way.map_or(0, Way::code);
    connection
        .prepare_cached("INSERT INTO lift (at_ms, done, way, record) VALUES (?1, ?2, ?3, ?4)")?
        .execute((lift.at.at_ms, lift.done, way, lift.to_bytes()?))?;
    Ok(())
}

/// The newest thirty, read into records as the vault does.
///
/// # Errors
/// What the record or the database gives.
pub(crate) fn newest(connection: &Connection) -> Result<Vec<Lift>, Trouble> {
    let mut statement = connection.prepare_cached(NEWEST)?;
    let nothing: [Option<i64>; 4] = [None; 4];
    let mut rows = statement.query(nothing)?;
    let mut lifts = Vec::new();
    while let Some(row) = rows.next()? {
        let bytes: Vec<u8> = row.get(0)?;
        lifts.push(Lift::from_bytes(&bytes)?);
    }
    Ok(lifts)
}
