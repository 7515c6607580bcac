//! What can go wrong with a vault, as few stable kinds. No variant carries stored text or a path.

use std::io;

use record::RecordError;

/// Why a vault could not be made, opened, read or written. Nothing is ever deleted because of one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum VaultError {
    /// The slot's own tag does not accept this passphrase.
    #[error("wrong passphrase")]
    WrongPassphrase,
    /// A file of the vault is not there.
    #[error("a file is missing: {0:?}")]
    Missing(MissingFile),
    /// A file of the vault is damaged. It is left as it is.
    #[error("damaged: {0:?}")]
    Damaged(Damage),
    /// A file with the right name that is not this vault's.
    #[error("not a file of this vault: {0:?}")]
    Foreign(ForeignFile),
    /// Written by a newer version of the app.
    #[error("written by a newer version")]
    Newer,
    /// There is a vault in this folder already.
    #[error("there is a vault already")]
    Exists,
    /// No room left on the disk. What was kept before is still there.
    #[error("no room left on the disk")]
    DiskFull,
    /// A record is over [`record::MAX_BYTES`].
    #[error("a record is too long")]
    TooLong,
    /// Something names a record that is not there.
    #[error("no such record")]
    NotFound,
    /// No random numbers could be had.
    #[error("no random numbers")]
    Randomness,
    /// The system refused or failed.
    #[error("storage failed: {0:?}")]
    Storage(StorageFailure),
}

/// Which file is missing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum MissingFile {
    /// `vault.db`.
    Database,
    /// `slots` and `slots.copy`, both.
    Slots,
}

/// What is damaged.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Damage {
    /// Both copies of the key slots.
    Slots,
    /// A page of the database, or its length.
    Page,
    /// The chain over the lifts: a page was put back or changed.
    Log,
    /// A record does not decode.
    Record,
    /// The tables are not those of any version.
    Schema,
}

/// Which file belongs to something else.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum ForeignFile {
    /// `vault.db`.
    Database,
    /// `slots`.
    Slots,
}

/// How the system failed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum StorageFailure {
    /// A file could not be read or written.
    Io(io::ErrorKind),
    /// SQLite's extended result code.
    Sqlite(i32),
    /// A setting that the store relies on did not take; its name.
    Setting(&'static str),
    /// The passphrase could not be worked on, for want of memory.
    Derivation,
    /// A query does not fit the tables: a defect of this crate.
    Query,
}

impl From<io::Error> for VaultError {
    fn from(error: io::Error) -> Self {
        match error.kind() {
            io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => Self::DiskFull,
            kind => Self::Storage(StorageFailure::Io(kind)),
        }
    }
}

impl From<rusqlite::Error> for VaultError {
    fn from(error: rusqlite::Error) -> Self {
        use rusqlite::ErrorCode;
        let rusqlite::Error::SqliteFailure(failure, _) = error else {
            return Self::Storage(StorageFailure::Query);
        };
        match failure.code {
            ErrorCode::DiskFull => Self::DiskFull,
            ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase => Self::Damaged(Damage::Page),
            _ => Self::Storage(StorageFailure::Sqlite(failure.extended_code)),
        }
    }
}

impl From<RecordError> for VaultError {
    fn from(error: RecordError) -> Self {
        match error {
            RecordError::TooLong => Self::TooLong,
            RecordError::Newer { .. } | RecordError::MustUnderstand | RecordError::CodeUnknown => {
                Self::Newer
            }
            _ => Self::Damaged(Damage::Record),
        }
    }
}
