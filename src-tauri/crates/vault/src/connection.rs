//! Opening the database file with its key, and every setting the store relies on.

use std::path::Path;
use std::sync::Once;

use rusqlite::{Connection, OpenFlags};
use zeroize::Zeroizing;

use crate::keys::DatabaseKey;
use crate::{Damage, ForeignFile, StorageFailure, VaultError, atomic};

/// How a plain, unencrypted SQLite file begins.
const PLAIN_HEADER: &[u8; 16] = b"SQLite format 3\0";

/// SQLCipher's page size, and so the length of the smallest database.
const PAGE_BYTES: usize = 4096;

/// Settings in the order they are made, each with what reading it back must give.
///
/// - `cipher_memory_security`: freed pages are wiped in memory.
/// - `journal_mode`: readers go on while a change is written; the log is encrypted too.
/// - `synchronous`: 2 is FULL, a kept change is on the disk before it is acknowledged.
/// - `secure_delete`: what is removed is overwritten inside the file.
/// - `temp_store`: 2 is MEMORY, no temporary file ever holds clear text.
/// - `foreign_keys`: a check-in cannot outlive its lift.
/// - `trusted_schema`: functions named in a doctored schema are not run.
/// - `cell_size_check`: a doctored page is found before it is used.
const SETTINGS: &[(&str, &str, &str)] = &[
    ("cipher_memory_security", "ON", "1"),
    ("journal_mode", "WAL", "wal"),
    ("synchronous", "FULL", "2"),
    ("secure_delete", "ON", "1"),
    ("temp_store", "MEMORY", "2"),
    ("foreign_keys", "ON", "1"),
    ("trusted_schema", "OFF", "0"),
    ("cell_size_check", "ON", "1"),
    ("cache_size", "-32768", "-32768"),
];

/// How long a change waits for another process that holds the file, in milliseconds (house rule).
const BUSY_MS: u64 = 5_000;

/// Opens the file at `path`, which must be there, and makes sure that it is encrypted under `key`.
///
/// # Errors
/// [`VaultError::Damaged`] if the first page does not come out under the key.
pub(crate) fn open(path: &Path, key: &DatabaseKey) -> Result<Connection, VaultError> {
    set_up();
    // No CREATE: a missing file must never become a new, empty one. No URI: a path is only a path.
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let connection = Connection::open_with_flags(path, flags)?;
    unlock(&connection, key)?;
    connection.busy_timeout(std::time::Duration::from_millis(BUSY_MS))?;
    for &(name, value, expected) in SETTINGS {
        connection.execute_batch(&format!("PRAGMA {name} = {value};"))?;
        if read_setting(&connection, name)?.as_deref() != Some(expected) {
            return Err(VaultError::Storage(StorageFailure::Setting(name)));
        }
    }
    Ok(connection)
}

/// Lets the first use of SQLite in this process come to its end before any other begins.
///
/// SQLite calls itself ready before SQLCipher's part is set up: `sqlite3_initialize` runs `SQLITE_EXTRA_INIT`
/// after it has let go of its lock (SQLite 3.54.1). A second thread that opens a file in that moment is
/// refused its key with `SQLITE_ERROR`. Every use of SQLite in this crate goes through here first.
pub(crate) fn set_up() {
    static FIRST: Once = Once::new();
    // A failure here shows again, and is reported, when the file itself is opened.
    FIRST.call_once(|| drop(Connection::open_in_memory()));
}

/// Gives the key, and makes sure that there is a cipher at all.
fn unlock(connection: &Connection, key: &DatabaseKey) -> Result<(), VaultError> {
    // First: otherwise SQLCipher writes its errors to standard error.
    connection.execute_batch("PRAGMA cipher_log_level = NONE;")?;
    connection.execute_batch(&key_pragma(key))?;
    // The settings of SQLCipher 4, whatever a later library takes as its defaults.
    connection.execute_batch("PRAGMA cipher_compatibility = 4;")?;
    // A library without a cipher takes the key pragma without a word and writes a plain file.
    if read_setting(connection, "cipher_version")?.is_none_or(|version| version.is_empty()) {
        return Err(VaultError::Storage(StorageFailure::Setting(
            "cipher_version",
        )));
    }
    if read_setting(connection, "cipher_status")?.as_deref() != Some("1") {
        return Err(VaultError::Storage(StorageFailure::Setting(
            "cipher_status",
        )));
    }
    // The first read decides whether the first page comes out under this key.
    connection.query_row("SELECT count(*) FROM sqlite_schema", [], |_| Ok(()))?;
    Ok(())
}

