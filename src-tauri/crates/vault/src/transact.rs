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

#[cfg(test)]
mod tests {
    use rusqlite::Connection;

    use super::transact;
    use crate::VaultError;

    /// A parent and a child whose bond is only looked at when the transaction is kept.
    fn database() -> Connection {
        crate::connection::set_up();
        let connection = Connection::open_in_memory().unwrap();
        connection
            .execute_batch(
                "PRAGMA foreign_keys = ON;
                 CREATE TABLE parent (id INTEGER PRIMARY KEY) STRICT;
                 CREATE TABLE child (parent INTEGER REFERENCES parent (id) DEFERRABLE INITIALLY DEFERRED) STRICT;",
            )
            .unwrap();
        connection
    }

    fn children(connection: &Connection) -> i64 {
        connection
            .query_row("SELECT count(*) FROM child", [], |row| row.get(0))
            .unwrap()
    }

    #[test]
    fn a_change_that_cannot_be_kept_is_not_acknowledged() {
        let connection = database();
        let kept = transact(&connection, |connection| {
            Ok(connection.execute("INSERT INTO child VALUES (7)", [])?)
        });
        assert!(matches!(kept, Err(VaultError::Storage(_))));
        assert_eq!(children(&connection), 0);
        assert!(connection.is_autocommit(), "no transaction is left open");
    }

    #[test]
    fn an_inner_transaction_joins_the_outer_one() {
        let connection = database();
        let kept = transact(&connection, |connection| {
            transact(connection, |connection| {
                Ok(connection.execute("INSERT INTO child VALUES (7)", [])?)
            })?;
            transact(connection, |connection| {
                Ok(connection.execute("INSERT INTO parent VALUES (7)", [])?)
            })
        });
        assert_eq!(kept, Ok(1));
        assert_eq!(children(&connection), 1);
    }
}
