//! Dependencies keep to `deny.toml`: no network crates but where listed, known licences, one
//! source. Advisories are left out, since their list lives on the network.

use crate::child;
use crate::needs::COMPILE;
use crate::plan::{How, Step};
use crate::tools;
use crate::trouble::Trouble;

/// The step.
pub(crate) const STEP: Step = Step {
    name: "deny",
    what: "dependencies keep to deny.toml",
    needs: &[COMPILE],
    run,
};

fn run(_: &How) -> Result<(), Trouble> {
    // The whole graph is judged, so that a crate meant for another system cannot slip in; that
    // needs every crate of the lock file on disk, and after this nothing from the network.
    child::run(child::cargo(&["fetch", "--locked"]))?;
    let mut command = child::program(tools::DENY.ready()?);
    command.args(["--offline", "--locked", "--workspace"]);
    command.args(["check", "--hide-inclusion-graph"]);
    command.args(["bans", "licenses", "sources"]);
    child::run(command)
}
