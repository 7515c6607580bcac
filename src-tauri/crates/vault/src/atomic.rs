//! Files that are either the old one or the new one, never half of each.

use std::ffi::OsString;
use std::fs::{self, File, OpenOptions};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};

/// Writes `bytes` beside `path`, brings them to the disk, and renames them into place.
pub(crate) fn write(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let beside = beside(path);
    let mut file = private().create(true).truncate(true).open(&beside)?;
    file.write_all(bytes)?;
    file.sync_all()?;
    drop(file);
    rename(&beside, path)
}

/// Brings a file that somebody else wrote to the disk.
pub(crate) fn sync(path: &Path) -> io::Result<()> {
    OpenOptions::new().write(true).open(path)?.sync_all()
}

/// Renames, and brings the new name to the disk.
pub(crate) fn rename(from: &Path, to: &Path) -> io::Result<()> {
    fs::rename(from, to)?;
    to.parent().map_or(Ok(()), sync_folder)
}

/// Makes an empty file that only this user may read; fails if there is one.
pub(crate) fn create_empty(path: &Path) -> io::Result<()> {
    private().create_new(true).open(path)?.sync_all()
}

/// Makes a folder that only this user may enter, unless it is there.
pub(crate) fn create_folder(path: &Path) -> io::Result<()> {
    let mut builder = fs::DirBuilder::new();
    builder.recursive(true);
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
    builder.create(path)
}

/// Removes a file; one that is not there is no error.
pub(crate) fn remove(path: &Path) -> io::Result<()> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}

/// Whether something with this name is there; an unreadable folder is an error, not a "no".
pub(crate) fn exists(path: &Path) -> io::Result<bool> {
    path.try_exists()
}

/// Up to `limit` bytes from the start of a file; `None` if there is no such file.
pub(crate) fn read_up_to(path: &Path, limit: u64) -> io::Result<Option<Vec<u8>>> {
    let file = match File::open(path) {
        Ok(file) => file,
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(None),
        Err(error) => return Err(error),
    };
    let mut bytes = Vec::new();
    file.take(limit).read_to_end(&mut bytes)?;
    Ok(Some(bytes))
}

/// The name a file has while it is being written.
pub(crate) fn beside(path: &Path) -> PathBuf {
    let mut name = OsString::from(path);
    name.push(".tmp");
    PathBuf::from(name)
}

fn private() -> OpenOptions {
    let mut options = OpenOptions::new();
    options.write(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    options
}

/// A rename is only on the disk once its folder is. Windows has no such call; there it does by itself.
#[cfg(unix)]
pub(crate) fn sync_folder(folder: &Path) -> io::Result<()> {
    File::open(folder)?.sync_all()
}

#[cfg(not(unix))]
pub(crate) fn sync_folder(_: &Path) -> io::Result<()> {
    Ok(())
}
