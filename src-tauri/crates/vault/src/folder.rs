//! Where a vault lies, and the names of its files.

use std::path::{Path, PathBuf};

use crate::{VaultError, atomic};

/// The folder of one vault.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Folder(PathBuf);

/// What is in a folder.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum VaultState {
    /// No vault: one can be made here.
    Absent,
    /// A vault, or parts of one.
    Present,
}

impl Folder {
    /// A folder by its path. Nothing is touched yet.
    pub fn new(path: impl Into<PathBuf>) -> Self {
        Self(path.into())
    }

    /// The path.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.0
    }

    /// What is in the folder, told from file names alone.
    ///
    /// Making a vault ends with a rename of the database. While the unfinished database is there and
    /// the finished one is not, nothing was ever kept, and the folder counts as empty. So it does while
    /// an erase that was asked for is not carried through.
    pub(crate) fn state(&self) -> Result<VaultState, VaultError> {
        if atomic::exists(&self.erase_mark())? {
            return Ok(VaultState::Absent);
        }
        let finished = atomic::exists(&self.database())?;
        let begun = atomic::exists(&self.unfinished_database())?;
        let slots = atomic::exists(&self.slots())? || atomic::exists(&self.slots_copy())?;
        Ok(if finished || (slots && !begun) {
            VaultState::Present
        } else {
            VaultState::Absent
        })
    }

    pub(crate) fn database(&self) -> PathBuf {
        self.0.join("vault.db")
    }

    pub(crate) fn unfinished_database(&self) -> PathBuf {
        self.0.join("vault.db.new")
    }

    /// The encrypted copy kept while the file is brought up to `layout`.
    pub(crate) fn database_before(&self, layout: u32) -> PathBuf {
        self.0.join(format!("vault.db.before-{layout}"))
    }

    /// There while everything is being erased.
    pub(crate) fn erase_mark(&self) -> PathBuf {
        self.0.join("erase")
    }

    pub(crate) fn slots(&self) -> PathBuf {
        self.0.join("slots")
    }

    pub(crate) fn slots_copy(&self) -> PathBuf {
        self.0.join("slots.copy")
    }
}
