//! No warning from the compiler or from clippy, in code and in tests.

use crate::child;
use crate::needs::{COMPILE, WINDOW};
use crate::plan::{How, Step};
use crate::steps::{QUICK_PACKAGES, select};
use crate::tools;
use crate::trouble::Trouble;

/// Every package.
pub(crate) const WHOLE: Step = Step {
    name: "clippy",
    what: "no warning in any package",
    needs: &[COMPILE, WINDOW],
    run: |how| run(how, &["--workspace"]),
};

/// The packages that build in seconds.
pub(crate) const QUICK: Step = Step {
    name: "clippy",
    what: "no warning in the packages that build in seconds",
    needs: &[],
    run: |how| run(how, &select(QUICK_PACKAGES)),
};

fn run(how: &How, packages: &[&str]) -> Result<(), Trouble> {
    tools::component("clippy", "clippy")?;
    let mut command = child::cargo(&["clippy", "--locked", "--all-targets"]);
    command.args(packages);
    if how.fix {
        command.args(["--fix", "--allow-dirty", "--allow-staged"]);
    }
    command.args(["--", "-D", "warnings"]);
    child::run(command)
}
