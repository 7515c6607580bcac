//! The words after `headless` on the command line.

use std::ffi::OsString;
use std::path::PathBuf;

/// How to call the program, shown when the words make no sense.
pub const USAGE: &str = "\
headless lines [--vault FOLDER]
    Answers JSON lines on stdin with JSON lines on stdout.
    Without a vault: only the commands that need none.
headless web [--vault FOLDER] [--demo]
    Serves the app to a browser on this machine and prints the address to open.
    Without --vault the data is thrown away at the end.
    --demo fills a new vault with invented data.";

/// What was asked for.
#[derive(Debug, PartialEq, Eq)]
pub enum Arguments {
    /// `lines`
    Lines {
        /// The vault's folder; without one only the commands that need none are answered.
        vault: Option<PathBuf>,
    },
    /// `web`
    Web {
        /// The vault's folder; without one a temporary folder.
        vault: Option<PathBuf>,
        /// Whether to fill the vault with invented data.
        demo: bool,
    },
}

/// Why the words make no sense.
#[derive(Debug, PartialEq, Eq, thiserror::Error)]
pub enum ArgumentError {
    /// The first word is missing or is neither `lines` nor `web`.
    #[error("the first word must be `lines` or `web`")]
    WhichTool,
    /// `--vault` without a folder.
    #[error("`--vault` needs a folder")]
    WhichFolder,
    /// A word that means nothing here.
    #[error("`{0}` means nothing here")]
    Unknown(String),
}

impl Arguments {
    /// Reads the words that follow the program's name.
    ///
    /// # Errors
    /// See [`ArgumentError`].
    pub fn read(words: impl IntoIterator<Item = OsString>) -> Result<Self, ArgumentError> {
        let mut words = words.into_iter();
        let tool = words.next().ok_or(ArgumentError::WhichTool)?;
        let (mut vault, mut demo) = (None, false);
        let is_web = match tool.to_str() {
            Some("lines") => false,
            Some("web") => true,
            _ => return Err(ArgumentError::WhichTool),
        };
        while let Some(word) = words.next() {
            match word.to_str() {
                Some("--vault") => {
                    let folder = words.next().ok_or(ArgumentError::WhichFolder)?;
                    vault = Some(PathBuf::from(folder));
                }
                Some("--demo") if is_web => demo = true,
                _ => return Err(ArgumentError::Unknown(word.to_string_lossy().into_owned())),
            }
        }
        Ok(if is_web {
            Self::Web { vault, demo }
        } else {
            Self::Lines { vault }
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(words: &[&str]) -> Result<Arguments, ArgumentError> {
        Arguments::read(words.iter().map(OsString::from))
    }

    #[test]
    fn both_tools_and_their_options_are_read() {
        assert_eq!(read(&["lines"]), Ok(Arguments::Lines { vault: None }));
        assert_eq!(
            read(&["web", "--demo", "--vault", "here"]),
            Ok(Arguments::Web {
                vault: Some(PathBuf::from("here")),
                demo: true
            })
        );
    }

    #[test]
    fn nonsense_is_named() {
        assert_eq!(read(&[]), Err(ArgumentError::WhichTool));
        assert_eq!(read(&["serve"]), Err(ArgumentError::WhichTool));
        assert_eq!(read(&["web", "--vault"]), Err(ArgumentError::WhichFolder));
        assert_eq!(
            read(&["lines", "--demo"]),
            Err(ArgumentError::Unknown("--demo".into()))
        );
        assert_eq!(
            read(&["web", "--port"]),
            Err(ArgumentError::Unknown("--port".into()))
        );
    }
}
