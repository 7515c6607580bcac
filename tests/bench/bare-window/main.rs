//! A window with one still page and nothing behind it: the least that this version of Tauri does.

#![allow(
    clippy::disallowed_types,
    clippy::disallowed_methods,
    reason = "generated code, the same on every run"
)]

use std::process::ExitCode;

fn main() -> ExitCode {
    match tauri::Builder::default().run(tauri::generate_context!()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(_) => ExitCode::FAILURE,
    }
}
