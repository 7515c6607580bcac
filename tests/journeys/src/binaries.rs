//! Our two programs, built as `cargo xtask test` builds them.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::OnceLock;

use serde_json::Value;

use crate::trouble::Trouble;

/// The programs under test.
#[derive(Debug, Clone)]
pub struct Binaries {
    /// The window.
    pub shell: PathBuf,
    /// The loopback page.
    pub headless: PathBuf,
}

/// Finds the programs, building what is out of date. `HEFTWELL_SHELL` and `HEFTWELL_HEADLESS`
/// name ready ones instead, for example release builds.
///
/// # Errors
/// [`Trouble::Build`] when cargo cannot build them; its own words are on stderr.
pub fn find() -> Result<Binaries, Trouble> {
    static FOUND: OnceLock<Option<Binaries>> = OnceLock::new();
    let found = FOUND.get_or_init(|| named().or_else(build));
    found
        .clone()
        .ok_or(Trouble::Build("heftwell` and `headless"))
}

fn named() -> Option<Binaries> {
    let name = |variable| std::env::var_os(variable).map(PathBuf::from);
    Some(Binaries {
        shell: name("HEFTWELL_SHELL")?,
        headless: name("HEFTWELL_HEADLESS")?,
    })
}

/// One command for both, and the same one every time: another choice of packages would mean other
/// features of shared crates, and so a build from scratch.
fn build() -> Option<Binaries> {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let output = Command::new(cargo)
        .args(["build", "--locked", "-p", "heftwell", "-p", "headless"])
        .args(["--message-format", "json-render-diagnostics"])
        .current_dir(root())
        .stderr(std::process::Stdio::inherit())
        .output()
        .ok()?;
    if !output.status.success() {
        return None;
    }
    let lines = String::from_utf8_lossy(&output.stdout).into_owned();
    let built = |name: &str| {
        let messages = lines
            .lines()
            .filter_map(|line| serde_json::from_str::<Value>(line).ok());
        let mut paths = messages.filter_map(|message| {
            let is_it = message.pointer("/target/name")?.as_str()? == name;
            let path = message.get("executable")?.as_str()?;
            is_it.then(|| PathBuf::from(path))
        });
        paths.next_back()
    };
    Some(Binaries {
        shell: built("heftwell")?,
        headless: built("headless")?,
    })
}

/// The repository's root.
pub fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here).to_owned()
}

/// The folder that cargo builds into, whatever it is called.
pub fn target_folder() -> PathBuf {
    // The running test lies in <target>/<profile>/deps/.
    let running = std::env::current_exe().ok();
    let folder = running.as_deref().and_then(|path| path.ancestors().nth(3));
    folder.map_or_else(|| root().join("target"), Path::to_owned)
}
