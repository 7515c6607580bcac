//! The real shell in a window on a screen in memory, driven through WebKitWebDriver.

use std::path::Path;
use std::process::{Command, Stdio};

use serde_json::json;

use super::display::Display;
use super::{Engine, SIZE, Setting, free_port, set_clock};
use crate::binaries;
use crate::child::{self, Running};
use crate::driver::Session;
use crate::trouble::Trouble;
use crate::wait;

/// A started shell. The order of the fields is the order of their end.
pub(super) struct Window {
    session: Session,
    driver: Running,
    display: Display,
    home: tempfile::TempDir,
}

impl Window {
    pub(super) fn start(folder: &Path, setting: Setting) -> Result<Self, Trouble> {
        let shell = binaries::find()?.shell;
        let display = Display::start()?;
        let home = tempfile::tempdir()?;
        let port = free_port()?;
        let mut command = Command::new("WebKitWebDriver");
        command
            .arg(format!("--port={port}"))
            .env("TAURI_WEBVIEW_AUTOMATION", "true");
        surround(&mut command, &display, folder, home.path(), setting);
        let driver = Running::start("WebKitWebDriver", "webkit2gtk-driver", &mut command)?;
        let words: &[&str] = if setting.demo { &["--demo"] } else { &[] };
        // A browser name in here would match no application.
        let options = json!({ "binary": shell, "args": words });
        let session = Session::open(port, &json!({ "webkitgtk:browserOptions": options }))?;
        Ok(Self {
            session,
            driver,
            display,
            home,
        })
    }
}

/// The shell as its owner starts it, with nobody driving it: all one can do is look at the screen.
pub struct Undriven {
    app: Running,
    display: Display,
    home: tempfile::TempDir,
}

impl Undriven {
    /// Starts it on the vault in `folder`.
    ///
    /// # Errors
    /// See [`Trouble`].
    pub fn start(folder: &Path) -> Result<Self, Trouble> {
        let display = Display::start()?;
        let home = tempfile::tempdir()?;
        let mut command = Command::new(binaries::find()?.shell);
        command.env_remove("TAURI_WEBVIEW_AUTOMATION");
        surround(
            &mut command,
            &display,
            folder,
            home.path(),
            Setting::default(),
        );
        let app = Running::start("the app", "this workspace", &mut command)?;
        Ok(Self { app, display, home })
    }

    /// Waits until the screen shows more than a blank window; false if it does not.
    pub fn shows_something(&self) -> bool {
        let shown = wait::until(wait::LIMIT, || self.display.shows_something().then_some(()));
        shown.is_some()
    }

    /// The home folder of this start.
    pub fn home(&self) -> &Path {
        self.home.path()
    }

    /// Whether the app still runs.
    pub fn is_running(&self) -> bool {
        child::is_running(self.app.id())
    }
}

/// What the shell finds around it: a screen, a vault's folder, and a home of its own.
fn surround(
    command: &mut Command,
    display: &Display,
    folder: &Path,
    home: &Path,
    setting: Setting,
) {
    command
        .env("DISPLAY", &display.name)
        .env("GDK_BACKEND", "x11")
        .env(
            "GTK_THEME",
            if setting.dark {
                "Adwaita:dark"
            } else {
                "Adwaita"
            },
        )
        .env("HEFTWELL_HOME", folder)
        .env("NO_AT_BRIDGE", "1")
        // WebKitGTK 2.50 draws into shared memory where there is no graphics card. The switches
        // that older versions needed (no DMABUF renderer, no compositing) are left out: with
        // them a driver's request for a picture is never answered.
        .env_remove("WEBKIT_DISABLE_DMABUF_RENDERER")
        .env_remove("WEBKIT_DISABLE_COMPOSITING_MODE")
        .env_remove("WAYLAND_DISPLAY")
        .stdout(Stdio::null())
        .stderr(Stdio::null());
    set_clock(command, setting);
    for variable in ["HOME", "XDG_CACHE_HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME"] {
        command.env(variable, home);
    }
}

impl Engine for Window {
    fn session(&self) -> &Session {
        &self.session
    }

    fn set_width(&self, width: u32) -> Result<(), Trouble> {
        self.session.resize(width, SIZE.1)
    }

    fn home(&self) -> &Path {
        self.home.path()
    }

    fn close(self: Box<Self>) -> Result<(), Trouble> {
        let Self {
            session, driver, ..
        } = *self;
        let apps = driver.children();
        session.close()?;
        all_ended(&apps)
    }

    fn kill(self: Box<Self>) -> Result<(), Trouble> {
        let Self {
            session, driver, ..
        } = *self;
        let apps = driver.children();
        if apps.is_empty() {
            return Err(Trouble::NoSuchProcess(0));
        }
        for app in &apps {
            child::kill(*app)?;
        }
        session.forget();
        all_ended(&apps)
    }

    fn shows_something(&self) -> Option<bool> {
        wait::until(wait::LIMIT, || {
            self.display.shows_something().then_some(true)
        })
        .or(Some(false))
    }
}

fn all_ended(apps: &[u32]) -> Result<(), Trouble> {
    let ended = wait::until(wait::LIMIT, || {
        apps.iter()
            .all(|app| !child::is_running(*app))
            .then_some(())
    });
    ended.ok_or_else(|| Trouble::StillRunning("the app".to_owned()))
}
