//! What SQLCipher does silently, and that none of it gets through here.
#![allow(clippy::string_slice, reason = "a test may stop at the first surprise")]

use std::fs;
use std::path::PathBuf;

use rusqlite::Connection;
use tempfile::TempDir;
use zeroize::Zeroizing;

use super::{
    PAGE_BYTES, PLAIN_HEADER, SETTINGS, check_pages, key_pragma, open, read_salt, read_setting,
    set_up,
};
use crate::keys::{DataKey, DatabaseKey};
use crate::{Damage, ForeignFile, StorageFailure, VaultError, atomic};

struct Place(TempDir);

impl Place {
    fn new() -> Self {
        Self(tempfile::tempdir().unwrap())
    }

    fn database(&self) -> PathBuf {
        self.0.path().join("vault.db")
    }

    /// A small encrypted database with `rows` rows of about a kilobyte.
    fn make(&self, rows: u32) -> Connection {
        atomic::create_empty(&self.database()).unwrap();
        let connection = open(&self.database(), &key(1)).unwrap();
        connection
            .execute_batch("CREATE TABLE kept (id INTEGER PRIMARY KEY, text TEXT) STRICT;")
            .unwrap();
        for id in 0..rows {
            connection
                .execute(
                    "INSERT INTO kept (id, text) VALUES (?1, ?2)",
                    (id, "x".repeat(1000)),
                )
                .unwrap();
        }
        connection
    }
}

fn key(fill: u8) -> DatabaseKey {
    DataKey::from_bytes(Zeroizing::new([fill; 32])).derive_database_key()
}

/// The hazard: SQLCipher takes 63 hex digits for a passphrase and makes a working file with it.
#[test]
fn sqlcipher_takes_a_short_key_for_a_passphrase() {
    let place = Place::new();
    set_up();
    let connection = Connection::open(place.database()).unwrap();
    let short = format!(
        "PRAGMA cipher_log_level = NONE; PRAGMA key = \"x'{}'\";",
        "a".repeat(63)
    );
    connection.execute_batch(&short).unwrap();
    assert!(
        connection
            .execute_batch("CREATE TABLE kept (id INTEGER) STRICT;")
            .is_ok()
    );
}

#[test]
fn the_key_pragma_always_has_64_hex_digits() {
    for fill in [0x00, 0x01, 0x0f, 0xf0, 0xff] {
        let pragma = key_pragma(&key(fill));
        let digits = pragma
            .strip_prefix("PRAGMA key = \"x'")
            .unwrap()
            .strip_suffix("'\";")
            .unwrap();
        assert_eq!(digits.len(), 64);
        let bytes: Vec<u8> = (0..64)
            .step_by(2)
            .map(|at| u8::from_str_radix(&digits[at..at + 2], 16).unwrap())
            .collect();
        assert_eq!(bytes, key(fill).bytes());
    }
}

/// The hazard: with no key SQLCipher writes a plain file. It is told from ours and never opened as ours.
#[test]
fn a_plain_file_is_foreign() {
    let place = Place::new();
    set_up();
    let plain = Connection::open(place.database()).unwrap();
    plain
        .execute_batch("CREATE TABLE kept (id INTEGER) STRICT;")
        .unwrap();
    drop(plain);
    assert!(
        fs::read(place.database())
            .unwrap()
            .starts_with(PLAIN_HEADER)
    );
    assert_eq!(
        read_salt(&place.database()),
        Err(VaultError::Foreign(ForeignFile::Database))
    );
    assert_eq!(
        open(&place.database(), &key(1)).err(),
        Some(VaultError::Damaged(Damage::Page))
    );
}

#[test]
fn an_encrypted_file_does_not_begin_like_a_plain_one() {
    let place = Place::new();
    drop(place.make(3));
    let bytes = fs::read(place.database()).unwrap();
    assert!(!bytes.starts_with(b"SQLite"));
    assert_eq!(read_salt(&place.database()).unwrap(), bytes[..16]);
}

#[test]
fn the_cipher_is_there_and_on() {
    let place = Place::new();
    let connection = place.make(1);
    let version = read_setting(&connection, "cipher_version")
        .unwrap()
        .unwrap();
    assert!(version.starts_with("4."), "{version}");
    assert_eq!(
        read_setting(&connection, "cipher_status")
            .unwrap()
            .as_deref(),
        Some("1")
    );
    assert_eq!(read_setting(&connection, "no_such_setting").unwrap(), None);
}

/// Read on a second open, and written out here once more: a setting that is dropped or weakened is seen.
#[test]
fn every_setting_holds() {
    let place = Place::new();
    drop(place.make(1));
    let connection = open(&place.database(), &key(1)).unwrap();
    for (name, expected) in [
        ("cipher_memory_security", "1"),
        ("journal_mode", "wal"),
        ("synchronous", "2"),
        ("secure_delete", "1"),
        ("temp_store", "2"),
        ("foreign_keys", "1"),
        ("trusted_schema", "0"),
        ("cell_size_check", "1"),
        ("cache_size", "-32768"),
    ] {
        assert_eq!(
            read_setting(&connection, name).unwrap().as_deref(),
            Some(expected),
            "{name}"
        );
    }
    assert_eq!(SETTINGS.len(), 9);
}

#[test]
fn another_key_does_not_open_it() {
    let place = Place::new();
    drop(place.make(1));
    assert_eq!(
        open(&place.database(), &key(2)).err(),
        Some(VaultError::Damaged(Damage::Page))
    );
}

#[test]
fn a_missing_file_is_not_made() {
    let place = Place::new();
    let failure = open(&place.database(), &key(1)).err().unwrap();
    assert!(matches!(
        failure,
        VaultError::Storage(StorageFailure::Sqlite(_))
    ));
    assert!(!place.database().exists());
}

#[test]
fn less_than_a_page_is_damaged() {
    let place = Place::new();
    for length in [0, 15, 16, PAGE_BYTES - 1] {
        fs::write(place.database(), vec![7; length]).unwrap();
        assert_eq!(
            read_salt(&place.database()),
            Err(VaultError::Damaged(Damage::Page)),
            "{length} bytes"
        );
    }
}

/// The hazard: the cipher's own check reads the main file only, so with everything in the log it finds
/// nothing to say. Ours brings the log over first.
#[test]
fn the_check_covers_what_was_in_the_log() {
    let place = Place::new();
    let connection = place.make(200);
    let length = |name: &str| fs::metadata(place.0.path().join(name)).unwrap().len();
    let rows = 50 * u64::try_from(PAGE_BYTES).unwrap();
    assert!(
        length("vault.db") < rows && length("vault.db-wal") > rows,
        "the rows are in the log"
    );
    check_pages(&connection).unwrap();
    assert!(
        length("vault.db") > rows && length("vault.db-wal") == 0,
        "the rows are in the file that was checked"
    );

    let mut bytes = fs::read(place.database()).unwrap();
    bytes[10 * PAGE_BYTES + 100] ^= 1;
    fs::write(place.database(), &bytes).unwrap();
    assert_eq!(
        check_pages(&connection),
        Err(VaultError::Damaged(Damage::Page))
    );
}
