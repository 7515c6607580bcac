//! Our symbols read by decoders that are not ours, and symbols of an encoder that is not ours read by us.

use std::path::PathBuf;

use crate::child;
use crate::needs::{COMPILE, PEERS, PYTHON};
use crate::plan::{How, Step};
use crate::python;
use crate::trouble::Trouble;

/// The step.
pub(crate) const STEP: Step = Step {
    name: "peers",
    what: "other decoders read our symbols, and we read another encoder's",
    needs: &[COMPILE, PYTHON, PEERS],
    run,
};

fn run(_: &How) -> Result<(), Trouble> {
    let mut command = child::cargo(&["test", "--locked", "-p", "handoff"]);
    command.args(["--test", "symbol_peers", "--", "--include-ignored"]);
    command.env("HEFTWELL_PEERS", python()?);
    child::run(command)
}

/// A Python with the decoders, the encoder, and what films are made with.
///
/// # Errors
/// What making it or `pip` gives.
pub(crate) fn python() -> Result<PathBuf, Trouble> {
    python::for_checks("tests/handoff_peers")
}
