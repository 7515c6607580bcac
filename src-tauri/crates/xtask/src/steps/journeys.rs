//! A person's way through the real app: the window through WebKitWebDriver, the page in Chromium.

use crate::child;
use crate::needs::{COMPILE, JOURNEYS, NPM, WINDOW};
use crate::plan::{How, Step};
use crate::trouble::Trouble;

/// The step.
pub(crate) const STEP: Step = Step {
    name: "journeys",
    what: "a person's way through the real app, in both engines",
    needs: &[COMPILE, WINDOW, JOURNEYS, NPM],
    run,
};

fn run(_: &How) -> Result<(), Trouble> {
    child::run(child::cargo(&[
        "build", "--locked", "-p", "heftwell", "-p", "headless",
    ]))?;
    child::run(child::cargo(&["test", "--locked", "-p", "journeys"]))
}
