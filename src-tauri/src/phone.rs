//! Where the phone's own activity or app delegate comes in.

/// Runs the app; a phone shows no terminal, so a failure can only end the process.
#[allow(
    unsafe_code,
    reason = "the macro exports the one symbol that the phone's side calls"
)]
#[tauri::mobile_entry_point]
fn start() {
    if let Err(error) = crate::run(false) {
        #[allow(
            clippy::panic,
            reason = "there is no window to show it in; the system keeps the text"
        )]
        {
            panic!("Heftwell cannot open its window: {error}");
        }
    }
}
