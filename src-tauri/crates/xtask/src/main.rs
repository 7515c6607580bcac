//! `cargo xtask`: the one command for whoever works on this tree or wants to try the app.
//!
//! It uses the standard library only, so that it builds in a second on a bare machine and can
//! then install whatever the rest needs. `words.rs` holds the help text; `commands/` has a file
//! for each subcommand and `steps/` one for each thing that is checked.

#![forbid(unsafe_code)]
#![allow(
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "a command line tool talks to its user through both streams"
)]

use std::process::ExitCode;

mod args;
mod child;
mod commands;
mod debian;
mod needs;
mod plan;
mod python;
mod steps;
mod tools;
mod tree;
mod trouble;
mod words;

fn main() -> ExitCode {
    let wish = match args::read(std::env::args().skip(1)) {
        Ok(wish) => wish,
        Err(trouble) => {
            eprintln!("xtask: {trouble}\n\n{}", words::HELP);
            return ExitCode::from(2);
        }
    };
    match commands::run(&wish) {
        Ok(()) => ExitCode::SUCCESS,
        Err(trouble) => {
            eprintln!("xtask: {trouble}");
            ExitCode::FAILURE
        }
    }
}
