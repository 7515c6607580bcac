//! What can go wrong, each said as a sentence that tells what to do next.

use std::fmt;
use std::path::PathBuf;

/// A failure of `cargo xtask` itself or of something it ran.
#[derive(Debug)]
pub(crate) enum Trouble {
    /// The command line could not be understood; the text says which word.
    Argument(String),
    /// A program could not be started at all.
    NotStarted {
        /// The program's name.
        program: String,
        /// What the system said.
        why: std::io::Error,
    },
    /// A program ran and reported failure.
    Failed {
        /// The command line, as a person would type it.
        line: String,
        /// Its exit code; absent when a signal ended it.
        code: Option<i32>,
    },
    /// Things are missing that only the user can install.
    Missing {
        /// What is missing, one item a line.
        what: Vec<String>,
        /// Why it was not installed here.
        because: &'static str,
    },
    /// A step found nothing to run, which would look like success.
    Nothing(&'static str),
    /// A file or folder could not be read or removed.
    File {
        /// Where.
        path: PathBuf,
        /// What the system said.
        why: std::io::Error,
    },
    /// At least one step of a plan failed; the summary has been printed.
    Step(&'static str),
}

impl fmt::Display for Trouble {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Argument(what) => write!(f, "{what}"),
            Self::NotStarted { program, why } => {
                write!(f, "could not start `{program}`: {why}. Is it installed?")
            }
            Self::Failed {
                line,
                code: Some(code),
            } => write!(f, "`{line}` ended with code {code}"),
            Self::Failed { line, code: None } => write!(f, "`{line}` was ended by a signal"),
            Self::Missing { what, because } => {
                writeln!(f, "{because}. Install these, then run the command again:")?;
                for item in what {
                    writeln!(f, "  - {item}")?;
                }
                Ok(())
            }
            Self::Nothing(what) => write!(f, "{what}"),
            Self::File { path, why } => write!(f, "{}: {why}", path.display()),
            Self::Step(name) => write!(
                f,
                "step `{name}` failed; run only that one with `--only {name}`"
            ),
        }
    }
}
