//! The small clear file beside the vault: the language, and wrong tries. Nothing in it is about health.

use crate::backoff::WrongTries;
use crate::words::Language;
use serde::{Deserialize, Serialize};
use std::fs::{self, OpenOptions};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};

/// The name of the file in the app's folder.
pub(crate) const FILE_NAME: &str = "device.json";

/// The longest file that is read, in bytes. House rule; what the app writes is below 200.
const LONGEST: u64 = 4096;

/// What is known before the vault is open.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Device {
    /// The language of the screens.
    pub(crate) language: Language,
    /// Wrong passphrases in a row.
    pub(crate) tries: WrongTries,
    /// Whether the folder holds invented demo data.
    pub(crate) demo: bool,
}

impl Default for Device {
    fn default() -> Self {
        Self {
            language: Language::English,
            tries: WrongTries::default(),
            demo: false,
        }
    }
}

#[derive(Serialize, Deserialize)]
#[serde(default)]
struct Stored {
    language: String,
    wrong_tries: u32,
    last_wrong_ms: i64,
    demo: bool,
}

impl Default for Stored {
    fn default() -> Self {
        Self::from(Device::default())
    }
}

impl From<Device> for Stored {
    fn from(device: Device) -> Self {
        Self {
            language: device.language.id().to_owned(),
            wrong_tries: device.tries.count,
            last_wrong_ms: device.tries.last_ms,
            demo: device.demo,
        }
    }
}

impl From<Stored> for Device {
    fn from(stored: Stored) -> Self {
        Self {
            language: Language::from_id(&stored.language).unwrap_or(Language::English),
            tries: WrongTries {
                count: stored.wrong_tries,
                last_ms: stored.last_wrong_ms,
            },
            demo: stored.demo,
        }
    }
}

/// Reads the file. One that is missing or cannot be understood gives the defaults: nothing in it is worth
/// keeping somebody out of their own vault.
///
/// # Errors
/// When the file is there and the system does not let it be read.
pub(crate) fn load(folder: &Path) -> io::Result<Device> {
    let mut bytes = Vec::new();
    match fs::File::open(path(folder)) {
        Ok(file) => file.take(LONGEST).read_to_end(&mut bytes)?,
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(Device::default()),
        Err(error) => return Err(error),
    };
    Ok(serde_json::from_slice::<Stored>(&bytes)
        .map(Device::from)
        .unwrap_or_default())
}

/// Writes the file beside itself, brings it to the disk, and renames it into place.
///
/// # Errors
/// When the system refuses, for example on a full disk. The old file then stays.
pub(crate) fn save(folder: &Path, device: Device) -> io::Result<()> {
    let target = path(folder);
    let beside = target.with_extension("json.new");
    let bytes = serde_json::to_vec(&Stored::from(device)).map_err(io::Error::other)?;
    let mut options = OpenOptions::new();
    options.write(true).create(true).truncate(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    let mut file = options.open(&beside)?;
    file.write_all(&bytes)?;
    file.sync_all()?;
    drop(file);
    fs::rename(&beside, &target)
}

fn path(folder: &Path) -> PathBuf {
    folder.join(FILE_NAME)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_saved_is_read_again() {
        let folder = tempfile::tempdir().unwrap();
        let device = Device {
            language: Language::Spanish,
            tries: WrongTries {
                count: 4,
                last_ms: 1_800_000_000_000,
            },
            demo: false,
        };
        save(folder.path(), device).unwrap();
        assert_eq!(load(folder.path()).unwrap(), device);
    }

    #[test]
    fn a_missing_or_damaged_file_gives_the_defaults() {
        let folder = tempfile::tempdir().unwrap();
        assert_eq!(load(folder.path()).unwrap(), Device::default());
        for text in [
            "",
            "{",
            "[]",
            r#"{"language":7}"#,
            r#"{"language":"xx"}"#,
            "\u{0}",
        ] {
            let mut file = fs::File::create(folder.path().join(FILE_NAME)).unwrap();
            file.write_all(text.as_bytes()).unwrap();
            assert_eq!(load(folder.path()).unwrap(), Device::default(), "{text}");
        }
    }
}
