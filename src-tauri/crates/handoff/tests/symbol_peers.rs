//! Symbols both ways with code that is not ours: two decoders read what we draw, and we read what another
//! encoder draws.
//!
//! It needs Python with a few packages and zbar, so it is not among the plain tests: see
//! `tests/handoff_peers/check_symbols.py`, then
//! `HEFTWELL_PEERS=$PWD/venv/bin/python cargo test -p handoff --test symbol_peers -- --include-ignored`.
#![cfg(test)]

mod support;

use std::fs;
use std::path::Path;
use std::process::Command;

use handoff::{Density, Showing, Symbol, lay_out, read_photo};
use support::noise;

const SCRIPT: &str = concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../../../tests/handoff_peers/check_symbols.py"
);

/// One symbol of every version from 3 to 25 at level M, and frames of both densities.
fn symbols() -> Vec<Symbol> {
    let mut symbols: Vec<Symbol> = (1..=36)
        .filter_map(
            |n| match lay_out(&noise(n * 26, n as u64), Density::Standard).unwrap() {
                Showing::One(symbol) => Some(symbol),
                Showing::Many(_) => None,
            },
        )
        .collect();
    for density in [Density::Standard, Density::Weak] {
        let Showing::Many(many) = lay_out(&noise(5_000, 1), density).unwrap() else {
            panic!("5,000 bytes are several symbols")
        };
        symbols.extend([0, 3, 20, 60_000].map(|n| many.symbol(n).unwrap()));
    }
    symbols
}

/// A list of pairs of texts as JSON. What is written needs no escapes: Base45 has neither `"` nor `\`.
fn write_list(path: &Path, pairs: &[(String, String)]) {
    let items: Vec<String> = pairs
        .iter()
        .map(|(a, b)| format!("[\"{a}\", \"{b}\"]"))
        .collect();
    fs::write(path, format!("[{}]", items.join(", "))).unwrap();
}

fn read_list(path: &Path) -> Vec<(String, String)> {
    let text = fs::read_to_string(path).unwrap();
    let texts: Vec<&str> = text.split('"').skip(1).step_by(2).collect();
    texts
        .chunks(2)
        .map(|pair| (pair[0].to_owned(), pair[1].to_owned()))
        .collect()
}

#[test]
#[ignore = "needs Python with packages: see the top of this file"]
fn others_read_ours_and_we_read_theirs() {
    let Some(python) = std::env::var_os("HEFTWELL_PEERS") else {
        panic!("HEFTWELL_PEERS names the Python to use")
    };
    let folder = tempfile::tempdir().unwrap();
    let mut pairs = Vec::new();
    for (n, symbol) in symbols().iter().enumerate() {
        let name = format!("ours_{n}_version_{}.png", symbol.version());
        fs::write(folder.path().join(&name), symbol.png(4).unwrap()).unwrap();
        pairs.push((name, symbol.text().to_owned()));
    }
    write_list(&folder.path().join("ours.json"), &pairs);
    let output = Command::new(python)
        .arg(SCRIPT)
        .arg(folder.path())
        .output()
        .unwrap();
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(
        output.status.success(),
        "{said}{}",
        String::from_utf8_lossy(&output.stderr)
    );

    let theirs = read_list(&folder.path().join("theirs.json"));
    assert!(theirs.len() >= pairs.len(), "drawn by the other encoder");
    let wrong: Vec<&String> = theirs
        .iter()
        .filter(|(name, text)| {
            let picture = fs::read(folder.path().join(name)).unwrap();
            read_photo(&picture).as_ref() != Ok(text)
        })
        .map(|(name, _)| name)
        .collect();
    println!(
        "{} of ours read by two others, {} of theirs read by us",
        pairs.len(),
        theirs.len()
    );
    assert!(wrong.is_empty(), "{wrong:?}");
}
