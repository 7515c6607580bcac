//! Erasing a vault on purpose, so that a stop at any moment ends in an erased one.

use std::fs::{self, OpenOptions};
use std::io::{self, Write};
use std::path::Path;

use crate::{Folder, VaultError, atomic};

/// How the names of all files of a vault begin.
const SLOTS: &str = "slots";
const DATABASE: &str = "vault.db";

/// Erases the vault in `folder`.
///
/// In order: a mark that it was asked for, the key slots overwritten and removed, every database file
/// removed, the mark removed. Without a slot nothing in the database can be read again, by anybody. With the
/// mark there the folder counts as empty, and [`finish`] goes on where this stopped.
pub(crate) fn erase(folder: &Folder) -> Result<(), VaultError> {
    if !atomic::exists(folder.path())? {
        return Ok(());
    }
    if !atomic::exists(&folder.erase_mark())? {
        atomic::create_empty(&folder.erase_mark())?;
        atomic::sync_folder(folder.path())?;
    }
    for (start, overwrite) in [(SLOTS, true), (DATABASE, false)] {
        remove_all(folder.path(), start, overwrite)?;
        atomic::sync_folder(folder.path())?;
    }
    atomic::remove(&folder.erase_mark())?;
    atomic::sync_folder(folder.path())?;
    Ok(())
}

/// Carries through an erase that was stopped; does nothing if none was asked for.
pub(crate) fn finish(folder: &Folder) -> Result<(), VaultError> {
    if atomic::exists(&folder.erase_mark())? {
        erase(folder)?;
    }
    Ok(())
}

/// Removes every file whose name is `start` or begins with it and a dot or a dash.
fn remove_all(folder: &Path, start: &str, overwrite: bool) -> io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = entry.file_name();
        let rest = name.to_str().and_then(|name| name.strip_prefix(start));
        if rest.is_none_or(|rest| !(rest.is_empty() || rest.starts_with(['.', '-']))) {
            continue;
        }
        if overwrite {
            fill_with_zeros(&entry.path())?;
        }
        atomic::remove(&entry.path())?;
    }
    Ok(())
}

/// Writes zeros over a file in its place. Flash memory may keep the old block for a while all the same.
fn fill_with_zeros(path: &Path) -> io::Result<()> {
    let length = usize::try_from(fs::metadata(path)?.len()).unwrap_or(usize::MAX);
    let mut file = OpenOptions::new().write(true).open(path)?;
    // A slots file is at most 874 bytes; anything longer is not ours, and its start is enough.
    file.write_all(&vec![0; length.min(LONGEST_OVERWRITTEN)])?;
    file.sync_all()
}

/// The most bytes that are overwritten in one file.
const LONGEST_OVERWRITTEN: usize = 4096;
