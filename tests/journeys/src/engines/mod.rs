//! The two engines that the app meets: WebKit in the window (as on iPhones and in the Linux
//! window) and Chromium (as in Android's web view).

mod browser;
mod display;
mod window;

pub use window::Undriven;

use std::net::{Ipv4Addr, TcpListener};
use std::path::Path;

use crate::driver::Session;
use crate::trouble::Trouble;

/// A common phone's page, in CSS pixels.
pub const SIZE: (u32, u32) = (360, 780);

/// Which engine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// The real shell with its WebKit view.
    Window,
    /// Chromium on the loopback page.
    Browser,
}

impl Kind {
    /// A short word for file names.
    pub fn name(self) -> &'static str {
        match self {
            Self::Window => "window",
            Self::Browser => "browser",
        }
    }
}

/// The film that the camera plays: a plain film of 1280 × 720 (`YUV4MPEG2`). It may be replaced as long
/// as the camera is closed.
pub const FILM: &str = "camera.y4m";

/// How the app is started: what its owner has set outside of it.
#[derive(Debug, Clone, Copy, Default)]
pub struct Setting {
    /// Whether the system is set to dark colours.
    pub dark: bool,
    /// Whether the app is to show invented data.
    pub demo: bool,
    /// Whether there is a camera, and a screen with as many dots as a phone's: in Chromium only. The
    /// camera plays [`FILM`], found in the home folder of the start when the camera is opened.
    pub camera: bool,
    /// By how many days the app's clock is ahead.
    pub days_ahead: u32,
}

/// Sets the clock that `command` and what it starts will see. The library is Debian's `libfaketime`; time that only runs, as for
/// the lock after a while, is left alone.
fn set_clock(command: &mut std::process::Command, setting: Setting) {
    if setting.days_ahead > 0 {
        command
            .env("LD_PRELOAD", "/usr/$LIB/faketime/libfaketime.so.1")
            .env("FAKETIME", format!("+{}d", setting.days_ahead))
            .env("FAKETIME_DONT_FAKE_MONOTONIC", "1")
            .env("DONT_FAKE_MONOTONIC", "1");
    }
}

/// The app, started, with a session in its page.
pub trait Engine {
    /// The session in the page.
    fn session(&self) -> &Session;

    /// Makes the page `width` CSS pixels wide.
    ///
    /// # Errors
    /// When the driver refuses.
    fn set_width(&self, width: u32) -> Result<(), Trouble>;

    /// The home folder of this start, where the system's own files about the app go.
    fn home(&self) -> &Path;

    /// Closes the app as its owner does.
    ///
    /// # Errors
    /// When it does not end.
    fn close(self: Box<Self>) -> Result<(), Trouble>;

    /// Ends the app at once, without a word, as a phone does that needs the memory.
    ///
    /// # Errors
    /// When there is no app to end.
    fn kill(self: Box<Self>) -> Result<(), Trouble>;

    /// Whether a person in front of the screen would see more than one colour; `None` where there
    /// is no screen to look at.
    fn shows_something(&self) -> Option<bool>;
}

/// Starts the app on the vault in `folder`.
///
/// # Errors
/// See [`Trouble`].
pub fn start(kind: Kind, folder: &Path, setting: Setting) -> Result<Box<dyn Engine>, Trouble> {
    match kind {
        Kind::Window => Ok(Box::new(window::Window::start(folder, setting)?)),
        Kind::Browser => Ok(Box::new(browser::Browser::start(folder, setting)?)),
    }
}

/// A port that nobody uses now. A driver that finds it taken a moment later does not come up,
/// and the journey says so.
fn free_port() -> Result<u16, Trouble> {
    Ok(TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?
        .local_addr()?
        .port())
}
