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

#[test]
fn no_package_but_the_shell_may_hold_unsafe_code() {
    for manifest in members() {
        let folder = manifest.path.trim_end_matches("Cargo.toml");
        if folder == "src-tauri/" {
            continue;
        }
        let roots: Vec<_> = ["src/lib.rs", "src/main.rs"]
            .iter()
            .map(|file| tree::root().join(folder).join(file))
            .filter(|path| path.is_file())
            .collect();
        assert!(!roots.is_empty(), "{folder} has no code");
        for path in roots {
            let text = std::fs::read_to_string(&path).unwrap();
            assert!(
                text.contains("#![forbid(unsafe_code)]"),
                "{} lacks #![forbid(unsafe_code)]",
                path.display()
            );
        }
    }
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
