//! The command for nearly everything: a JSON line in, a JSON line out.

use std::sync::Arc;

use tauri::State;

use crate::keeper::Keeper;

/// Answers one line away from the window's thread: deriving a key takes a good part of a second,
/// and the page must stay alive meanwhile.
///
/// # Errors
/// Never through `app`, whose failures are replies. Only when the process is already ending.
#[tauri::command]
pub(crate) async fn command(
    line: String,
    keeper: State<'_, Arc<Keeper>>,
) -> Result<String, String> {
    let keeper = Arc::clone(&keeper);
    tauri::async_runtime::spawn_blocking(move || keeper.answer(&line))
        .await
        .map_err(|_| "the app is closing".to_owned())
}
