//! The one window, and everything it may not do.

use std::sync::Arc;

use tauri::webview::{
    DownloadEvent, NewWindowResponse, PermissionKind, PermissionResponse, WebviewWindowBuilder,
};
use tauri::{App, Manager, Runtime, Url, Webview, WindowEvent};

use crate::keeper::Keeper;

/// The label of the one window; `tauri.conf.json` and `capabilities/main.json` name it too.
pub(crate) const LABEL: &str = "main";

/// Opens the window as `tauri.conf.json` describes it, closed to everything but our own page.
///
/// # Errors
/// When the configuration has no such window, or the system refuses to open one.
pub(crate) fn open<R: Runtime>(shell: &App<R>) -> Result<(), tauri::Error> {
    let windows = &shell.config().app.windows;
    let Some(config) = windows.iter().find(|window| window.label == LABEL) else {
        return Err(tauri::Error::WindowNotFound);
    };
    let mut config = config.clone();
    // Nothing that the page shows is left on the disk by the web view. A web view under test
    // is driven through its context, which a private one does not have.
    config.incognito = !under_test();
    WebviewWindowBuilder::from_config(shell.handle(), &config)?
        .on_navigation(is_our_page)
        .on_new_window(|_, _| NewWindowResponse::Deny)
        .on_download(|_, _: DownloadEvent<'_>| false)
        .on_permission_request(|page: Webview<R>, kind| {
            answer_permission(kind, page.state::<Arc<Keeper>>().is_scanning())
        })
        .build()?;
    Ok(())
}

/// The camera while something is being scanned; nothing else, and never otherwise. Without an answer of
/// ours some systems would grant every request.
fn answer_permission(kind: PermissionKind, is_scanning: bool) -> PermissionResponse {
    if is_scanning && matches!(kind, PermissionKind::Camera) {
        PermissionResponse::Allow
    } else {
        PermissionResponse::Deny
    }
}

/// Whether nobody can be looking at the window any more, so that the vault must be locked: it
/// closes, or the phone shows another app or its lock screen.
pub(crate) fn is_leaving(event: &WindowEvent) -> bool {
    match event {
        WindowEvent::CloseRequested { .. } | WindowEvent::Destroyed => true,
        #[cfg(mobile)]
        WindowEvent::Suspended => true,
        _ => false,
    }
}

/// Whether a web driver started us: the web view library itself looks at this variable.
fn under_test() -> bool {
    cfg!(debug_assertions) && std::env::var_os("TAURI_WEBVIEW_AUTOMATION").is_some()
}

/// Whether an address is inside our own page: `tauri://localhost` on Apple systems and Linux,
/// `http://tauri.localhost` on Android and Windows, where custom schemes do not work.
fn is_our_page(address: &Url) -> bool {
    match (address.scheme(), address.host_str(), address.port()) {
        ("tauri", Some("localhost"), None) => cfg!(not(any(target_os = "android", windows))),
        ("http", Some("tauri.localhost"), None) => cfg!(any(target_os = "android", windows)),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_camera_is_let_in_only_while_scanning_and_nothing_else_ever() {
        let allows = |kind, is_scanning| {
            matches!(
                answer_permission(kind, is_scanning),
                PermissionResponse::Allow
            )
        };
        assert!(allows(PermissionKind::Camera, true));
        assert!(!allows(PermissionKind::Camera, false));
        for other in [
            PermissionKind::Microphone,
            PermissionKind::Geolocation,
            PermissionKind::Notifications,
        ] {
            assert!(!allows(other, true));
        }
    }

    #[test]
    #[cfg(not(any(target_os = "android", windows)))]
    fn the_window_stays_on_our_own_page() {
        let stays = |address: &str| is_our_page(&Url::parse(address).unwrap());
        assert!(stays("tauri://localhost"));
        assert!(stays("tauri://localhost/index.html#/home"));
        for elsewhere in [
            "https://example.org/",
            "http://tauri.localhost/",
            "tauri://localhost.example.org/",
            "tauri://localhost:8080/",
            "tauri://other/",
            "file:///etc/passwd",
            "data:text/html,hello",
            "javascript:alert(1)",
            "about:blank",
            "blob:tauri://localhost/1",
        ] {
            assert!(!stays(elsewhere), "{elsewhere}");
        }
    }
}
