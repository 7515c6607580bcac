//! The window as its owner starts it, without a driver: its web view is private then, and the only
//! thing to look at is the screen.

#![allow(clippy::unwrap_used, reason = "a test stops at the first surprise")]

use std::fs;
use std::path::{Path, PathBuf};

use journeys::engines::Undriven;

#[test]
fn the_window_shows_its_page_and_the_web_view_keeps_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let app = Undriven::start(folder.path()).unwrap();
    assert!(app.shows_something(), "the window stays blank");
    assert!(app.is_running());

    let kept: Vec<PathBuf> = files_under(app.home())
        .into_iter()
        .filter(|file| !is_the_systems(file))
        .collect();
    assert!(kept.is_empty(), "{kept:?}");
}

/// What the libraries keep for every program: settings, lists of fonts and shaders, random salts, and
/// the list of hosts that asked for encryption, of which there are none.
fn is_the_systems(file: &Path) -> bool {
    let name = file.file_name().unwrap_or_default().to_string_lossy();
    if name == "salt" || name.starts_with("hsts-storage.sqlite") {
        return true;
    }
    ["dconf", "fontconfig", "mesa_shader_cache", "gstreamer-1.0"]
        .iter()
        .any(|library| file.components().any(|part| part.as_os_str() == *library))
}

fn files_under(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    entries
        .flat_map(|entry| match entry.file_type() {
            Ok(kind) if kind.is_dir() => files_under(&entry.path()),
            _ => vec![entry.path()],
        })
        .collect()
}
