//! `headless lines` and `headless web`; see the library's page.

mod run;

use std::process::ExitCode;

use headless::arguments::{Arguments, USAGE};

#[allow(
    clippy::print_stderr,
    reason = "a command line tool tells its trouble on stderr"
)]
fn main() -> ExitCode {
    let arguments = match Arguments::read(std::env::args_os().skip(1)) {
        Ok(arguments) => arguments,
        Err(error) => {
            eprintln!("headless: {error}\n\n{USAGE}");
            return ExitCode::from(2);
        }
    };
    match run::run(arguments) {
        Ok(()) => ExitCode::SUCCESS,
        Err(trouble) => {
            eprintln!("headless: {trouble}");
            ExitCode::FAILURE
        }
    }
}
