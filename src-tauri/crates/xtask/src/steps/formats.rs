//! The written formats are complete: a reader in another language, which shares no code with ours,
//! opens what the vault wrote.

use std::path::PathBuf;

use crate::child;
use crate::needs::{COMPILE, PYTHON};
use crate::plan::{How, Step};
use crate::tree;
use crate::trouble::Trouble;

/// The step.
pub(crate) const STEP: Step = Step {
    name: "formats",
    what: "an independent reader opens what the vault wrote",
    needs: &[COMPILE, PYTHON],
    run,
};

/// What the reader imports, at the versions it was tried with.
const PACKAGES: &[&str] = &[
    "argon2-cffi==25.1.0",
    "cbor2==6.3.0",
    "cryptography==50.0.2",
    "pynacl==1.6.2",
];

fn run(_: &How) -> Result<(), Trouble> {
    let python = python()?;
    // The same choice of packages as in `unit`, so that nothing is built twice.
    let mut command = child::cargo(&["test", "--locked", "--test", "independent_reader"]);
    command.args(["--", "--include-ignored"]);
    command.env("HEFTWELL_PYTHON", python);
    child::run(command)
}

/// A Python of our own in the build folder, with the packages in it.
fn python() -> Result<PathBuf, Trouble> {
    let home = tree::target().join("tools").join("python");
    let python = home.join("bin").join("python");
    let list = home.join("packages.txt");
    let wanted = PACKAGES.join("\n");
    if python.is_file() && std::fs::read_to_string(&list).is_ok_and(|there| there == wanted) {
        return Ok(python);
    }
    let mut make = child::program("python3");
    make.args(["-m", "venv", "--clear"]).arg(&home);
    child::run(make)?;
    let mut install = child::program(&python);
    install.args(["-m", "pip", "install", "--quiet"]);
    install.arg("--disable-pip-version-check").args(PACKAGES);
    child::run(install)?;
    std::fs::write(&list, wanted).map_err(|why| Trouble::File { path: list, why })?;
    Ok(python)
}
