//! Unit tests, laws, reference values and replayed fuzz inputs: all that `cargo test` runs.

use crate::child;
use crate::needs::COMPILE;
use crate::plan::Step;
use crate::steps::{QUICK_PACKAGES, select};
use crate::trouble::Trouble;

/// All default members.
pub(crate) const WHOLE: Step = Step {
    name: "unit",
    what: "unit tests, laws, reference values, replayed inputs",
    needs: &[COMPILE],
    run: |_| run(&[]),
};

/// The packages that build in seconds.
pub(crate) const QUICK: Step = Step {
    name: "unit",
    what: "tests of the packages that build in seconds",
    needs: &[],
    run: |_| run(&select(QUICK_PACKAGES)),
};

fn run(packages: &[&str]) -> Result<(), Trouble> {
    let mut command = child::cargo(&["test", "--locked"]);
    command.args(packages);
    child::run(command)
}
