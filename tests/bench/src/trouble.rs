//! Why something could not be measured.

use std::path::PathBuf;
use std::process::ExitStatus;

/// A measurement that could not be made.
#[derive(Debug, thiserror::Error)]
pub(crate) enum Trouble {
    /// A word on the command line that names no part.
    #[error(
        "there is no part {0}; there are: judgement figure vault looking handing reading start size"
    )]
    Word(String),
    /// A program that must be built first.
    #[error("{path} is missing; `cargo xtask bench` builds it first", path = .0.display())]
    NotBuilt(PathBuf),
    /// A program that wrote something else than was agreed on.
    #[error("{0} did not answer as agreed")]
    Answer(&'static str),
    /// A window that closed by itself.
    #[error("{path} ended by itself: {1}", path = .0.display())]
    Ended(PathBuf, ExitStatus),
    /// A file or a program.
    #[error(transparent)]
    Io(#[from] std::io::Error),
    /// The app's folder.
    #[error(transparent)]
    App(#[from] app::AppError),
    /// The vault.
    #[error(transparent)]
    Vault(#[from] vault::VaultError),
    /// The plain database.
    #[error(transparent)]
    Plain(#[from] rusqlite::Error),
    /// A record.
    #[error(transparent)]
    Record(#[from] record::RecordError),
}
