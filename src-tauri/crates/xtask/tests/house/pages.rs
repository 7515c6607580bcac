//! The written pages: links lead somewhere, decisions are in the index, no banned promise is made.

use crate::tree::{self, Source};

/// Every page that people read on the way in.
fn pages() -> Vec<Source> {
    let mut pages = tree::sources("docs", &[".md"]);
    for name in ["README.md", "DEVELOPERS.md", "CHANGELOG.md"] {
        let text = std::fs::read_to_string(tree::root().join(name)).unwrap();
        pages.push(Source::made_up(name, &text));
    }
    pages
}

/// Targets of a page's links that are files of ours, as paths from the root. Pictures are left
/// out: a page stays readable without one.
fn links(page: &Source) -> Vec<String> {
    page.text
        .split("](")
        .collect::<Vec<_>>()
        .windows(2)
        .filter(|pair| !is_picture(pair[0]))
        .filter_map(|pair| pair[1].split(')').next())
        .filter(|target| !target.contains("://") && !target.starts_with('#'))
        .filter_map(|target| target.split('#').next())
        .map(|target| resolve(&page.path, target))
        .collect()
}

/// Whether the text before `](` ends in `![…`.
fn is_picture(before: &str) -> bool {
    before
        .rfind('[')
        .and_then(|at| before.get(..at))
        .is_some_and(|text| text.ends_with('!'))
}

fn resolve(from: &str, target: &str) -> String {
    let mut parts: Vec<&str> = from.split('/').collect();
    parts.pop();
    for part in target.split('/') {
        match part {
            "" | "." => {}
            ".." => {
                parts.pop();
            }
            name => parts.push(name),
        }
    }
    parts.join("/")
}

#[test]
fn every_link_leads_to_a_file() {
    let mut faults = Vec::new();
    for page in pages() {
        for target in links(&page) {
            if !tree::root().join(&target).exists() {
                faults.push(format!("{} points to {target}", page.path));
            }
        }
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

#[test]
fn every_page_and_decision_can_be_found_from_the_index() {
    let index = std::fs::read_to_string(tree::root().join("docs/README.md")).unwrap();
    for page in tree::sources("docs", &[".md"]) {
        let name = page.path.trim_start_matches("docs/");
        let folder = name
            .rsplit_once('/')
            .map(|(folder, _)| format!("({folder}/)"));
        let by_folder = folder.is_some_and(|link| link != "(decisions/)" && index.contains(&link));
        let found = by_folder || index.contains(&format!("({name})")) || name == "README.md";
        assert!(found, "{name} is missing");
    }
}

#[test]
fn decisions_have_numbers_of_their_own_and_the_parts_of_the_template() {
    let mut numbers = Vec::new();
    for record in tree::sources("docs/decisions", &[".md"]) {
        if record.path.ends_with("template.md") {
            continue;
        }
        let name = record.path.rsplit('/').next().unwrap();
        let number = name.split('-').next().unwrap().to_owned();
        assert!(record.text.starts_with(&format!("# {number}: ")), "{name}");
        for part in [
            "## Question",
            "## Choices looked at",
            "## Decision",
            "## What follows",
        ] {
            assert!(record.text.contains(part), "{name} lacks {part}");
        }
        assert!(!numbers.contains(&number), "{number} is used twice");
        numbers.push(number);
    }
}

#[test]
fn the_readme_names_the_passphrase_of_the_invented_data() {
    let demo =
        std::fs::read_to_string(tree::root().join("src-tauri/crates/app/src/demo.rs")).unwrap();
    let line = demo
        .lines()
        .find(|line| line.contains("const PASSPHRASE"))
        .unwrap();
    let passphrase = line.split('"').nth(1).unwrap();
    let readme = std::fs::read_to_string(tree::root().join("README.md")).unwrap();
    assert!(readme.contains(&format!("`{passphrase}`")), "{passphrase}");
}

#[test]
fn links_are_read_from_where_the_page_is() {
    let page = Source::made_up(
        "docs/decisions/x.md",
        "[a](../a.md#part), ![b](b.png), [c](https://example.org) and [d](d.md)",
    );
    assert_eq!(links(&page), ["docs/a.md", "docs/decisions/d.md"]);
}
