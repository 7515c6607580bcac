//! The joint moments of our postures, against a general rigid-body dynamics library.

use std::path::{Path, PathBuf};

use crate::child;
use crate::needs::PYTHON;
use crate::plan::{How, Step};
use crate::tree;
use crate::trouble::Trouble;

/// The step.
pub(crate) const STEP: Step = Step {
    name: "dynamics",
    what: "a dynamics library gives the same joint moments",
    needs: &[PYTHON],
    run,
};

/// Where the check and the list of what it imports lie.
const FOLDER: &str = "tests/dynamics";

fn run(_: &How) -> Result<(), Trouble> {
    let python = python()?;
    // Without `app` it builds in seconds and needs no C compiler. A folder of its own, since the
    // other steps build a program of this name with everything in it.
    let target = home().join("build");
    let mut build = child::cargo(&["build", "--locked", "-p", "headless"]);
    build.arg("--no-default-features");
    build.env("CARGO_TARGET_DIR", &target);
    child::run(build)?;
    let program = format!("headless{}", std::env::consts::EXE_SUFFIX);
    let mut check = child::program(python);
    check.arg(Path::new(FOLDER).join("check_poses.py"));
    check.arg(target.join("debug").join(program));
    child::run(check)
}

/// A Python of our own in the build folder, with the library in it.
///
/// # Errors
/// What making it or `pip` gives.
pub(crate) fn python() -> Result<PathBuf, Trouble> {
    let home = home();
    let python = home.join("bin").join("python");
    let list = Path::new(FOLDER).join("requirements.txt");
    let wanted = read(&tree::root().join(&list))?;
    let installed = home.join("requirements.txt");
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

fn home() -> PathBuf {
    tree::target().join("dynamics")
}

fn read(path: &Path) -> Result<String, Trouble> {
    std::fs::read_to_string(path).map_err(|why| Trouble::File {
        path: path.to_path_buf(),
        why,
    })
}
