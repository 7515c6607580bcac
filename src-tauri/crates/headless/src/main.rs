//! `headless lines` and `headless web`; see the library's page.

use std::process::ExitCode;

use headless::arguments::{Arguments, USAGE};

fn main() -> ExitCode {
    #[allow(
        clippy::print_stderr,
        reason = "a command line tool tells its trouble on stderr"
    )]
    match Arguments::read(std::env::args_os().skip(1)) {
        Ok(_) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("headless: {error}\n\n{USAGE}");
            ExitCode::from(2)
        }
    }
}
