//! Bytes in, a JSON line out: frames of the camera, photos, sealed files.

use std::sync::Arc;

use tauri::State;
use tauri::ipc::{InvokeBody, Request};

use crate::keeper::Keeper;

/// Looks at a frame, a photo or a file away from the window's thread.
///
/// The bytes come raw, with their kind and size in the headers, or as Base64 in a JSON object where the
/// bridge carries text only, as on Android.
///
/// # Errors
/// When nothing says what the bytes are, or the process is already ending.
#[tauri::command]
pub(crate) async fn take(
    request: Request<'_>,
    keeper: State<'_, Arc<Keeper>>,
) -> Result<String, String> {
    let handed = read(&request).ok_or("these bytes do not say what they are")?;
    let keeper = Arc::clone(&keeper);
    tauri::async_runtime::spawn_blocking(move || keeper.take(&handed))
        .await
        .map_err(|_| "the app is closing".to_owned())
}

/// Bytes that are handed in, not yet looked at.
pub(crate) enum Handed {
    /// As they are, with what their head says of them.
    Raw {
        /// What they are said to be.
        kind: String,
        /// Pixels in a row of a frame.
        width: u32,
        /// Rows of a frame.
        height: u32,
        /// The bytes.
        bytes: Vec<u8>,
    },
    /// A JSON object with the same.
    Json(String),
}

fn read(request: &Request<'_>) -> Option<Handed> {
    let header = |name| request.headers().get(name)?.to_str().ok();
    let side = |name| header(name).and_then(|side| side.parse().ok());
    Some(match request.body() {
        InvokeBody::Raw(bytes) => Handed::Raw {
            kind: header("x-kind")?.to_owned(),
            width: side("x-width").unwrap_or_default(),
            height: side("x-height").unwrap_or_default(),
            bytes: bytes.clone(),
        },
        InvokeBody::Json(value) => Handed::Json(value.to_string()),
    })
}
