//! The one place where a change begins, and is then kept or taken back.

use rusqlite::{Connection, Transaction, TransactionBehavior};

use crate::VaultError;

/// Runs `change` as one transaction: all of it is kept, or, on an error, none.
///
/// Inside a running transaction it joins that one: the outermost call decides.
pub(crate) fn transact<T>(
    connection: &Connection,
    change: impl FnOnce(&Connection) -> Result<T, VaultError>,
) -> Result<T, VaultError> {
    if !connection.is_autocommit() {
        return change(connection);
    }
    // Immediate: the write lock is taken at once, so that what is read cannot change before the write.
    let transaction = Transaction::new_unchecked(connection, TransactionBehavior::Immediate)?;
    let kept = change(&transaction)?;
    transaction.commit()?;
    Ok(kept)
}
