//! `bench`: measures speed and size in a release build. Never part of `test`.

use crate::child;
use crate::debian;
use crate::needs::{COMPILE, JOURNEYS, WINDOW};
use crate::trouble::Trouble;

/// Builds and runs the measurements.
///
/// # Errors
/// What installing, building or measuring gives.
pub(crate) fn run() -> Result<(), Trouble> {
    debian::install(&[COMPILE, WINDOW, JOURNEYS].concat())?;
    child::run(child::cargo(&[
        "run",
        "--release",
        "--locked",
        "--package",
        "bench",
    ]))
}
