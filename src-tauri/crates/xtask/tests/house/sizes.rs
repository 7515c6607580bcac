//! No source file is too long to read in one go, and the screens stay light.

use crate::tree::{self, Source};

/// Most lines a source file may have (house rule).
const MOST_LINES: usize = 450;

/// Most bytes the files that a first lift needs may have together, pictures included (house rule).
const MOST_FIRST_BYTES: u64 = 150_000;

/// Most bytes one later walk may have, a folder under [`WALKS`] (house rule).
const MOST_WALK_BYTES: u64 = 60_000;

/// Screens that are fetched only when they are opened, one folder a walk.
const WALKS: &str = "ui/walks";

const CODE: &[&str] = &[".rs", ".js", ".mjs", ".css", ".html", ".sql"];

fn too_long(sources: &[Source]) -> Vec<String> {
    sources
        .iter()
        .map(|source| (source, source.text.lines().count()))
        .filter(|(_, lines)| *lines > MOST_LINES)
        .map(|(source, lines)| format!("{} has {lines} lines", source.path))
        .collect()
}

#[test]
fn no_source_file_is_over_the_limit() {
    for folder in ["src-tauri", "ui", "tests"] {
        let found = too_long(&tree::sources(folder, CODE));
        assert!(found.is_empty(), "{found:#?}");
    }
}

fn bytes_below(folder: &str) -> u64 {
    let all = tree::files(folder);
    all.iter().map(|path| path.metadata().unwrap().len()).sum()
}

#[test]
fn what_a_first_lift_needs_stays_light() {
    let bytes = bytes_below("ui") - bytes_below(WALKS);
    assert!(bytes < MOST_FIRST_BYTES, "without {WALKS}: {bytes} bytes");
}

#[test]
fn each_later_walk_stays_light() {
    for walk in std::fs::read_dir(tree::root().join(WALKS)).unwrap() {
        let walk = walk.unwrap();
        if walk.path().is_dir() {
            let folder = format!("{WALKS}/{}", walk.file_name().to_str().unwrap());
            let bytes = bytes_below(&folder);
            assert!(bytes < MOST_WALK_BYTES, "{folder} has {bytes} bytes");
        }
    }
}

#[test]
fn a_file_of_one_line_too_many_is_named() {
    let long = "x\n".repeat(MOST_LINES + 1);
    let enough = "x\n".repeat(MOST_LINES);
    let sources = [
        Source::made_up("ui/long.js", &long),
        Source::made_up("ui/enough.js", &enough),
    ];
    assert_eq!(too_long(&sources), ["ui/long.js has 451 lines"]);
}
