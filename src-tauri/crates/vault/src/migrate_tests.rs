//! Old layouts come up to the newest one; newer ones are left alone; a failed step changes nothing.

use rusqlite::Connection;
use tempfile::TempDir;
use zeroize::Zeroizing;

use super::{STEPS, Step, check_mark, upgrade, version};
use crate::keys::{DataKey, DatabaseKey};
use crate::{Folder, VaultError, atomic, connection};

/// Steps after the real ones, to have something to come up from. The second depends on the first.
const LATER: [Step; 2] = [
    "CREATE TABLE later (id INTEGER PRIMARY KEY, note TEXT NOT NULL) STRICT;",
    "ALTER TABLE later ADD COLUMN at_ms INTEGER NOT NULL DEFAULT 0;",
];

struct Place {
    _kept: TempDir,
    folder: Folder,
}

impl Place {
    fn new() -> Self {
        let kept = tempfile::tempdir().unwrap();
        let folder = Folder::new(kept.path());
        atomic::create_empty(&folder.database()).unwrap();
        Self {
            _kept: kept,
            folder,
        }
    }

    fn connect(&self) -> Connection {
        connection::open(&self.folder.database(), &key()).unwrap()
    }

    /// A database built from the SQL of the first `layout` steps alone.
    fn at_layout(layout: usize, steps: &[Step]) -> Self {
        let place = Self::new();
        let connection = place.connect();
        for step in &steps[..layout] {
            connection.execute_batch(step).unwrap();
        }
        connection
            .pragma_update(None, "user_version", layout as i64)
            .unwrap();
        if layout > 0 {
            connection
                .execute_batch("INSERT INTO saved_task (record) VALUES (x'00');")
                .unwrap();
        }
        place
    }

    fn copies(&self) -> usize {
        let names = self.folder.path().read_dir().unwrap();
        names
            .filter(|entry| {
                entry
                    .as_ref()
                    .unwrap()
                    .file_name()
                    .to_string_lossy()
                    .contains("before")
            })
            .count()
    }
}

fn all_steps() -> Vec<Step> {
    [STEPS, &LATER].concat()
}

fn key() -> DatabaseKey {
    DataKey::from_bytes(Zeroizing::new([1; 32])).derive_database_key()
}

fn newest() -> u32 {
    u32::try_from(STEPS.len()).unwrap()
}

/// Everything that makes up the layout, in a fixed order.
fn schema(connection: &Connection) -> Vec<String> {
    let mut statement = connection
        .prepare("SELECT coalesce(sql, name) FROM sqlite_schema ORDER BY type, name")
        .unwrap();
    let schema = statement.query_map([], |row| row.get(0)).unwrap();
    schema.collect::<Result<_, _>>().unwrap()
}

#[test]
fn every_older_layout_comes_up_to_the_same_as_a_new_one() {
    for steps in [STEPS.to_vec(), all_steps()] {
        let new = Place::new();
        upgrade(&new.connect(), &new.folder, &steps).unwrap();
        for layout in 0..=steps.len() {
            let old = Place::at_layout(layout, &steps);
            // One step at a time, each on a fresh connection, as a phone that was updated each time.
            for newest in layout..=steps.len() {
                upgrade(&old.connect(), &old.folder, &steps[..newest]).unwrap();
            }
            assert_eq!(
                schema(&old.connect()),
                schema(&new.connect()),
                "from layout {layout}"
            );
            let kept: i64 = old
                .connect()
                .query_row("SELECT count(*) FROM saved_task", [], |row| row.get(0))
                .unwrap();
            assert_eq!(kept, i64::from(layout > 0), "from layout {layout}");
            assert_eq!(
                old.copies(),
                0,
                "the copy goes once the new layout is proven"
            );
        }
    }
}

#[test]
fn a_layout_from_later_is_refused_and_left_alone() {
    let place = Place::at_layout(STEPS.len() + 2, &all_steps());
    assert_eq!(
        upgrade(&place.connect(), &place.folder, STEPS),
        Err(VaultError::Newer)
    );
    assert_eq!(version(&place.connect()), Ok(newest() + 2));
}

#[test]
fn a_step_that_fails_changes_nothing_and_leaves_the_copy() {
    let place = Place::at_layout(STEPS.len(), STEPS);
    let before = schema(&place.connect());
    let steps = [
        STEPS,
        &["CREATE TABLE half (id INTEGER) STRICT; no such words;"],
    ]
    .concat();
    assert!(upgrade(&place.connect(), &place.folder, &steps).is_err());
    assert_eq!(schema(&place.connect()), before);
    assert_eq!(version(&place.connect()), Ok(newest()));
    assert_eq!(place.copies(), 1);
    let copy = place.folder.database_before(newest() + 1);
    assert!(
        !std::fs::read(&copy).unwrap().starts_with(b"SQLite"),
        "the copy is encrypted too"
    );
    let copy = connection::open(&copy, &key()).unwrap();
    connection::check_pages(&copy).unwrap();
    assert_eq!(schema(&copy), before);
    assert_eq!(version(&copy), Ok(newest()));
    assert_eq!(check_mark(&copy), Ok(()));
    drop(copy);

    // The next release brings a step that works.
    upgrade(
        &place.connect(),
        &place.folder,
        &[STEPS, &LATER[..1]].concat(),
    )
    .unwrap();
    assert_eq!(place.copies(), 0);
}

#[test]
fn a_copy_left_by_a_stop_after_the_last_step_goes_at_the_next_open() {
    let place = Place::at_layout(STEPS.len(), STEPS);
    atomic::create_empty(&place.folder.database_before(newest())).unwrap();
    upgrade(&place.connect(), &place.folder, STEPS).unwrap();
    assert_eq!(place.copies(), 0);
}

#[test]
fn every_table_is_strict() {
    let place = Place::new();
    upgrade(&place.connect(), &place.folder, STEPS).unwrap();
    let loose: i64 = place
        .connect()
        .query_row(
            "SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND name NOT LIKE 'sqlite%' AND NOT strict",
            [],
            |row| row.get(0),
        )
        .unwrap();
    assert_eq!(loose, 0);
}
