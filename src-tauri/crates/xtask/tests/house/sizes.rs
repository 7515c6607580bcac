//! No source file is too long to read in one go, and the screens stay light.

use crate::tree::{self, Source};

/// Most lines a source file may have (house rule).
const MOST_LINES: usize = 450;

/// Most bytes all files of the screens may have together, pictures included (house rule).
const MOST_UI_BYTES: u64 = 150_000;

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

#[test]
fn the_screens_stay_light() {
    let all = tree::files("ui");
    let bytes: u64 = all.iter().map(|path| path.metadata().unwrap().len()).sum();
    assert!(bytes < MOST_UI_BYTES, "ui/ has {bytes} bytes");
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
