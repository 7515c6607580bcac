//! The Rust sources are laid out as rustfmt would.

use crate::child;
use crate::plan::{How, Step};
use crate::tools;
use crate::trouble::Trouble;

/// The step.
pub(crate) const STEP: Step = Step {
    name: "format",
    what: "sources are laid out as rustfmt would",
    needs: &[],
    run,
};

fn run(how: &How) -> Result<(), Trouble> {
    tools::component("fmt", "rustfmt")?;
    let mut command = child::cargo(&["fmt", "--all"]);
    if !how.fix {
        command.args(["--", "--check"]);
    }
    child::run(command)
}
