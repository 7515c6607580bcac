//! Where things are: the tree's root, the folder that builds go to, and files by their ending.

use std::path::{Path, PathBuf};

use crate::trouble::Trouble;

/// The root of the source tree, three folders above this crate.
pub(crate) fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(3).unwrap_or(here).to_path_buf()
}

/// The folder builds go to: `CARGO_TARGET_DIR` when set, else `target` in the root.
pub(crate) fn target() -> PathBuf {
    match std::env::var_os("CARGO_TARGET_DIR") {
        Some(folder) if !folder.is_empty() => root().join(folder),
        _ => root().join("target"),
    }
}

/// Every file below `folder` whose name ends with `ending`, sorted; none when there is no folder.
///
/// # Errors
/// [`Trouble::File`] when a folder that exists cannot be read.
pub(crate) fn files(folder: &Path, ending: &str) -> Result<Vec<PathBuf>, Trouble> {
    let mut found = Vec::new();
    if folder.is_dir() {
        collect(folder, ending, &mut found).map_err(|why| Trouble::File {
            path: folder.to_path_buf(),
            why,
        })?;
        found.sort();
    }
    Ok(found)
}

fn collect(folder: &Path, ending: &str, found: &mut Vec<PathBuf>) -> std::io::Result<()> {
    for entry in std::fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            if !path.ends_with("node_modules") {
                collect(&path, ending, found)?;
            }
        } else if path.to_string_lossy().ends_with(ending) {
            found.push(path);
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn root_holds_the_workspace_manifest() {
        let manifest = std::fs::read_to_string(root().join("Cargo.toml")).unwrap();
        assert!(manifest.contains("[workspace]"));
    }

    #[test]
    fn finds_files_by_ending_in_subfolders() {
        let found = files(&root().join("src-tauri/crates/xtask"), "steps/mod.rs").unwrap();
        assert_eq!(found.len(), 1);
    }

    #[test]
    fn no_folder_means_no_files() {
        assert!(
            files(Path::new("/no/such/folder"), ".rs")
                .unwrap()
                .is_empty()
        );
    }
}
