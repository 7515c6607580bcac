//! Whoever could write into the file under its key, but has not the log's key, is noticed.

use rusqlite::Connection;
use zeroize::Zeroizing;

use super::{Event, RowDigest, append, check};
use crate::keys::{DataKey, LogKey};
use crate::{Damage, LiftId, VaultError, migrate};

fn key(fill: u8) -> LogKey {
    DataKey::from_bytes(Zeroizing::new([fill; 32])).derive_log_key()
}

/// Three lifts, of which the second was removed, in a database that needs no cipher to make the point.
fn history() -> Connection {
    crate::connection::set_up();
    let connection = Connection::open_in_memory().unwrap();
    for step in migrate::STEPS {
        connection.execute_batch(step).unwrap();
    }
    for id in 1..=3 {
        let record = [0x80, u8::try_from(id).unwrap()];
        connection
            .execute(
                "INSERT INTO lift (id, at_ms, done, way, record) VALUES (?1, 5, 1, 3, ?2)",
                (id, record),
            )
            .unwrap();
        append(
            &connection,
            &key(1),
            Event::Added,
            LiftId(id),
            RowDigest::of(5, true, 3, &record),
        )
        .unwrap();
    }
    connection
        .execute("DELETE FROM lift WHERE id = 2", [])
        .unwrap();
    append(
        &connection,
        &key(1),
        Event::Removed,
        LiftId(2),
        RowDigest::NONE,
    )
    .unwrap();
    connection
}

#[test]
fn an_untouched_history_holds() {
    assert_eq!(check(&history(), &key(1)), Ok(()));
    assert_eq!(
        check(&history(), &key(2)),
        Err(VaultError::Damaged(Damage::Log)),
        "under another key"
    );
}

#[test]
fn a_history_with_nothing_in_it_holds() {
    crate::connection::set_up();
    let connection = Connection::open_in_memory().unwrap();
    connection.execute_batch(migrate::STEPS[0]).unwrap();
    assert_eq!(check(&connection, &key(1)), Ok(()));
}

#[test]
fn every_change_behind_its_back_is_noticed() {
    let last_entry_taken_back = "DELETE FROM lift_log WHERE seq = 4;
         INSERT INTO lift (id, at_ms, done, way, record) VALUES (2, 5, 1, 3, x'8002');";
    for change in [
        "UPDATE lift SET record = x'8009' WHERE id = 1",
        "UPDATE lift SET at_ms = 6 WHERE id = 1",
        "UPDATE lift SET done = 0 WHERE id = 1",
        "UPDATE lift SET way = 0 WHERE id = 1",
        "UPDATE lift SET id = 9 WHERE id = 1",
        "DELETE FROM lift WHERE id = 3",
        "INSERT INTO lift (at_ms, done, way, record) VALUES (5, 1, 3, x'8004')",
        "DELETE FROM lift; DELETE FROM lift_log",
        "DELETE FROM lift_log_head",
        "DELETE FROM lift_log WHERE seq = 2",
        "UPDATE lift_log SET seq = 5 WHERE seq = 4",
        "UPDATE lift_log SET event = 1 WHERE seq = 4",
        "UPDATE lift_log SET lift_id = 1 WHERE seq = 4",
        "UPDATE lift_log SET row_digest = zeroblob(32) WHERE seq = 1",
        "UPDATE lift_log SET mac = zeroblob(32) WHERE seq = 1",
        "UPDATE lift_log_head SET seq = 3",
        "UPDATE lift_log_head SET mac = zeroblob(32)",
        last_entry_taken_back,
    ] {
        let connection = history();
        connection.execute_batch(change).unwrap();
        assert_eq!(
            check(&connection, &key(1)),
            Err(VaultError::Damaged(Damage::Log)),
            "{change}"
        );
    }
}
