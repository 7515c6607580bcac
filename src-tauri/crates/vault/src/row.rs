//! Reading records out of rows.

use record::Record;
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
    let mut statement = connection.prepare_cached(sql)?;
    let mut rows = statement.query(params)?;
    let mut taken = Vec::new();
    while let Some(row) = rows.next()? {
        taken.push(read(row)?);
    }
    Ok(taken)
}

/// The record in a column.
pub(crate) fn record<R: Record>(row: &Row<'_>, column: usize) -> Result<R, VaultError> {
    let bytes: Vec<u8> = row.get(column)?;
    Ok(R::from_bytes(&bytes)?)
}
