//! Where things are.

use std::path::{Path, PathBuf};

use crate::trouble::Trouble;

/// The root of the tree.
pub(crate) fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here).to_path_buf()
}

/// A program built beside this one.
///
/// # Errors
/// [`Trouble::NotBuilt`].
pub(crate) fn built(name: &str) -> Result<PathBuf, Trouble> {
    let here = std::env::current_exe()?;
    let path = here.with_file_name(name);
    if path.is_file() {
        Ok(path)
    } else {
        Err(Trouble::NotBuilt(path))
    }
}

/// The Python that `cargo xtask test` sets up for the checks of a folder of `tests`, if it has been.
pub(crate) fn python(checks: &str) -> Option<PathBuf> {
    let here = std::env::current_exe().ok()?;
    let home = here.ancestors().nth(2)?.join("checks").join(checks);
    let python = home.join("bin").join("python");
    python.is_file().then_some(python)
}
