//! The loopback page in Chromium with a phone's measures, driven through chromedriver.

use std::path::Path;
use std::process::{Command, Stdio};

use serde_json::json;

use super::{Engine, FILM, SIZE, Setting, free_port, set_clock};
use crate::binaries;
use crate::child::{self, Running};
use crate::driver::Session;
use crate::trouble::Trouble;

const FLAGS: [&str; 10] = [
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-default-apps",
];

/// A camera without a person who allows it and without a camera.
const CAMERA_FLAGS: [&str; 2] = [
    "--use-fake-device-for-media-stream",
    "--use-fake-ui-for-media-stream",
];

/// Dots in a CSS pixel, as on a common phone.
const DOTS: f64 = 3.0;

/// A started page and browser. The order of the fields is the order of their end.
pub(super) struct Browser {
    session: Session,
    _driver: Running,
    app: Running,
    home: tempfile::TempDir,
}

impl Browser {
    pub(super) fn start(folder: &Path, setting: Setting) -> Result<Self, Trouble> {
        let home = tempfile::tempdir()?;
        let mut command = Command::new(binaries::find()?.headless);
        command
            .args(["web", "--vault"])
            .arg(folder)
            .stdout(Stdio::piped());
        if setting.demo {
            command.arg("--demo");
        }
        set_clock(&mut command, setting);
        let mut app = Running::start("headless", "this workspace", &mut command)?;
        let opening = app.first_line()?;

        let port = free_port()?;
        let mut command = Command::new("chromedriver");
        command
            .arg(format!("--port={port}"))
            .env("HOME", home.path())
            .env("XDG_CONFIG_HOME", home.path())
            .env("XDG_CACHE_HOME", home.path())
            .stdout(Stdio::null())
            .stderr(Stdio::null());
        let driver = Running::start("chromedriver", "chromium-driver", &mut command)?;
        let mut flags: Vec<String> = FLAGS.iter().map(|flag| (*flag).to_owned()).collect();
        flags.push(format!(
            "--user-data-dir={}",
            home.path().join("profile").display()
        ));
        if setting.camera {
            flags.extend(CAMERA_FLAGS.map(str::to_owned));
            let film = home.path().join(FILM);
            flags.push(format!(
                "--use-file-for-fake-video-capture={}",
                film.display()
            ));
        }
        let dots = if setting.camera { DOTS } else { 1.0 };
        let metrics =
            json!({ "width": SIZE.0, "height": SIZE.1, "pixelRatio": dots, "touch": true });
        let options = json!({ "args": flags, "mobileEmulation": { "deviceMetrics": metrics } });
        let session = Session::open(port, &json!({ "goog:chromeOptions": options }))?;
        let browser = Self {
            session,
            _driver: driver,
            app,
            home,
        };
        browser.set_colours(setting)?;
        browser.session.go(&opening)?;
        Ok(browser)
    }

    fn set_colours(&self, setting: Setting) -> Result<(), Trouble> {
        let scheme = if setting.dark { "dark" } else { "light" };
        let features = json!([{ "name": "prefers-color-scheme", "value": scheme }]);
        self.devtools(
            "Emulation.setEmulatedMedia",
            &json!({ "features": features }),
        )
    }

    fn devtools(&self, command: &str, parameters: &serde_json::Value) -> Result<(), Trouble> {
        let body = json!({ "cmd": command, "params": parameters });
        self.session.post("/goog/cdp/execute", &body).map(drop)
    }
}

impl Engine for Browser {
    fn session(&self) -> &Session {
        &self.session
    }

    fn set_width(&self, width: u32) -> Result<(), Trouble> {
        let metrics =
            json!({ "width": width, "height": SIZE.1, "deviceScaleFactor": 1, "mobile": true });
        self.devtools("Emulation.setDeviceMetricsOverride", &metrics)
    }

    fn home(&self) -> &Path {
        self.home.path()
    }

    fn close(self: Box<Self>) -> Result<(), Trouble> {
        let Self { session, app, .. } = *self;
        session.close()?;
        app.end_gently()
    }

    fn kill(self: Box<Self>) -> Result<(), Trouble> {
        child::kill(self.app.id())
    }

    fn shows_something(&self) -> Option<bool> {
        None
    }
}
