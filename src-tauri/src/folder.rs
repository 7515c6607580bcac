//! Where the vault lives on this device.

use std::path::PathBuf;

use tauri::{AppHandle, Manager, Runtime};

/// Names a folder to use in place of the user's own, on a computer only.
///
/// A phone starts apps without an environment of the caller's choosing, so there the name is
/// not even looked at. On a computer whoever sets it could as well start another program.
pub const HOME_VARIABLE: &str = "HEFTWELL_HOME";

/// The folder that holds the vault; it need not exist yet. Invented data has a folder of its own, so
/// that it can never be mistaken for, or mixed into, what somebody really noted.
///
/// # Errors
/// When the system names no data folder for this app.
pub(crate) fn data_folder<R: Runtime>(
    shell: &AppHandle<R>,
    demo: bool,
) -> Result<PathBuf, tauri::Error> {
    let name = if demo { "demo" } else { "vault" };
    match named_folder() {
        Some(folder) => Ok(folder),
        None => Ok(shell.path().app_local_data_dir()?.join(name)),
    }
}

#[cfg(desktop)]
fn named_folder() -> Option<PathBuf> {
    std::env::var_os(HOME_VARIABLE)
        .filter(|name| !name.is_empty())
        .map(PathBuf::from)
}

#[cfg(mobile)]
fn named_folder() -> Option<PathBuf> {
    None
}
