//! A screen in memory.

use std::fs;
use std::path::PathBuf;
use std::process::{Command, Stdio};

use crate::child::Running;
use crate::trouble::Trouble;

/// Little larger than the window, which lies in its corner: without a window manager the keyboard
/// goes to the window under the pointer, and the pointer starts in the middle.
const SIZE: &str = "480x860x24";

/// An X display of our own, gone with the value.
pub(super) struct Display {
    _server: Running,
    /// Its name for `DISPLAY`, as ":5".
    pub(super) name: String,
    memory: tempfile::TempDir,
}

impl Display {
    pub(super) fn start() -> Result<Self, Trouble> {
        let memory = tempfile::tempdir()?;
        let mut command = Command::new("Xvfb");
        command
            .args([
                "-displayfd",
                "1",
                "-screen",
                "0",
                SIZE,
                "-nolisten",
                "tcp",
                "-fbdir",
            ])
            .arg(memory.path())
            .stdout(Stdio::piped())
            .stderr(Stdio::null());
        let mut server = Running::start("Xvfb", "xvfb", &mut command)?;
        let name = format!(":{}", server.first_line()?);
        Ok(Self {
            _server: server,
            name,
            memory,
        })
    }

    /// Whether the screen's memory holds more than a ground and a blank window. Counted in 32-bit
    /// pixels; letters drawn smoothly alone give dozens of shades.
    pub(super) fn shows_something(&self) -> bool {
        let bytes = fs::read(self.memory()).unwrap_or_default();
        let mut shades: Vec<&[u8]> = bytes.chunks_exact(4).skip(1024).collect();
        shades.sort_unstable();
        shades.dedup();
        shades.len() > 16
    }

    fn memory(&self) -> PathBuf {
        self.memory.path().join("Xvfb_screen0")
    }
}
