//! Cargo's own helpers that the steps use, pinned, built once into the build folder.

use std::path::PathBuf;

use crate::child;
use crate::tree;
use crate::trouble::Trouble;

/// A program from the registry at one exact version.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Tool {
    /// Package and program name.
    pub(crate) name: &'static str,
    /// The version that the tree was tried with.
    pub(crate) version: &'static str,
}

/// Checks dependencies: bans, licences, sources.
pub(crate) const DENY: Tool = Tool {
    name: "cargo-deny",
    version: "0.20.2",
};

/// Runs fuzz targets.
pub(crate) const FUZZ: Tool = Tool {
    name: "cargo-fuzz",
    version: "0.13.2",
};

impl Tool {
    /// The tool's program, built first if it is not there at this version.
    ///
    /// It is built without optimisation: that takes one minute in place of several, and the work
    /// it does here takes seconds either way.
    ///
    /// # Errors
    /// Whatever building it gives.
    pub(crate) fn ready(&self) -> Result<PathBuf, Trouble> {
        let home = tree::target().join("tools");
        let program = home.join("bin").join(self.name);
        if self.is_this_version(program.clone()) {
            return Ok(program);
        }
        if self.is_this_version(self.name.into()) {
            return Ok(self.name.into());
        }
        println!(
            "building {} {} once: about a minute",
            self.name, self.version
        );
        let build = home.join("build");
        let mut command = child::cargo(&["install", "--quiet", "--locked", "--debug", "--force"]);
        command
            .args([self.name, "--version", self.version, "--root"])
            .arg(&home)
            .env("CARGO_TARGET_DIR", &build)
            .env("CARGO_PROFILE_DEV_DEBUG", "0");
        child::run(command)?;
        // Only the program is needed again; what it was built from takes a gigabyte.
        std::fs::remove_dir_all(&build).map_err(|why| Trouble::File { path: build, why })?;
        Ok(program)
    }

    fn is_this_version(&self, program: PathBuf) -> bool {
        let mut command = child::program(program);
        command.arg("--version");
        child::ask(command).is_some_and(|text| names_version(&text, self.version))
    }
}

/// Makes sure that a part of the Rust toolchain is there, such as `rustfmt` behind `cargo fmt`.
///
/// # Errors
/// What `rustup` gives, where the part is missing.
pub(crate) fn component(subcommand: &str, name: &str) -> Result<(), Trouble> {
    if child::ask(child::cargo(&[subcommand, "--version"])).is_some() {
        return Ok(());
    }
    let mut command = child::program("rustup");
    command.args(["component", "add", name]);
    child::run(command)
}

/// Whether a program's answer to `--version` names exactly this version.
fn names_version(answer: &str, version: &str) -> bool {
    answer.split_whitespace().any(|word| word == version)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_longer_version_is_another_version() {
        assert!(names_version("cargo-deny 0.20.2\n", "0.20.2"));
        assert!(!names_version("cargo-deny 0.20.21\n", "0.20.2"));
        assert!(!names_version("", "0.20.2"));
    }
}
