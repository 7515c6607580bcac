//! `bench`: measures speed and size in a release build. Never part of `test`.

use crate::args::Wish;
use crate::child;
use crate::debian;
use crate::needs::{COMPILE, JOURNEYS, PEERS, PYTHON, WINDOW};
use crate::steps::{dynamics, peers};
use crate::tree;
use crate::trouble::Trouble;

/// Builds what is measured, in one go, and measures: all of it, or the parts that are named.
///
/// # Errors
/// What installing, building or measuring gives.
pub(crate) fn run(wish: &Wish) -> Result<(), Trouble> {
    debian::install(&[COMPILE, WINDOW, JOURNEYS, PYTHON, PEERS].concat())?;
    dynamics::python()?;
    peers::python()?;
    // One build for the programs and for what measures them, so that shared crates are the same.
    let mut build = child::cargo(&["build", "--release", "--locked"]);
    build.args(["--package", "heftwell", "--package", "bench"]);
    child::run(build)?;
    let mut bench = child::program(tree::target().join("release").join("bench"));
    bench.args(&wish.words);
    child::run(bench)
}
