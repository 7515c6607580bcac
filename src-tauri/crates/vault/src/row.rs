//! Reading records out of rows.

use record::{Record, RecordError};
use rusqlite::{Connection, OptionalExtension, Params, Row};

use crate::VaultError;

/// The record in the first column of the only row, if there is a row.
pub(crate) fn find<R: Record>(
    connection: &Connection,
    sql: &str,
    params: impl Params,
) -> Result<Option<R>, VaultError> {
    let bytes: Option<Vec<u8>> = connection
        .prepare_cached(sql)?
        .query_row(params, |row| row.get(0))
        .optional()?;
    Ok(bytes.map(|bytes| R::from_bytes(&bytes)).transpose()?)
}

/// Every row, as `read` takes it apart.
pub(crate) fn all<T>(
    connection: &Connection,
    sql: &str,
    params: impl Params,
    mut read: impl FnMut(&Row<'_>) -> Result<T, VaultError>,
) -> Result<Vec<T>, VaultError> {
    let mut taken = Vec::new();
    each(connection, sql, params, |row| {
        taken.push(read(row)?);
        Ok(())
    })?;
    Ok(taken)
}

/// Hands over every row, one after the other.
pub(crate) fn each(
    connection: &Connection,
    sql: &str,
    params: impl Params,
    mut take: impl FnMut(&Row<'_>) -> Result<(), VaultError>,
) -> Result<(), VaultError> {
    let mut statement = connection.prepare_cached(sql)?;
    let mut rows = statement.query(params)?;
    while let Some(row) = rows.next()? {
        take(row)?;
    }
    Ok(())
}

/// The record in a column.
pub(crate) fn record<R: Record>(row: &Row<'_>, column: usize) -> Result<R, VaultError> {
    read(row, column, R::from_bytes)
}

/// What `read` makes of the bytes in a column, where they lie.
pub(crate) fn read<T>(
    row: &Row<'_>,
    column: usize,
    read: impl FnOnce(&[u8]) -> Result<T, RecordError>,
) -> Result<T, VaultError> {
    let bytes = row
        .get_ref(column)?
        .as_blob()
        .map_err(rusqlite::Error::from)?;
    Ok(read(bytes)?)
}
