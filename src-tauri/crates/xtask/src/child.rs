//! Running other programs: always shown before they run, always with our own streams.

use std::ffi::OsStr;
use std::path::Path;
use std::process::{Command, Stdio};

use crate::tree;
use crate::trouble::Trouble;

/// A program to be run in the root of the tree.
pub(crate) fn program(name: impl AsRef<OsStr>) -> Command {
    let mut command = Command::new(name);
    command.current_dir(tree::root());
    forget_parent(&mut command);
    command
}

/// Cargo itself, with the given words.
pub(crate) fn cargo(words: &[&str]) -> Command {
    let mut command = program(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.args(words);
    command
}

/// Runs a program with our own streams and waits for it.
///
/// # Errors
/// [`Trouble::NotStarted`] or [`Trouble::Failed`].
pub(crate) fn run(mut command: Command) -> Result<(), Trouble> {
    let line = line(&command);
    println!("$ {line}");
    let status = command.status().map_err(|why| not_started(&command, why))?;
    if status.success() {
        Ok(())
    } else {
        Err(Trouble::Failed {
            line,
            code: status.code(),
        })
    }
}

/// Runs a program silently and gives what it wrote to standard output, or nothing if it failed.
pub(crate) fn ask(mut command: Command) -> Option<String> {
    let output = command
        .stdin(Stdio::null())
        .stderr(Stdio::null())
        .output()
        .ok()?;
    output
        .status
        .success()
        .then(|| String::from_utf8_lossy(&output.stdout).into_owned())
}

/// Whether a program of this name is on the search path.
pub(crate) fn is_on_path(name: &str) -> bool {
    std::env::var_os("PATH").is_some_and(|paths| {
        std::env::split_paths(&paths).any(|folder| folder.join(name).is_file())
    })
}

/// The command line as a person would type it.
fn line(command: &Command) -> String {
    let name = Path::new(command.get_program())
        .file_name()
        .unwrap_or(command.get_program());
    let mut words = vec![name.to_string_lossy().into_owned()];
    words.extend(command.get_args().map(|word| {
        let word = word.to_string_lossy();
        if word.contains(' ') {
            format!("'{word}'")
        } else {
            word.into_owned()
        }
    }));
    words.join(" ")
}

fn not_started(command: &Command, why: std::io::Error) -> Trouble {
    Trouble::NotStarted {
        program: command.get_program().to_string_lossy().into_owned(),
        why,
    }
}

/// Takes away what `cargo run` told us about this package: build scripts of other packages watch
/// such variables, and would run again when cargo is called without xtask.
fn forget_parent(command: &mut Command) {
    for (name, _) in std::env::vars_os() {
        let text = name.to_string_lossy();
        if text.starts_with("CARGO_PKG_") || text.starts_with("CARGO_MANIFEST_") {
            command.env_remove(&name);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn line_reads_as_typed() {
        let mut command = Command::new("/usr/bin/cargo");
        command.args(["test", "-p", "two words"]);
        assert_eq!(line(&command), "cargo test -p 'two words'");
    }

    #[test]
    fn a_failing_program_is_reported_with_its_code() {
        let mut command = Command::new("sh");
        command.args(["-c", "exit 7"]);
        let trouble = run(command).unwrap_err();
        assert_eq!(trouble.to_string(), "`sh -c 'exit 7'` ended with code 7");
    }

    #[test]
    fn a_missing_program_is_named() {
        let trouble = run(Command::new("no-such-program-here")).unwrap_err();
        assert!(trouble.to_string().contains("no-such-program-here"));
    }

    #[test]
    fn ask_gives_output_only_on_success() {
        let mut good = Command::new("sh");
        good.args(["-c", "echo hello"]);
        assert_eq!(ask(good).as_deref(), Some("hello\n"));
        let mut bad = Command::new("sh");
        bad.args(["-c", "echo hello; exit 1"]);
        assert_eq!(ask(bad), None);
    }
}
