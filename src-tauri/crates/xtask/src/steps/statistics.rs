//! The figures of the look back, against a general statistics library.

use std::path::Path;

use crate::child;
use crate::needs::PYTHON;
use crate::plan::{How, Step};
use crate::python;
use crate::trouble::Trouble;

/// The step.
pub(crate) const STEP: Step = Step {
    name: "statistics",
    what: "a statistics library gives the same figures of a review",
    needs: &[PYTHON],
    run,
};

/// Where the check and the list of what it imports lie.
const FOLDER: &str = "tests/statistics";

fn run(_: &How) -> Result<(), Trouble> {
    let mut check = child::program(python::for_checks(FOLDER)?);
    check.arg(Path::new(FOLDER).join("check_review.py"));
    check.arg(python::lines_program()?);
    child::run(check)
}
