//! The joint moments of our postures, against a general rigid-body dynamics library.

use std::path::{Path, PathBuf};

use crate::child;
use crate::needs::PYTHON;
use crate::plan::{How, Step};
use crate::python;
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
    let mut check = child::program(python()?);
    check.arg(Path::new(FOLDER).join("check_poses.py"));
    check.arg(python::lines_program()?);
    child::run(check)
}

/// A Python with the library in it.
///
/// # Errors
/// What making it or `pip` gives.
pub(crate) fn python() -> Result<PathBuf, Trouble> {
    python::for_checks(FOLDER)
}
