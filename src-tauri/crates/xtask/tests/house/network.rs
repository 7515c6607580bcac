//! The phone app has no network code of ours. Tauri brings an HTTP client it cannot be built
//! without; nothing else may. `deny.toml` says the same for the whole tree, by who may depend on
//! what; this looks at what the phone app really reaches.

use std::collections::{BTreeMap, BTreeSet};

use crate::tree;

/// Crates that speak to a network, or exist in order to.
const NETWORK: &[&str] = &[
    "actix-web",
    "async-std",
    "attohttpc",
    "awc",
    "axum",
    "curl",
    "h2",
    "hickory-resolver",
    "hyper",
    "hyper-util",
    "isahc",
    "libp2p",
    "mio",
    "minreq",
    "native-tls",
    "quinn",
    "reqwest",
    "rouille",
    "rustls",
    "smol",
    "socket2",
    "surf",
    "tiny_http",
    "tokio",
    "tokio-tungstenite",
    "tungstenite",
    "ureq",
    "warp",
    "websocket",
];

/// Where the walk stops: what lies below Tauri is Tauri's.
const TAURI: &[&str] = &["tauri", "tauri-build"];

/// Name and version, as a lock file tells packages apart.
type Package = (String, String);

/// The packages of a lock file, each with the lines that say what it depends on.
fn packages(lock: &str) -> BTreeMap<Package, Vec<String>> {
    lock.split("[[package]]\n")
        .skip(1)
        .map(|block| {
            let value = |key: &str| {
                block
                    .lines()
                    .find_map(|line| line.strip_prefix(&format!("{key} = \"")))
                    .map(|rest| rest.trim_end_matches('"').to_owned())
                    .unwrap()
            };
            let uses = block
                .lines()
                .filter_map(|line| line.strip_prefix(" \"")?.strip_suffix("\","))
                .map(str::to_owned)
                .collect();
            ((value("name"), value("version")), uses)
        })
        .collect()
}

/// Which network crates `from` reaches without going through Tauri, each with the way there.
fn reached(lock: &str, from: &str) -> Vec<String> {
    let packages = packages(lock);
    let start: Vec<_> = packages.keys().filter(|(name, _)| name == from).collect();
    assert_eq!(start.len(), 1, "{from} is once in the lock file");
    let mut seen = BTreeSet::new();
    let mut found = Vec::new();
    let mut open = vec![(start[0].clone(), from.to_owned())];
    while let Some((package, way)) = open.pop() {
        if !seen.insert(package.clone()) {
            continue;
        }
        if NETWORK.contains(&package.0.as_str()) {
            found.push(way);
            continue;
        }
        for line in &packages[&package] {
            let mut words = line.split(' ');
            let name = words.next().unwrap();
            let version = words.next();
            if TAURI.contains(&name) {
                continue;
            }
            let next = packages
                .keys()
                .find(|(n, v)| n == name && version.is_none_or(|version| v == version))
                .unwrap_or_else(|| panic!("{line} is not in the lock file"));
            open.push((next.clone(), format!("{way} > {name}")));
        }
    }
    found
}

#[test]
fn the_phone_app_has_no_network_crate_outside_tauri() {
    let lock = std::fs::read_to_string(tree::root().join("Cargo.lock")).unwrap();
    let found = reached(&lock, "heftwell");
    assert!(found.is_empty(), "{found:#?}");
}

const MADE_UP: &str = r#"version = 4

[[package]]
name = "app"
version = "0.1.0"
dependencies = [
 "helper 2.0.0",
]

[[package]]
name = "heftwell"
version = "0.1.0"
dependencies = [
 "app",
 "tauri",
]

[[package]]
name = "helper"
version = "1.0.0"

[[package]]
name = "helper"
version = "2.0.0"
dependencies = [
 "ureq",
]

[[package]]
name = "reqwest"
version = "0.12.0"

[[package]]
name = "tauri"
version = "2.12.5"
dependencies = [
 "reqwest",
]

[[package]]
name = "ureq"
version = "3.0.0"
"#;

#[test]
fn a_network_crate_far_below_is_found_with_the_way_there() {
    assert_eq!(
        reached(MADE_UP, "heftwell"),
        ["heftwell > app > helper > ureq"]
    );
}

#[test]
fn what_lies_below_tauri_is_left_alone() {
    let clean = MADE_UP.replace(" \"helper 2.0.0\",\n", "");
    assert!(reached(&clean, "heftwell").is_empty());
}
