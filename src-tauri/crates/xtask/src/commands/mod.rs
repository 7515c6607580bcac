//! The subcommands, one file each.

use crate::args::{Verb, Wish};
use crate::trouble::Trouble;
use crate::words;

mod bench;
mod check;
mod docs;
mod fuzz;
mod pixels;
mod start;
mod test;

/// Does what was asked for.
///
/// # Errors
/// What the subcommand gives.
pub(crate) fn run(wish: &Wish) -> Result<(), Trouble> {
    match wish.command {
        Verb::Start => start::run(wish),
        Verb::Test => test::run(wish),
        Verb::Check => check::run(wish),
        Verb::Bench => bench::run(wish),
        Verb::Fuzz => fuzz::run(wish),
        Verb::Pixels => pixels::run(),
        Verb::Docs => docs::run(),
        Verb::Help => {
            print!("{}", words::HELP);
            Ok(())
        }
    }
}
