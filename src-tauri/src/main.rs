//! Heftwell in a window on a computer; `--demo` opens it on invented data. On a phone the library is
//! started by the system instead.

#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

use std::process::ExitCode;

fn main() -> ExitCode {
    let demo = std::env::args_os().any(|word| word == "--demo");
    match heftwell_shell::run(demo) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            // The window never came up, so the terminal is the only place left to say why.
            #[allow(clippy::print_stderr, reason = "there is no window to show it in")]
            {
                eprintln!("Heftwell cannot open its window: {error}");
            }
            ExitCode::FAILURE
        }
    }
}
