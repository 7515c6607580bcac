//! A sealed file, or the history in the open, among the person's own files, when they ask for it.

use std::fs::OpenOptions;
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use tauri::{AppHandle, Manager, Runtime, State};

use crate::keeper::Keeper;

/// How many files of one name are told apart before giving up (house rule).
const MOST_ALIKE: u32 = 100;

/// Writes the sealed file of what is shown to the downloads folder. Name and bytes come from `app`; the page only says which.
///
/// # Errors
/// Never through `app`, whose failures are replies. Only when the process is already ending.
#[tauri::command]
pub(crate) async fn save<R: Runtime>(
    show: String,
    shell: AppHandle<R>,
    keeper: State<'_, Arc<Keeper>>,
) -> Result<String, String> {
    let keeper = Arc::clone(&keeper);
    let folder = folder_for(&shell);
    tauri::async_runtime::spawn_blocking(move || keeper.save(&show, folder.as_deref()))
        .await
        .map_err(|_| "the app is closing".to_owned())
}

/// Writes the history in a form to the same place.
///
/// # Errors
/// As [`save`].
#[tauri::command]
pub(crate) async fn save_report<R: Runtime>(
    asked: String,
    shell: AppHandle<R>,
    keeper: State<'_, Arc<Keeper>>,
) -> Result<String, String> {
    let keeper = Arc::clone(&keeper);
    let folder = folder_for(&shell);
    tauri::async_runtime::spawn_blocking(move || keeper.save_report(&asked, folder.as_deref()))
        .await
        .map_err(|_| "the app is closing".to_owned())
}

/// Where a person looks for files that an app has put down. The Files app of an iPhone shows an app's
/// documents, not its downloads; a computer that names no such folder has one in the home folder.
fn folder_for<R: Runtime>(shell: &AppHandle<R>) -> Option<PathBuf> {
    let paths = shell.path();
    let named = if cfg!(target_os = "ios") {
        paths.document_dir()
    } else {
        paths.download_dir()
    };
    named
        .or_else(|_| paths.home_dir().map(|home| home.join("Downloads")))
        .ok()
}

/// Writes a new file and gives where it is. A file that is there is never written over.
///
/// # Errors
/// When the folder or the file cannot be made.
pub(crate) fn write_new(folder: &Path, name: &str, bytes: &[u8]) -> io::Result<PathBuf> {
    std::fs::create_dir_all(folder)?;
    let (stem, ending) = name.rsplit_once('.').unwrap_or((name, "heft"));
    for number in 1..=MOST_ALIKE {
        let name = match number {
            1 => format!("{stem}.{ending}"),
            _ => format!("{stem}-{number}.{ending}"),
        };
        let path = folder.join(name);
        match OpenOptions::new().write(true).create_new(true).open(&path) {
            Ok(mut file) => {
                file.write_all(bytes)?;
                file.sync_all()?;
                return Ok(path);
            }
            Err(error) if error.kind() == io::ErrorKind::AlreadyExists => {}
            Err(error) => return Err(error),
        }
    }
    Err(io::ErrorKind::AlreadyExists.into())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_that_is_there_is_left_alone() {
        let folder = tempfile::tempdir().unwrap();
        let first = write_new(folder.path(), "plan.heft", b"one").unwrap();
        let second = write_new(folder.path(), "plan.heft", b"two").unwrap();
        assert_eq!(second, folder.path().join("plan-2.heft"));
        assert_eq!(std::fs::read(first).unwrap(), b"one");
        assert_eq!(std::fs::read(second).unwrap(), b"two");
    }
}
