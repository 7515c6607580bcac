//! The shell: one window, four commands, one vault folder. All it does is carry JSON lines and
//! bytes between the page and `app`, write a sealed file where its owner finds it, and lock the vault when
//! nobody is looking.

mod command;
mod folder;
mod keeper;
#[cfg(mobile)]
mod phone;
mod save;
mod take;
mod window;

use std::sync::Arc;

use tauri::{Manager, RunEvent};

pub use folder::HOME_VARIABLE;

use keeper::Keeper;

/// Opens the window and stays until it is closed. With `demo` the vault is another one, filled with
/// invented data.
///
/// # Errors
/// When the system cannot show a window or names no data folder, or when demo data cannot be made.
pub fn run(demo: bool) -> Result<(), tauri::Error> {
    let shell = tauri::Builder::default()
        .invoke_handler(tauri::generate_handler![
            command::command,
            take::take,
            save::save,
            save::save_report
        ])
        .setup(move |shell| {
            let folder = folder::data_folder(shell.handle(), demo)?;
            let keeper = Arc::new(Keeper::open(&folder));
            if demo {
                keeper.fill_with_demo()?;
            }
            shell.manage(Arc::clone(&keeper));
            keeper::lock_when_idle(&keeper);
            window::open(shell)?;
            Ok(())
        })
        .on_window_event(|window, event| {
            if window::is_leaving(event) {
                window.state::<Arc<Keeper>>().lock();
            }
        })
        .build(context())?;
    shell.run(|shell, event| {
        if matches!(event, RunEvent::Exit) {
            shell.state::<Arc<Keeper>>().lock();
        }
    });
    Ok(())
}

/// The configuration and the page, both part of the program.
#[allow(
    clippy::disallowed_types,
    clippy::disallowed_methods,
    reason = "generated code, the same on every run"
)]
fn context() -> tauri::Context {
    tauri::generate_context!()
}
