//! Holds the app for the window's life, and locks it.

use std::io;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Weak};
use std::time::Duration;

use app::demo::{self, DemoError};
use app::{App, AppError, SystemWorld, Taken};

use crate::save;
use crate::take::Handed;

/// How often the vault is asked whether it has been left alone for too long. The app knows how
/// long is too long; this only bounds how late it acts.
const TICK: Duration = Duration::from_secs(5);

/// The reply to every command when the app's folder cannot be used. There are no words to choose
/// from then, since the chosen language is kept in that folder; the page says it in both.
const NO_FOLDER: &str = r#"{"error":{"code":"storage_failed","field":null,"message":"Heftwell cannot use its folder on this device."}}"#;

/// The app, or nothing when its folder cannot be used.
///
/// The window opens in both cases: a person whose disk is full must be told so on a screen.
pub(crate) struct Keeper(Result<App, AppError>);

impl Keeper {
    /// Opens the app on its folder.
    pub(crate) fn open(folder: &Path) -> Self {
        Self(App::open(folder, Box::new(SystemWorld)))
    }

    /// Fills a new vault with invented data, or leaves the invented data that is there.
    ///
    /// # Errors
    /// When there is a vault that somebody made, or a step fails.
    pub(crate) fn fill_with_demo(&self) -> Result<(), DemoError> {
        match &self.0 {
            Ok(app) => demo::fill(app),
            Err(_) => Ok(()),
        }
    }

    /// One JSON line in, one JSON line out.
    pub(crate) fn answer(&self, line: &str) -> String {
        match &self.0 {
            Ok(app) => app.answer(line),
            Err(_) => NO_FOLDER.to_owned(),
        }
    }

    /// Bytes in, one JSON line out.
    pub(crate) fn take(&self, handed: &Handed) -> String {
        match (&self.0, handed) {
            (Ok(app), Handed::Json(body)) => app.take_json(body.as_bytes()),
            (
                Ok(app),
                Handed::Raw {
                    kind,
                    width,
                    height,
                    bytes,
                },
            ) => app.take(Taken {
                kind,
                width: *width,
                height: *height,
                bytes,
            }),
            (Err(_), _) => NO_FOLDER.to_owned(),
        }
    }

    /// Writes the sealed file of what is shown into a folder, or fails as a full disk does where the system
    /// names none.
    pub(crate) fn save(&self, show: &str, folder: Option<&Path>) -> String {
        match &self.0 {
            Ok(app) => app.save_file(show, |name, bytes| write_to(folder, name, bytes)),
            Err(_) => NO_FOLDER.to_owned(),
        }
    }

    /// Writes the history in a form into a folder, as [`save`](Self::save) does with a sealed file.
    pub(crate) fn save_report(&self, asked: &str, folder: Option<&Path>) -> String {
        match &self.0 {
            Ok(app) => app.save_report(asked, |name, bytes| write_to(folder, name, bytes)),
            Err(_) => NO_FOLDER.to_owned(),
        }
    }

    /// Whether the camera may be used now.
    pub(crate) fn is_scanning(&self) -> bool {
        matches!(&self.0, Ok(app) if app.scanning())
    }

    /// Locks the vault now, and wipes its key from memory.
    pub(crate) fn lock(&self) {
        if let Ok(app) = &self.0 {
            app.lock_now();
        }
    }

    /// Locks the vault if nobody has used it for too long.
    fn lock_if_idle(&self) {
        if let Ok(app) = &self.0 {
            app.lock();
        }
    }
}

fn write_to(folder: Option<&Path>, name: &str, bytes: &[u8]) -> io::Result<PathBuf> {
    match folder {
        Some(folder) => save::write_new(folder, name, bytes),
        None => Err(io::ErrorKind::NotFound.into()),
    }
}

/// Starts a thread that locks the vault once it is left alone; it ends with the keeper.
pub(crate) fn lock_when_idle(keeper: &Arc<Keeper>) {
    let keeper = Arc::downgrade(keeper);
    std::thread::spawn(move || watch(&keeper));
}

fn watch(keeper: &Weak<Keeper>) {
    loop {
        #[allow(
            clippy::disallowed_methods,
            reason = "a timer has no event to wait for"
        )]
        std::thread::sleep(TICK);
        match keeper.upgrade() {
            Some(keeper) => keeper.lock_if_idle(),
            None => return,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_folder_that_cannot_be_used_is_told_on_every_command() {
        let keeper = Keeper::open(Path::new("/dev/null/vault"));
        for line in [r#"{"do":"hello"}"#, "nonsense"] {
            let reply: serde_json::Value = serde_json::from_str(&keeper.answer(line)).unwrap();
            assert_eq!(reply["error"]["code"], "storage_failed");
        }
        keeper.lock();
        keeper.lock_if_idle();
    }

    #[test]
    fn a_new_folder_is_a_first_start() {
        let folder = tempfile::tempdir().unwrap();
        let keeper = Keeper::open(&folder.path().join("vault"));
        let reply: serde_json::Value =
            serde_json::from_str(&keeper.answer(r#"{"do":"hello"}"#)).unwrap();
        assert_eq!(reply["ok"]["first_start"], true);
    }
}
