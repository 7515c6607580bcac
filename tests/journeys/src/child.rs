//! A program that ends with the value that holds it.

use std::fs;
use std::io::{self, BufRead, BufReader};
use std::path::PathBuf;
use std::process::{Child, Command, Stdio};

use crate::trouble::Trouble;
use crate::wait;

/// A running program; dropping it ends it, by its own id.
#[derive(Debug)]
pub struct Running {
    name: String,
    child: Child,
}

impl Running {
    /// Starts `command`; its first line of output, if asked for, is what it has to say.
    ///
    /// # Errors
    /// [`Trouble::Missing`] with what to install when there is no such program.
    pub fn start(
        name: &str,
        install: &'static str,
        command: &mut Command,
    ) -> Result<Self, Trouble> {
        let spawned = command.stdin(Stdio::null()).spawn();
        let child = spawned.map_err(|error| match error.kind() {
            io::ErrorKind::NotFound => Trouble::Missing {
                what: name.to_owned(),
                install,
            },
            _ => Trouble::Start {
                what: name.to_owned(),
                error,
            },
        })?;
        Ok(Self {
            name: name.to_owned(),
            child,
        })
    }

    /// Reads the first line that the program prints. Its output must be piped.
    ///
    /// # Errors
    /// When it ends without one.
    pub fn first_line(&mut self) -> Result<String, Trouble> {
        let silent = || Trouble::Silent(self.name.clone());
        let output = self.child.stdout.as_mut().ok_or_else(silent)?;
        let mut line = String::new();
        match BufReader::new(output).read_line(&mut line) {
            Ok(1..) => Ok(line.trim_end().to_owned()),
            Ok(0) | Err(_) => Err(silent()),
        }
    }

    /// Its process id.
    pub fn id(&self) -> u32 {
        self.child.id()
    }

    /// Asks the program to end, as Ctrl+C or the system's shutdown does, and waits for it.
    ///
    /// # Errors
    /// When it does not end in time.
    pub fn end_gently(mut self) -> Result<(), Trouble> {
        signal(self.id(), "TERM")?;
        let ended = wait::until(wait::LIMIT, || self.child.try_wait().ok().flatten());
        ended
            .map(|_| ())
            .ok_or_else(|| Trouble::StillRunning(self.name.clone()))
    }

    /// The ids of the programs that this one has started and that still run.
    pub fn children(&self) -> Vec<u32> {
        let id = self.id();
        let list = PathBuf::from(format!("/proc/{id}/task"));
        let threads = fs::read_dir(list).into_iter().flatten().flatten();
        threads
            .filter_map(|thread| fs::read_to_string(thread.path().join("children")).ok())
            .flat_map(|ids| {
                ids.split_whitespace()
                    .filter_map(|id| id.parse().ok())
                    .collect::<Vec<_>>()
            })
            .collect()
    }
}

impl Drop for Running {
    fn drop(&mut self) {
        // Already gone is as good as ended.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// Ends a process at once, without a word, as a phone does that needs the memory.
///
/// # Errors
/// When there is no such process.
pub fn kill(id: u32) -> Result<(), Trouble> {
    signal(id, "KILL")
}

fn signal(id: u32, name: &str) -> Result<(), Trouble> {
    let status = Command::new("kill")
        .arg(format!("-{name}"))
        .arg(id.to_string())
        .status();
    match status {
        Ok(status) if status.success() => Ok(()),
        _ => Err(Trouble::NoSuchProcess(id)),
    }
}

/// Whether a process still runs (one that has ended but is not yet waited for does not).
pub fn is_running(id: u32) -> bool {
    let status = fs::read_to_string(format!("/proc/{id}/stat")).unwrap_or_default();
    let state = status
        .rsplit_once(") ")
        .and_then(|(_, rest)| rest.chars().next());
    state.is_some_and(|state| state != 'Z' && state != 'X')
}
