//! The chain over the lifts.
//!
//! SQLCipher's tags prove that a page was once written under the key, not that it is the newest: an older
//! page put back passes every check of the file. So each change to the lifts appends an entry whose MAC
//! covers the entry before, the newest MAC is kept in a table (and so a page) of its own, and at open the
//! whole chain is worked through against the lifts that are there. A whole older file put back is not
//! noticed; no mark inside the file could tell it from a backup.

use std::collections::BTreeMap;

use hmac::{Hmac, KeyInit, Mac};
use rusqlite::{Connection, OptionalExtension, Row};
use sha2::{Digest, Sha256};

use crate::keys::LogKey;
use crate::{Damage, LiftId, StorageFailure, VaultError, row};

/// What happened to a lift.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Event {
    Added = 1,
    Removed = 2,
}

/// SHA-256 over all of a lift's row but its id.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct RowDigest([u8; 32]);

impl RowDigest {
    /// What stands for a removed row.
    pub(crate) const NONE: Self = Self([0; 32]);

    pub(crate) fn of(at_ms: i64, done: bool, way: u32, record: &[u8]) -> Self {
        let mut hash = Sha256::new();
        hash.update(at_ms.to_be_bytes());
        hash.update([u8::from(done)]);
        hash.update(way.to_be_bytes());
        hash.update(record);
        Self(hash.finalize().into())
    }
}

/// Where the chain stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Head {
    seq: i64,
    mac: [u8; 32],
}

impl Head {
    /// Before the first entry.
    const START: Self = Self {
        seq: 0,
        mac: [0; 32],
    };
}

/// Appends an entry. Call inside the transaction that changes the lift.
pub(crate) fn append(
    connection: &Connection,
    key: &LogKey,
    event: Event,
    lift: LiftId,
    digest: RowDigest,
) -> Result<(), VaultError> {
    let head = load_head(connection)?;
    let seq = head.seq + 1;
    let mac = link(key, &head.mac, seq, event as i64, lift, &digest)?;
    connection
        .prepare_cached(include_str!("append.sql"))?
        .execute((seq, event as i64, lift.0, digest.0, mac))?;
    connection
        .prepare_cached(include_str!("save_head.sql"))?
        .execute((seq, mac))?;
    Ok(())
}

/// Works through the whole chain and compares it with the lifts that are there.
///
/// # Errors
/// [`VaultError::Damaged`] with [`Damage::Log`] at the first thing that does not fit.
pub(crate) fn check(connection: &Connection, key: &LogKey) -> Result<(), VaultError> {
    let broken = VaultError::Damaged(Damage::Log);
    let mut head = Head::START;
    let mut expected = BTreeMap::new();
    for entry in row::all(connection, include_str!("entries.sql"), [], read_entry)? {
        let mac = link(
            key,
            &head.mac,
            entry.seq,
            entry.event,
            entry.lift,
            &entry.digest,
        )?;
        if entry.seq != head.seq + 1 || entry.mac != mac {
            return Err(broken);
        }
        head = Head {
            seq: entry.seq,
            mac,
        };
        if entry.event == Event::Added as i64 {
            expected.insert(entry.lift, entry.digest);
        } else {
            expected.remove(&entry.lift);
        }
    }
    let there: BTreeMap<_, _> = row::all(connection, include_str!("lifts.sql"), [], read_lift)?
        .into_iter()
        .collect();
    if head == load_head(connection)? && expected == there {
        Ok(())
    } else {
        Err(broken)
    }
}

struct Entry {
    seq: i64,
    event: i64,
    lift: LiftId,
    digest: RowDigest,
    mac: [u8; 32],
}

fn read_entry(row: &Row<'_>) -> Result<Entry, VaultError> {
    Ok(Entry {
        seq: row.get(0)?,
        event: row.get(1)?,
        lift: LiftId(row.get(2)?),
        digest: RowDigest(row.get(3)?),
        mac: row.get(4)?,
    })
}

fn read_lift(row: &Row<'_>) -> Result<(LiftId, RowDigest), VaultError> {
    let record: Vec<u8> = row.get(4)?;
    Ok((
        LiftId(row.get(0)?),
        RowDigest::of(row.get(1)?, row.get(2)?, row.get(3)?, &record),
    ))
}

fn load_head(connection: &Connection) -> Result<Head, VaultError> {
    let head = connection
        .prepare_cached(include_str!("load_head.sql"))?
        .query_row([], |row| {
            Ok(Head {
                seq: row.get(0)?,
                mac: row.get(1)?,
            })
        })
        .optional()?;
    Ok(head.unwrap_or(Head::START))
}

/// HMAC-SHA256 (RFC 2104) over label, MAC before, number, event, lift and row.
fn link(
    key: &LogKey,
    before: &[u8; 32],
    seq: i64,
    event: i64,
    lift: LiftId,
    digest: &RowDigest,
) -> Result<[u8; 32], VaultError> {
    let mut mac = Hmac::<Sha256>::new_from_slice(key.bytes())
        .map_err(|_| VaultError::Storage(StorageFailure::Derivation))?;
    mac.update(b"heftwell lift log 1");
    mac.update(before);
    mac.update(&seq.to_be_bytes());
    mac.update(&event.to_be_bytes());
    mac.update(&lift.0.to_be_bytes());
    mac.update(&digest.0);
    Ok(mac.finalize().into_bytes().into())
}

#[cfg(test)]
mod tests;
