//! Pythons of our own under `target/`, each with the libraries of one list in it, and the program they question.

use std::path::{Path, PathBuf};

use crate::child;
use crate::tree;
use crate::trouble::Trouble;

/// The list of what a check imports, beside it.
const LIST: &str = "requirements.txt";

/// A Python with everything that `folder/requirements.txt` names; made once, and again when the list changes.
///
/// # Errors
/// What making it or `pip` gives.
pub(crate) fn for_checks(folder: &str) -> Result<PathBuf, Trouble> {
    let list = Path::new(folder).join(LIST);
    let home = home(folder);
    let python = home.join("bin").join("python");
    let wanted = read(&tree::root().join(&list))?;
    let installed = home.join(LIST);
    if python.is_file() && read(&installed).is_ok_and(|there| there == wanted) {
        return Ok(python);
    }
    let mut make = child::program("python3");
    make.args(["-m", "venv"]).arg(&home);
    child::run(make)?;
    let mut install = child::program(&python);
    install.args(["-m", "pip", "install", "--quiet"]);
    install
        .args(["--disable-pip-version-check", "-r"])
        .arg(list);
    child::run(install)?;
    std::fs::write(&installed, wanted).map_err(|why| Trouble::File {
        path: installed,
        why,
    })?;
    Ok(python)
}

/// Builds `headless lines` without a vault and gives its path. So it builds in seconds and needs no C compiler; in a
/// folder of its own, since the other steps build a program of this name with everything in it.
///
/// # Errors
/// What cargo gives.
pub(crate) fn lines_program() -> Result<PathBuf, Trouble> {
    let target = tree::target().join("checks").join("build");
    let mut build = child::cargo(&["build", "--locked", "-p", "headless"]);
    build.arg("--no-default-features");
    build.env("CARGO_TARGET_DIR", &target);
    child::run(build)?;
    let program = format!("headless{}", std::env::consts::EXE_SUFFIX);
    Ok(target.join("debug").join(program))
}

fn home(folder: &str) -> PathBuf {
    let name = Path::new(folder).file_name().unwrap_or_default();
    tree::target().join("checks").join(name)
}

fn read(path: &Path) -> Result<String, Trouble> {
    std::fs::read_to_string(path).map_err(|why| Trouble::File {
        path: path.to_path_buf(),
        why,
    })
}
