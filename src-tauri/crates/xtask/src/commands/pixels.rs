//! `pixels`: every leg from screen to camera, with several seeds, and how long each took.

use crate::debian;
use crate::steps::pixels;
use crate::trouble::Trouble;

/// Runs them.
///
/// # Errors
/// What installing, building or a leg gives.
pub(crate) fn run() -> Result<(), Trouble> {
    debian::install(&pixels::STEP.needs.concat())?;
    pixels::run("every_leg")
}
