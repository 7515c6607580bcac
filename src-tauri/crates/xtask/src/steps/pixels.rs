//! From one screen to another phone's camera: what one Chromium shows, filmed, is read by another.

use crate::child;
use crate::needs::{COMPILE, JOURNEYS, PYTHON, WINDOW};
use crate::plan::{How, Step};
use crate::steps::peers;
use crate::trouble::Trouble;

/// The step: two legs with fixed seeds.
pub(crate) const STEP: Step = Step {
    name: "pixels",
    what: "a camera reads what another screen shows",
    needs: &[COMPILE, WINDOW, JOURNEYS, PYTHON],
    run: two_legs,
};

fn two_legs(_: &How) -> Result<(), Trouble> {
    run("two_legs")
}

/// Runs one of the tests of `tests/journeys/tests/pixels.rs`.
///
/// # Errors
/// What building or the test gives.
pub(crate) fn run(test: &str) -> Result<(), Trouble> {
    child::run(child::cargo(&[
        "build", "--locked", "-p", "heftwell", "-p", "headless",
    ]))?;
    let mut command = child::cargo(&["test", "--locked", "-p", "journeys", "--test", "pixels"]);
    command.args([test, "--", "--ignored", "--exact", "--nocapture"]);
    command.env("HEFTWELL_PEERS", peers::python()?);
    child::run(command)
}
