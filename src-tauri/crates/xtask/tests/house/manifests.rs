//! What every package's manifest and root file must say.

use crate::tree;

/// The dependency lines of a manifest's section.
fn section<'a>(manifest: &'a str, name: &str) -> Vec<&'a str> {
    manifest
        .lines()
        .skip_while(|line| line.trim() != format!("[{name}]"))
        .skip(1)
        .take_while(|line| !line.starts_with('['))
        .filter(|line| !line.trim().is_empty() && !line.trim_start().starts_with('#'))
        .collect()
}

#[test]
fn the_judgement_depends_on_nothing_but_error_texts() {
    let manifest =
        std::fs::read_to_string(tree::root().join("src-tauri/crates/lifting/Cargo.toml")).unwrap();
    let found = section(&manifest, "dependencies");
    assert!(
        found.iter().all(|line| line.starts_with("thiserror")),
        "{found:?}"
    );
    assert!(section(&manifest, "build-dependencies").is_empty());
    assert!(!manifest.contains("[target."), "no platform differs here");
}

#[test]
fn xtask_depends_on_nothing() {
    let manifest =
        std::fs::read_to_string(tree::root().join("src-tauri/crates/xtask/Cargo.toml")).unwrap();
    assert!(section(&manifest, "dependencies").is_empty());
}

#[test]
fn every_package_takes_the_shared_lints() {
    for manifest in members() {
        assert_eq!(
            section(&manifest.text, "lints"),
            ["workspace = true"],
            "{}",
            manifest.path
        );
    }
}

/// Files that lift the shared ban on unsafe code.
fn lifting_the_ban(sources: &[tree::Source]) -> Vec<&str> {
    // Put together here, so that this file does not find itself.
    let ways = ["allow", "expect", "warn"].map(|way| format!("{way}(unsafe_{})", "code"));
    sources
        .iter()
        .filter(|source| ways.iter().any(|way| source.text.contains(way.as_str())))
        .map(|source| source.path.as_str())
        .collect()
}

#[test]
fn no_package_but_the_shell_may_hold_unsafe_code() {
    let mut sources = tree::sources("src-tauri/crates", &[".rs", "Cargo.toml"]);
    sources.extend(tree::sources("tests", &[".rs", "Cargo.toml"]));
    let found = lifting_the_ban(&sources);
    assert!(found.is_empty(), "{found:?}");
}

#[test]
fn a_lifted_ban_is_found() {
    let text = format!("#![allow(unsafe_{})]\n", "code");
    let offender = tree::Source::made_up("x.rs", &text);
    assert_eq!(lifting_the_ban(&[offender]), ["x.rs"]);
}

#[test]
fn a_section_ends_where_the_next_begins() {
    let manifest = "[dependencies]\n# why\na = \"1\"\n\nb.workspace = true\n[lints]\nx = 1\n";
    assert_eq!(
        section(manifest, "dependencies"),
        ["a = \"1\"", "b.workspace = true"]
    );
    assert!(section(manifest, "dev-dependencies").is_empty());
}

/// The manifests of the workspace's own members.
fn members() -> Vec<tree::Source> {
    let mut all = tree::sources("src-tauri", &["Cargo.toml"]);
    all.extend(tree::sources("tests", &["Cargo.toml"]));
    all.retain(|manifest| manifest.path != "tests/fuzz/Cargo.toml");
    all
}