/// `PRAGMA key` with a raw key. It can only be built from a whole 32-byte key: with 63 hex digits
/// SQLCipher would silently take the text for a passphrase.
fn key_pragma(key: &DatabaseKey) -> Zeroizing<String> {
    const DIGITS: &[u8; 16] = b"0123456789abcdef";
    let mut pragma = Zeroizing::new(String::with_capacity(96));
    pragma.push_str("PRAGMA key = \"x'");
    for byte in key.bytes() {
        for half in [byte >> 4, byte & 0x0f] {
            pragma.push(
                DIGITS
                    .get(usize::from(half))
                    .copied()
                    .map_or('0', char::from),
            );
        }
    }
    pragma.push_str("'\";");
    pragma
}

/// A setting read back as text; `None` if the library does not know it.
fn read_setting(connection: &Connection, name: &str) -> Result<Option<String>, VaultError> {
    use rusqlite::types::ValueRef;
    let mut statement = connection.prepare(&format!("PRAGMA {name};"))?;
    let mut rows = statement.query([])?;
    let Some(row) = rows.next()? else {
        return Ok(None);
    };
    Ok(match row.get_ref(0)? {
        ValueRef::Integer(number) => Some(number.to_string()),
        ValueRef::Text(text) => Some(String::from_utf8_lossy(text).into_owned()),
        _ => None,
    })
}

/// The first 16 bytes of the file, in which SQLCipher keeps its salt.
///
/// # Errors
/// [`VaultError::Foreign`] for a plain SQLite file, [`VaultError::Damaged`] for a file with no whole page.
pub(crate) fn read_salt(path: &Path) -> Result<[u8; 16], VaultError> {
    let damaged = VaultError::Damaged(Damage::Page);
    let start = atomic::read_up_to(path, PAGE_BYTES as u64)?.ok_or(damaged)?;
    let salt = *start.first_chunk::<16>().ok_or(damaged)?;
    if salt == *PLAIN_HEADER {
        return Err(VaultError::Foreign(ForeignFile::Database));
    }
    if start.len() < PAGE_BYTES {
        Err(damaged)
    } else {
        Ok(salt)
    }
}

/// Reads every page and checks its tag, then the structure.
///
/// # Errors
/// [`VaultError::Damaged`] naming nothing more: the file is left as it is.
pub(crate) fn check_pages(connection: &Connection) -> Result<(), VaultError> {
    // The cipher's own check reads the main file only: bring the log over first. On a full disk that has
    // to wait; what is kept can still be read.
    match checkpoint(connection) {
        Ok(()) | Err(VaultError::DiskFull) => {}
        Err(error) => return Err(error),
    }
    // Another process may be bringing its own log over just now, and a page be half written: only a page
    // that is wrong twice is damaged.
    let damaged = has_a_wrong_page(connection)? && has_a_wrong_page(connection)?;
    if damaged || read_setting(connection, "quick_check(1)")?.as_deref() != Some("ok") {
        return Err(VaultError::Damaged(Damage::Page));
    }
    Ok(())
}

fn has_a_wrong_page(connection: &Connection) -> Result<bool, VaultError> {
    let mut statement = connection.prepare("PRAGMA cipher_integrity_check;")?;
    Ok(statement.query([])?.next()?.is_some())
}

/// Brings everything from the log into the main file and empties the log.
pub(crate) fn checkpoint(connection: &Connection) -> Result<(), VaultError> {
    // The first column is 1 when another process kept the log from being emptied; that is no failure.
    connection.query_row("PRAGMA wal_checkpoint(TRUNCATE);", [], |_| Ok(()))?;
    Ok(())
}

#[cfg(test)]
#[path = "connection_tests.rs"]
mod tests;
