//! An open vault: threads, and a full disk, which is said as such and loses nothing that was kept.

use record::{About, Settings, Units, UsedFor};
use tempfile::TempDir;

use super::Vault;
use crate::{Cost, Damage, Folder, Passphrase, VaultError};

fn passphrase() -> Passphrase {
    Passphrase::new("a river under old snow".to_owned())
}

fn create(kept: &TempDir) -> (Vault, Folder) {
    let folder = Folder::new(kept.path().join("vault"));
    // Any bytes will do for the keys of this vault.
    let mut random = |bytes: &mut [u8]| {
        bytes.fill(7);
        Ok(())
    };
    (
        Vault::create_at_cost(&folder, &passphrase(), Cost::FLOOR, &mut random).unwrap(),
        folder,
    )
}

/// The app keeps it behind a lock and works on it away from the window's thread.
#[test]
fn an_open_vault_can_go_to_another_thread() {
    fn is_send<T: Send>() {}
    is_send::<Vault>();
}

#[test]
fn a_database_without_our_mark_or_with_a_later_layout_is_not_opened() {
    let kept = tempfile::tempdir().unwrap();
    let (vault, folder) = create(&kept);
    vault
        .connection
        .execute_batch("PRAGMA user_version = 1000;")
        .unwrap();
    drop(vault);
    assert_eq!(
        Vault::open(&folder, &passphrase()).err(),
        Some(VaultError::Newer)
    );

    let kept = tempfile::tempdir().unwrap();
    let (vault, folder) = create(&kept);
    vault
        .connection
        .execute_batch("PRAGMA application_id = 5;")
        .unwrap();
    drop(vault);
    assert_eq!(
        Vault::open(&folder, &passphrase()).err(),
        Some(VaultError::Damaged(Damage::Schema))
    );
}

#[test]
fn a_record_that_does_not_decode_is_damaged_and_one_from_later_is_newer() {
    let kept = tempfile::tempdir().unwrap();
    let (vault, _) = create(&kept);
    for (record, expected) in [
        ("8404018000", VaultError::Damaged(Damage::Record)),
        ("84040280a0", VaultError::Newer),
    ] {
        let put = format!("REPLACE INTO current (kind, record) VALUES (4, x'{record}')");
        vault.connection.execute(&put, []).unwrap();
        assert_eq!(vault.settings().load(), Err(expected));
    }
}

/// About 50 KB of answers: more than a dozen pages.
fn much() -> About {
    About {
        conditions: Some(vec!["x".repeat(1_000); 50]),
        ..About::default()
    }
}

/// SQLite's own page limit gives the same result code as a disk with no room left.
#[test]
fn a_full_disk_is_said_and_what_was_kept_stays() {
    let kept = tempfile::tempdir().unwrap();
    let (vault, folder) = create(&kept);
    let settings = Settings {
        used_for: UsedFor::Lift,
        units: Units::Kg,
    };
    vault.settings().save(&settings).unwrap();
    vault.about().save(&About::default()).unwrap();

    let pages: u32 = vault
        .connection
        .query_row("PRAGMA page_count", [], |row| row.get(0))
        .unwrap();
    vault
        .connection
        .query_row(&format!("PRAGMA max_page_count = {pages}"), [], |_| Ok(()))
        .unwrap();
    assert_eq!(vault.about().save(&much()), Err(VaultError::DiskFull));
    assert_eq!(
        vault.about().load().unwrap(),
        Some(About::default()),
        "the record before is still there"
    );

    // Room again: the same vault goes on.
    vault
        .connection
        .query_row("PRAGMA max_page_count = 1000000", [], |_| Ok(()))
        .unwrap();
    vault.about().save(&much()).unwrap();
    drop(vault);
    let vault = Vault::open(&folder, &passphrase()).unwrap();
    assert_eq!(vault.about().load().unwrap(), Some(much()));
    assert_eq!(vault.settings().load().unwrap(), Some(settings));
}

/// The same on a real disk. It needs the right to mount one:
/// `mount -t tmpfs -o size=400k tmpfs DIR`, then
/// `HEFTWELL_SMALL_DISK=DIR cargo nextest run -p vault --run-ignored all a_really_full_disk`.
#[test]
#[ignore = "needs a small disk that the user has mounted"]
fn a_really_full_disk_is_said_and_what_was_kept_stays() {
    let Some(small_disk) = std::env::var_os("HEFTWELL_SMALL_DISK") else {
        return;
    };
    let kept = tempfile::tempdir_in(small_disk).unwrap();
    let (vault, folder) = create(&kept);
    let mut saved = 0;
    let failure = loop {
        let sign = record::OpenSign {
            sign: format!("{saved} {}", "x".repeat(1_000)),
            raised_at: record::Moment {
                at_ms: 0,
                offset_min: 0,
            },
            cleared: None,
        };
        match vault.signs().raise(&sign) {
            Ok(()) => saved += 1,
            Err(failure) => break failure,
        }
    };
    assert_eq!(failure, VaultError::DiskFull);
    assert!(saved > 10);
    assert_eq!(vault.signs().all().unwrap().len(), saved);
    drop(vault);

    // With the disk still full the vault may not open; with room again it has everything.
    let _ = Vault::open(&folder, &passphrase())
        .map_err(|failure| assert_eq!(failure, VaultError::DiskFull));
    let roomy = tempfile::tempdir().unwrap();
    for entry in std::fs::read_dir(folder.path()).unwrap() {
        let entry = entry.unwrap();
        std::fs::copy(entry.path(), roomy.path().join(entry.file_name())).unwrap();
    }
    let vault = Vault::open(&Folder::new(roomy.path()), &passphrase()).unwrap();
    assert_eq!(vault.signs().all().unwrap().len(), saved);
}
