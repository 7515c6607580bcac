//! Which of our packages may use which. The list is the one in `docs/architecture.md`.

use std::collections::BTreeMap;
use std::process::Command;

use serde_json::{Value, json};

use crate::tree;

/// Every package of ours with those it may use. Nothing else is allowed, in code or in tests.
const ARROWS: &[(&str, &[&str])] = &[
    ("lifting", &[]),
    ("record", &[]),
    ("door", &["lifting"]),
    ("vault", &["record"]),
    ("handoff", &[]),
    ("app", &["door", "vault", "handoff", "record", "lifting"]),
    ("headless", &["app", "door"]),
    ("heftwell", &["app"]),
    ("judgement", &["door", "lifting"]),
    ("journeys", &[]),
    (
        "bench",
        &[
            "app",
            "door",
            "handoff",
            "vault",
            "record",
            "lifting",
            "judgement",
        ],
    ),
    ("xtask", &[]),
];

/// Arrows of the fuzz targets, which are a workspace of their own.
const FUZZ_ARROWS: &[(&str, &[&str])] = &[("heftwell-fuzz", &["door", "handoff", "record"])];

/// What is wrong in a workspace's metadata, one sentence each.
fn faults(metadata: &Value, allowed: &[(&str, &[&str])]) -> Vec<String> {
    let allowed: BTreeMap<_, _> = allowed.iter().copied().collect();
    let packages = metadata["packages"].as_array().unwrap();
    let mut faults = Vec::new();
    for package in packages {
        let from = package["name"].as_str().unwrap();
        let Some(may_use) = allowed.get(from) else {
            faults.push(format!("{from} is not in the list of packages"));
            continue;
        };
        for dependency in package["dependencies"].as_array().unwrap() {
            let to = dependency["name"].as_str().unwrap();
            let ours = !dependency["path"].is_null();
            if ours && !may_use.contains(&to) {
                faults.push(format!("{from} must not use {to}"));
            }
        }
    }
    for name in allowed.keys() {
        if !packages.iter().any(|package| package["name"] == **name) {
            faults.push(format!("{name} is in the list but is no package"));
        }
    }
    faults
}

fn metadata(manifest: &str) -> Value {
    let output = Command::new(env!("CARGO"))
        .args([
            "metadata",
            "--no-deps",
            "--offline",
            "--format-version",
            "1",
        ])
        .arg("--manifest-path")
        .arg(tree::root().join(manifest))
        .output()
        .unwrap();
    assert!(
        output.status.success(),
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
    serde_json::from_slice(&output.stdout).unwrap()
}

#[test]
fn no_package_uses_another_against_the_list() {
    let faults = faults(&metadata("Cargo.toml"), ARROWS);
    assert!(faults.is_empty(), "{faults:#?}");
}

#[test]
fn fuzz_targets_use_only_parsers_and_the_judgement() {
    if tree::root().join("tests/fuzz/Cargo.toml").exists() {
        let faults = faults(&metadata("tests/fuzz/Cargo.toml"), FUZZ_ARROWS);
        assert!(faults.is_empty(), "{faults:#?}");
    }
}

#[test]
fn the_written_list_is_the_same() {
    let page = std::fs::read_to_string(tree::root().join("docs/architecture.md")).unwrap();
    for (from, may_use) in ARROWS {
        let names: Vec<_> = may_use.iter().map(|name| format!("`{name}`")).collect();
        let right = if names.is_empty() {
            "nothing of ours".to_owned()
        } else {
            names.join(", ")
        };
        let line = format!("| `{from}` | {right} |");
        assert!(page.contains(&line), "docs/architecture.md lacks {line}");
    }
}

const SMALL: &[(&str, &[&str])] = &[("app", &["vault"]), ("vault", &[])];

#[test]
fn an_arrow_upward_is_found() {
    let metadata = json!({"packages": [
        {"name": "app", "dependencies": [{"name": "vault", "path": "/x/vault"}]},
        {"name": "vault", "dependencies": [{"name": "app", "path": "/x/app"}]},
    ]});
    assert_eq!(faults(&metadata, SMALL), ["vault must not use app"]);
}

#[test]
fn an_arrow_in_tests_counts_too() {
    let metadata = json!({"packages": [
        {"name": "app", "dependencies": []},
        {"name": "vault", "dependencies": [{"name": "app", "kind": "dev", "path": "/x/app"}]},
    ]});
    assert_eq!(faults(&metadata, SMALL), ["vault must not use app"]);
}

#[test]
fn a_crate_from_the_registry_is_no_arrow_even_with_a_name_like_ours() {
    let metadata = json!({"packages": [
        {"name": "app", "dependencies": []},
        {"name": "vault", "dependencies": [{"name": "app", "path": null}]},
    ]});
    assert!(faults(&metadata, SMALL).is_empty());
}

#[test]
fn a_new_package_must_be_entered_and_a_gone_one_taken_out() {
    let metadata = json!({"packages": [
        {"name": "app", "dependencies": []},
        {"name": "vault2", "dependencies": []},
    ]});
    assert_eq!(
        faults(&metadata, SMALL),
        [
            "vault2 is not in the list of packages",
            "vault is in the list but is no package"
        ]
    );
}
