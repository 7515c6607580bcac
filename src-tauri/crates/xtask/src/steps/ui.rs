//! Logic of the screens, run by Node's own test runner: nothing to install besides Node.

use std::path::Path;

use crate::child;
use crate::needs::SCRIPT;
use crate::plan::{How, Step};
use crate::tree;
use crate::trouble::Trouble;

/// The step.
pub(crate) const STEP: Step = Step {
    name: "ui",
    what: "logic of the screens",
    needs: &[SCRIPT],
    run,
};

fn run(_: &How) -> Result<(), Trouble> {
    let root = tree::root();
    let tests = tree::files(&root.join("tests/ui"), ".test.mjs")?;
    if tests.is_empty() {
        return Err(Trouble::Nothing("tests/ui holds no *.test.mjs"));
    }
    let mut command = child::program("node");
    command.args(["--test", "--test-reporter=spec"]);
    command.args(tests.iter().map(|path| shorter(path, &root)));
    child::run(command)
}

/// Relative to the root, which is where the program runs.
fn shorter<'a>(path: &'a Path, root: &Path) -> &'a Path {
    path.strip_prefix(root).unwrap_or(path)
}
