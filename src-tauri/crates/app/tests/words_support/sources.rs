//! Quoted words in our sources: what asks for a message.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// Every quoted word in the files with this ending under a folder, relative to this crate.
pub(crate) fn quoted(folder: &str, ending: &str) -> BTreeSet<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
    let mut found = BTreeSet::new();
    for path in files(&root, ending) {
        let text = std::fs::read_to_string(&path).expect("a source file");
        for mark in ['"', '\'', '`'] {
            found.extend(
                text.split(mark)
                    .filter(|part| is_id(part))
                    .map(str::to_owned),
            );
        }
    }
    found
}

/// Ids that stand in quotes right after one of these calls.
pub(crate) fn asked_for(folder: &str, ending: &str, calls: &[&str]) -> BTreeSet<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
    let mut found = BTreeSet::new();
    for path in files(&root, ending) {
        let text = std::fs::read_to_string(&path).expect("a source file");
        for call in calls {
            let after = text
                .split(call)
                .skip(1)
                .filter_map(|rest| rest.trim_start().strip_prefix('"'));
            found.extend(
                after
                    .filter_map(|rest| rest.split('"').next())
                    .filter(|id| is_id(id))
                    .map(str::to_owned),
            );
        }
    }
    found
}

/// Lower-case words joined by hyphens or underscores; a blank is never part of an id.
fn is_id(part: &str) -> bool {
    !part.is_empty()
        && part.len() < 80
        && part.chars().all(|letter| {
            letter.is_ascii_lowercase() || letter.is_ascii_digit() || "-_".contains(letter)
        })
}

fn files(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut open = vec![folder.to_path_buf()];
    while let Some(folder) = open.pop() {
        for entry in std::fs::read_dir(&folder).into_iter().flatten() {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                open.push(path);
            } else if path.extension().is_some_and(|found| found == ending) {
                found.push(path);
            }
        }
    }
    found.sort();
    found
}
