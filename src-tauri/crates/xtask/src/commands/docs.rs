//! `docs`: the code's own pages. A broken link in them is an error.

use crate::child;
use crate::debian;
use crate::needs::COMPILE;
use crate::trouble::Trouble;

/// Builds the pages of the default members into the build folder.
///
/// # Errors
/// What installing or building gives.
pub(crate) fn run() -> Result<(), Trouble> {
    debian::install(COMPILE)?;
    let mut command = child::cargo(&["doc", "--locked", "--no-deps"]);
    command.env("RUSTDOCFLAGS", "-D warnings");
    child::run(command)
}
