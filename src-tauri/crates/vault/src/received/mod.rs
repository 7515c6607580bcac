//! Histories that others handed over. They stay when a pairing ends.

use record::{Identity, Received, Record};
use rusqlite::Connection;

use crate::transact::transact;
use crate::{VaultError, row};

/// Names one history that was handed over.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ReceivedId(pub i64);

/// Access to histories of others.
pub struct ReceivedHistories<'v> {
    connection: &'v Connection,
}

impl<'v> ReceivedHistories<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps a history. `pairing` is the one it came through; `None`: under a code.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn add(
        &self,
        pairing: Option<Identity>,
        received: &Received,
    ) -> Result<ReceivedId, VaultError> {
        let bytes = received.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute((column(pairing.as_ref()), bytes))?;
            Ok(ReceivedId(connection.last_insert_rowid()))
        })
    }

    /// Histories that came through a pairing, or under a code, the newest first.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn of(&self, pairing: Option<Identity>) -> Result<Vec<(ReceivedId, Received)>, VaultError> {
        row::all(
            self.connection,
            include_str!("of.sql"),
            [column(pairing.as_ref())],
            |found| Ok((ReceivedId(found.get(0)?), row::record(found, 1)?)),
        )
    }

    /// Removes the histories that came through a pairing.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove_of(&self, pairing: Identity) -> Result<(), VaultError> {
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("remove_of.sql"))?
                .execute([pairing.0])?;
            Ok(())
        })
    }

    /// Gives the histories of one pairing to another that took its place.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn hand_on(&self, from: Identity, to: Identity) -> Result<(), VaultError> {
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("move.sql"))?
                .execute((from.0, to.0))?;
            Ok(())
        })
    }
}

/// The bytes of a pairing, none for none.
fn column(pairing: Option<&Identity>) -> &[u8] {
    pairing.map_or(&[], |pairing| &pairing.0)
}
