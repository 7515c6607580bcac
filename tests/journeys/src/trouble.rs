//! What can go wrong around a journey, in words that say what to do.

use std::io;
use std::path::PathBuf;

/// Why a journey could not go on.
#[derive(Debug, thiserror::Error)]
pub enum Trouble {
    /// A program is not installed. Never a reason to skip: then nobody would notice.
    #[error(
        "{what} is not installed: install {install} (`cargo xtask test` does it on Debian and Ubuntu)"
    )]
    Missing {
        /// The program.
        what: String,
        /// The package that brings it.
        install: &'static str,
    },
    /// A program is there but does not start.
    #[error("{what} does not start: {error}")]
    Start {
        /// The program.
        what: String,
        /// Why.
        error: io::Error,
    },
    /// A program ended, or never said what it had to say.
    #[error("{0} ended without a word")]
    Silent(String),
    /// A program did not end when asked.
    #[error("{0} does not end when asked")]
    StillRunning(String),
    /// A process is gone.
    #[error("there is no process {0}")]
    NoSuchProcess(u32),
    /// Our own programs could not be built.
    #[error("cargo cannot build `{0}`")]
    Build(&'static str),
    /// A driver did not come up, or the connection broke.
    #[error("the driver does not answer: {0}")]
    Connection(#[from] io::Error),
    /// A driver refused a command.
    #[error("{method} {path} was refused: {error}: {message}")]
    Refused {
        /// Of the request.
        method: &'static str,
        /// Of the request.
        path: String,
        /// The WebDriver error code, as "no such element".
        error: String,
        /// What the driver says about it.
        message: String,
    },
    /// A driver's reply is not what the WebDriver standard says.
    #[error("{0} came back without {1}")]
    Shape(String, &'static str),
    /// A file could not be written or read.
    #[error("{0}: {1}")]
    File(PathBuf, io::Error),
    /// A condition did not become true in time.
    #[error("waited in vain: {0}")]
    InVain(String),
}
